import type { Contaminant, Finding } from '../contract/index.ts'

/** What the order of options is made from. */
export interface Orderable {
  readonly excluded: boolean
  readonly burden: number
  readonly findings: readonly Finding[]
}

const SEVERITIES = [5, 4, 3, 2, 1] as const

/** Sizes not met for sure, counted by severity from 5 down to 1; one without a size to find does not count. */
function unmetBySeverity(option: Orderable, contaminants: readonly Contaminant[]): number[] {
  const unmet = option.findings.filter(
    (f) => f.meets !== 'yes' && !(f.meets === 'open' && f.mustFindMm === null),
  )
  return SEVERITIES.map((s) => unmet.filter((f) => contaminants[f.contaminant]!.severity === s).length)
}

/** Worst ratio of cautious (else expected) size to the size to find; infinite where one is not findable. */
function worstRatio(option: Orderable): number {
  const ratios = option.findings.flatMap((f) => {
    if (f.mustFindMm === null) return []
    const size = f.cautiousMm ?? (f.expectedMm === null ? null : f.expectedMm * 1.5)
    return [size === null ? Number.POSITIVE_INFINITY : size / f.mustFindMm]
  })
  return ratios.length > 0 ? Math.max(...ratios) : 0
}

function difference(a: number, b: number): number {
  return a === b ? 0 : a - b
}

/**
 * Order of two options, said in words and never one score: excluded last; then what meets every size, by
 * burden; then fewest unmet sizes, severity by severity from the gravest; then the worst ratio of cautious
 * size to size to find; then burden.
 */
export function compareOptions(contaminants: readonly Contaminant[]) {
  return (a: Orderable, b: Orderable): number => {
    if (a.excluded !== b.excluded) return a.excluded ? 1 : -1
    const unmetA = unmetBySeverity(a, contaminants)
    const unmetB = unmetBySeverity(b, contaminants)
    for (let i = 0; i < unmetA.length; i++) {
      if (unmetA[i] !== unmetB[i]) return unmetA[i]! - unmetB[i]!
    }
    const bothMeetAll = unmetA.every((n) => n === 0)
    const byRatio = difference(worstRatio(a), worstRatio(b))
    const byBurden = a.burden - b.burden
    return bothMeetAll ? byBurden || byRatio : byRatio || byBurden
  }
}
