import type { Brief, Finding, WhyNot } from '../../contract/index.ts'
import { isPromised } from '../assess/meets.ts'
import { contaminantWords, mm } from './words.ts'

/** The sizes an option misses, each with its gap to the size to find. */
export function missedSizes(brief: Brief, findings: readonly Finding[]): WhyNot[] {
  return findings.flatMap((f): WhyNot[] => {
    if (isPromised(f.meets) || f.meets === 'open') return []
    const name = contaminantWords(brief, f.contaminant)
    const asked = f.mustFindMm
    const size = (gapMm: number | null, text: string): WhyNot[] => [
      { kind: 'size', contaminant: f.contaminant, gapMm, text },
    ]
    if (f.meets === 'cannot')
      return size(null, `${name}: cannot be found at any size computed here. ${f.note}`)
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
      `${name}: expected at ${mm(f.expectedMm)}, but promise no better than ${mm(f.cautiousMm)}, ${mm(gap)} above the ${mm(asked)} you must find.`,
    )
  })
}
