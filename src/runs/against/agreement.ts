import { normalChance, normalUpperQuantile } from '../../numerics/normal.ts'

/** A size as run, with the chance that the prediction gives when every size is `factor` times what it says. */
export interface PredictedSize {
  readonly runs: number
  readonly found: number
  readonly chance: (factor: number) => number
}

/** Spread of ln size when a prediction states none (assumed). */
const NO_SPREAD_STATED = 0.1
const GRID = 41
const WIDEST = 3
/** Above so many units the count is taken as normal with a correction for whole numbers. */
const MOST_EXACT = 400

/** Spread of ln size such that one machine in ten needs more than the cautious size. */
export const statedSpread = (expectedMm: number, cautiousMm: number | null): number =>
  cautiousMm !== null && cautiousMm > expectedMm
    ? Math.log(cautiousMm / expectedMm) / normalUpperQuantile(0.1)
    : NO_SPREAD_STATED

/** Factors on the predicted sizes and their weights: ln factor normal with the spread. */
export function factorGrid(spread: number): { factor: number; weight: number }[] {
  const steps = Array.from({ length: GRID }, (_, i) => -WIDEST + (2 * WIDEST * i) / (GRID - 1))
  const weights = steps.map((z) => Math.exp((-z * z) / 2))
  const total = weights.reduce((sum, w) => sum + w, 0)
  return steps.map((z, i) => ({ factor: Math.exp(z * spread), weight: weights[i]! / total }))
}

/**
 * Share of trials whose total of finds would lie at least as far out as this one, both ways, if the prediction with
 * its spread were right: predictive distribution of the total, exact up to 400 units.
 */
export function agreementOf(sizes: readonly PredictedSize[], spread: number): number {
  const found = Math.round(sizes.reduce((sum, size) => sum + size.found, 0))
  let atMost = 0
  let atLeast = 0
  for (const { factor, weight } of factorGrid(spread)) {
    const [below, at] = totalUpTo(
      sizes.map(({ runs, chance }) => ({ runs, chance: chance(factor) })),
      found,
    )
    atMost += weight * (below + at)
    atLeast += weight * (1 - below)
  }
  return Math.min(1, 2 * Math.min(atMost, atLeast))
}

/** P(total < found) and P(total = found) of a sum of binomials. */
function totalUpTo(
  parts: readonly { readonly runs: number; readonly chance: number }[],
  found: number,
): [number, number] {
  const units = parts.reduce((sum, { runs }) => sum + runs, 0)
  if (units > MOST_EXACT) {
    const mean = parts.reduce((sum, { runs, chance }) => sum + runs * chance, 0)
    const sd = Math.sqrt(parts.reduce((sum, { runs, chance }) => sum + runs * chance * (1 - chance), 1e-9))
    const below = normalChance((found - 0.5 - mean) / sd)
    return [below, normalChance((found + 0.5 - mean) / sd) - below]
  }
  let odds = [1]
  for (const { runs, chance } of parts)
    for (let k = 0; k < runs; k++) {
      const next = new Array<number>(odds.length + 1).fill(0)
      for (let j = 0; j < odds.length; j++) {
        next[j]! += odds[j]! * (1 - chance)
        next[j + 1]! += odds[j]! * chance
      }
      odds = next
    }
  return [odds.slice(0, found).reduce((sum, p) => sum + p, 0), odds[found] ?? 0]
}
