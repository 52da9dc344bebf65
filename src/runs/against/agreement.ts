import { normalUpperQuantile } from '../../numerics/normal.ts'
import { type Random, randomStream } from '../../xray/image/food/random.ts'

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
const TRIALS = 2000
/** Above so many runs of a size a count is drawn from the normal law. */
const MOST_DRAWN = 500

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
 * Share of trials that would come out as unlikely as this one, or more so, if the prediction with its spread were
 * right: counts at all sizes together, so that a wrong steepness shows as well as a wrong place. 2,000 trials drawn
 * from the prediction (prior predictive check, Box 1980, J. R. Stat. Soc. A 143:383); good to 0.01.
 */
export function agreementOf(sizes: readonly PredictedSize[], spread: number): number {
  const grid = factorGrid(spread).map(({ factor, weight }) => ({
    weight,
    chances: sizes.map(({ chance }) => Math.min(1 - 1e-9, Math.max(1e-9, chance(factor)))),
  }))
  const ways = sizes.map(({ runs }) => logWays(runs))
  const unlikely = (found: readonly number[]): number => {
    const terms = grid.map(({ weight, chances }) =>
      chances.reduce(
        (sum, p, i) =>
          sum +
          found[i]! * Math.log(p) +
          (sizes[i]!.runs - found[i]!) * Math.log1p(-p) +
          ways[i]![found[i]!]!,
        Math.log(weight),
      ),
    )
    const most = Math.max(...terms)
    return -(most + Math.log(terms.reduce((sum, term) => sum + Math.exp(term - most), 0)))
  }
  const seen = unlikely(sizes.map(({ found }) => Math.round(found)))
  const random = randomStream(1, 'agreement')
  let asFar = 0
  for (let trial = 0; trial < TRIALS; trial++) {
    const { chances } = drawn(grid, random.uniform())
    if (unlikely(chances.map((p, i) => count(p, sizes[i]!.runs, random))) >= seen - 1e-9) asFar++
  }
  return asFar / TRIALS
}

/** ln of the ways to find k of n, for every k. */
function logWays(runs: number): number[] {
  const ways = [0]
  for (let k = 1; k <= runs; k++) ways.push(ways[k - 1]! + Math.log((runs - k + 1) / k))
  return ways
}

function drawn<Item extends { readonly weight: number }>(items: readonly Item[], uniform: number): Item {
  let left = uniform
  for (const item of items) {
    left -= item.weight
    if (left <= 0) return item
  }
  return items.at(-1)!
}

function count(chance: number, runs: number, random: Random): number {
  if (runs > MOST_DRAWN) {
    const sd = Math.sqrt(runs * chance * (1 - chance))
    return Math.max(0, Math.min(runs, Math.round(runs * chance + sd * random.normal())))
  }
  let found = 0
  for (let k = 0; k < runs; k++) if (random.uniform() < chance) found++
  return found
}
