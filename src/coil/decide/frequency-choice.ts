import { chooseStep, EQUAL_SHARE } from '../../numerics/smooth-choice.ts'
import type { FrequencyStep } from '../assessment.ts'

/** Every non-empty choice of at most `most` of the frequencies, singles first. */
export function frequencySubsets(
  frequenciesKHz: readonly number[],
  most: number,
): readonly (readonly number[])[] {
  const subsets: number[][] = []
  for (let mask = 1; mask < 1 << frequenciesKHz.length; mask++) {
    const subset = frequenciesKHz.filter((_, k) => (mask & (1 << k)) !== 0)
    if (subset.length <= most) subsets.push(subset)
  }
  return subsets.sort((a, b) => a.length - b.length)
}

/** A choice of frequencies with the sizes it is judged by, mm. */
export type Judged = Pick<FrequencyStep, 'frequenciesKHz' | 'judgedMm'>

/** What does not come out of a choice counts as this, mm: the largest size the model speaks of. */
const NOT_FOUND_MM = 12

export interface FrequencyChoice {
  readonly index: number
  readonly runnerUp: number | null
  readonly norms: readonly (number | null)[]
}

/**
 * The choice with the least smooth norm of judged size over size to find. Single frequencies lie in a row, and the
 * middle of neighbours that are as good is kept; of sets of several the least itself, on a tie the fewer frequencies.
 */
export function bestChoice(
  choices: readonly Judged[],
  mustFindMm: readonly (number | null)[],
): FrequencyChoice {
  const inRow = chooseStep(
    choices.map(({ judgedMm }) => judgedMm),
    mustFindMm.map((mm) => ({ mustFindMm: mm })),
    NOT_FOUND_MM,
  )
  if (choices.every(({ frequenciesKHz }) => frequenciesKHz.length === 1)) return inRow
  const values = inRow.norms.map((norm) => norm ?? 0)
  const index = values.indexOf(Math.min(...values))
  const others = values.flatMap((norm, i) => (norm > values[index]! * (1 + EQUAL_SHARE) ? [{ norm, i }] : []))
  return { index, runnerUp: others.sort((a, b) => a.norm - b.norm)[0]?.i ?? null, norms: inRow.norms }
}
