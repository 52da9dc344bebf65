import type { WhyNot } from '../../contract/index.ts'
import type { LineOutcome, Missed } from '../stages.ts'
import { joined, saidOf } from './said.ts'

/** The sizes an option misses, in the words of the rules (`said` of this option). */
export const missedSizes = (misses: readonly Missed[], said: readonly LineOutcome[]): WhyNot[] =>
  misses.map(({ finding: { contaminant }, others, gapMm }) => {
    const mine = said.filter((one) => one.contaminant === contaminant)
    return {
      kind: 'size',
      contaminant,
      others: [...others],
      gapMm,
      text: joined(mine),
      grounds: mine.map(saidOf),
    }
  })
