import type { Brief, Finding, WhyNot } from '../../contract/index.ts'
import { isPromised } from '../assess/meets.ts'
import { mm, nameWords, wordList } from './words.ts'

/** The sizes an option misses, each with its gap to the size to find. */
export function missedSizes(brief: Brief, findings: readonly Finding[]): WhyNot[] {
  const missed = findings.filter(({ meets }) => !isPromised(meets) && meets !== 'open')
  const neverFound = (note: string) =>
    missed.flatMap((f) => (f.meets === 'cannot' && f.note === note ? [f.contaminant] : []))
  return missed.flatMap((f): WhyNot[] => {
    const name = nameWords(brief, f.contaminant)
    const asked = f.mustFindMm
    const size = (gapMm: number | null, text: string, others: readonly number[] = []): WhyNot[] => [
      { kind: 'size', contaminant: f.contaminant, others: [...others], gapMm, text },
    ]
    if (f.meets === 'cannot') {
      const [first, ...others] = neverFound(f.note)
      if (first !== f.contaminant) return []
      const names = wordList([first, ...others].map((one) => nameWords(brief, one)))
      return size(null, `${names}: cannot be found at any size computed here. ${f.note}`, others)
    }
    if (f.expectedMm === null || asked === null) return size(null, `${name}: ${f.note}`)
    if (f.meets === 'no') {
      const gap = f.expectedMm - asked
      return size(
        gap,
        `${name}: expected at ${mm(f.expectedMm)}, ${mm(gap)} above the ${mm(asked)} you must find.`,
      )
    }
    if (f.cautiousMm === null)
      return size(
        null,
        `${name}: expected at ${mm(f.expectedMm)}, but no size can be promised under unfavourable assumptions.`,
      )
    const gap = f.cautiousMm - asked
    return size(
      gap,
      `${name}: expected at ${mm(f.expectedMm)}, but safe to promise only from ${mm(f.cautiousMm)}, ${mm(gap)} above the ${mm(asked)} you must find.`,
    )
  })
}
