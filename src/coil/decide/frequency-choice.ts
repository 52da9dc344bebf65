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

/** Judges a choice: contaminants without a size (those to be found first) and the worst ratio to the size to find. */
export function frequencyStep(
  frequenciesKHz: readonly number[],
  expectedMm: readonly (number | null)[],
  mustFindMm: readonly (number | null)[],
): FrequencyStep {
  const ratios = expectedMm.flatMap((size, k) => {
    const target = mustFindMm[k] ?? null
    return size === null || target === null ? [] : [size / target]
  })
  const missing = (k: number) => expectedMm[k] === null
  return {
    frequenciesKHz,
    unseenRequired: expectedMm.filter((_, k) => missing(k) && (mustFindMm[k] ?? null) !== null).length,
    unseen: expectedMm.filter((_, k) => missing(k)).length,
    worstRatio: ratios.length > 0 ? Math.max(...ratios) : null,
    expectedMm,
  }
}

const meanLog = (step: FrequencyStep): number =>
  step.expectedMm.reduce<number>((sum, size) => sum + (size === null ? 0 : Math.log(size)), 0)

/** Differences below this are ties (ratios and logarithms of sizes). */
const TIE = 1e-9

/**
 * The choice that leaves fewest required contaminants without a size, then has the smallest worst ratio of
 * expected size to size to find, then the fewest without a size at all, then the smallest geometric mean of
 * the sizes; on a tie the fewer frequencies.
 */
export function bestStep(steps: readonly FrequencyStep[]): FrequencyStep {
  const keys = (step: FrequencyStep) => [
    step.unseenRequired,
    step.worstRatio ?? 0,
    step.unseen,
    meanLog(step),
  ]
  return steps.reduce((best, step) => {
    const mine = keys(step)
    const other = keys(best)
    const k = mine.findIndex((key, index) => Math.abs(key - other[index]!) > TIE)
    return k >= 0 && mine[k]! < other[k]! ? step : best
  })
}

/** Index of the contaminant with the worst ratio; null where one without a size, or none, decides. */
export function hardestOf(step: FrequencyStep, mustFindMm: readonly (number | null)[]): number | null {
  if (step.unseenRequired > 0 || step.worstRatio === null) return null
  const index = step.expectedMm.findIndex((size, k) => {
    const target = mustFindMm[k] ?? null
    return size !== null && target !== null && size / target === step.worstRatio
  })
  return index < 0 ? null : index
}

/** True where this size alone already makes a choice worse than the best one, which misses nothing required. */
export const surelyWorse = (sizeMm: number | null, mustFindMm: number, best: FrequencyStep): boolean =>
  sizeMm === null || sizeMm / mustFindMm > best.worstRatio! + TIE
