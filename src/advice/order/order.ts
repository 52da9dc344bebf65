import type { Contaminant, Finding, Option } from '../../contract/index.ts'
import { isPromised } from '../assess/meets.ts'
import type { Parting, Standing } from '../stages.ts'

/** What the order of options is made from. */
export type Orderable = Pick<Standing, 'excluded' | 'burden' | 'findings'>

/** An option of an advice as the order sees it: excluded by a rule that speaks of the machine itself. */
export const standing = (option: Option): Standing => ({
  ...option,
  excluded: option.reasons.some(({ type, contaminant }) => type === 'excludes' && contaminant === null),
})

const SEVERITIES = [5, 4, 3, 2, 1] as const

/** True for a size that counts as unmet: one without a size to find does not count. */
export const isUnmet = (f: Finding): boolean =>
  !isPromised(f.meets) && !(f.meets === 'open' && f.mustFindMm === null)

/** Sizes not met for sure, counted by severity from 5 down to 1. */
function unmetBySeverity(option: Orderable, contaminants: readonly Contaminant[]): number[] {
  const unmet = option.findings.filter(isUnmet)
  return SEVERITIES.map((s) => unmet.filter((f) => contaminants[f.contaminant]!.severity === s).length)
}

/** Ratio of cautious (else expected) size to the size to find; null without one, infinite if not findable. */
export function sizeRatio(f: Finding): number | null {
  if (f.mustFindMm === null) return null
  const size = f.cautiousMm ?? (f.expectedMm === null ? null : f.expectedMm * WITHOUT_PROMISE)
  return size === null ? Number.POSITIVE_INFINITY : size / f.mustFindMm
}

/** Where no size can be promised, the cautious size is taken as this multiple of the expected (judgement). */
export const WITHOUT_PROMISE = 1.5

export function worstRatio(option: Pick<Orderable, 'findings'>): number {
  return Math.max(0, ...option.findings.flatMap((f) => sizeRatio(f) ?? []))
}

function difference(a: number, b: number): number {
  return a === b ? 0 : a - b
}

/**
 * Where two options part, said in words and never one score: excluded last; then what meets every size, by
 * burden; then fewest unmet sizes, severity by severity from the gravest; then the worst ratio of cautious
 * size to size to find; then burden.
 */
export function partOptions(contaminants: readonly Contaminant[]) {
  return (a: Orderable, b: Orderable): Parting => {
    if (a.excluded !== b.excluded) return { step: 'excluded', severity: null, sign: a.excluded ? 1 : -1 }
    const unmetA = unmetBySeverity(a, contaminants)
    const unmetB = unmetBySeverity(b, contaminants)
    for (let i = 0; i < unmetA.length; i++) {
      if (unmetA[i] !== unmetB[i])
        return { step: 'unmet', severity: SEVERITIES[i]!, sign: unmetA[i]! - unmetB[i]! }
    }
    const ratio = { step: 'ratio', severity: null, sign: difference(worstRatio(a), worstRatio(b)) } as const
    const burden = { step: 'burden', severity: null, sign: a.burden - b.burden } as const
    const bothMeetAll = unmetA.every((n) => n === 0)
    for (const parting of bothMeetAll ? [burden, ratio] : [ratio, burden])
      if (parting.sign !== 0) return parting
    return { step: 'nothing', severity: null, sign: 0 }
  }
}

/** The same as an order to sort by. */
export function compareOptions(contaminants: readonly Contaminant[]) {
  const part = partOptions(contaminants)
  return (a: Orderable, b: Orderable): number => part(a, b).sign
}
