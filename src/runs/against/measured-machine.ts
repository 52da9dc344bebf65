import type { Finding, Measured, RunGroup } from '../../contract/index.ts'
import { chanceOnCurve } from '../../numerics/chance-on-curve.ts'
import { statedSpread } from './agreement.ts'
import { leastPossible } from './prediction.ts'

/** Prior of the steepness: ln of it normal about 0 with this spread (assumed: twice as steep is common). */
const STEEPNESS_SPREAD = 0.7
const SIZE_STEPS = 61
const STEEPNESS_STEPS = 41
const WIDEST = 3.5

export interface MachineMeasured {
  readonly constants: Measured['constants']
  readonly words: string
}

/**
 * What a trial makes of a machine: factor on the predicted sizes and on their steepness, on a grid, each point weighed
 * by its prior and by the likelihood of the counts; the false rejects are those of the clean run. Prior of the factor:
 * ln normal with the spread that the prediction states (expected to safe to promise). Null without a clean run, for
 * simulated runs, where nothing is expected, and where the trial lies below the best possible size.
 */
export function measureMachine(group: RunGroup, finding: Finding): MachineMeasured | null {
  const { halfMm, expectedMm, cautiousMm, curve } = finding
  const least = leastPossible(finding)
  if (!group.clean || group.simulated || halfMm === null || expectedMm === null) return null
  const shown = group.demonstrated?.sizeMm ?? null
  if (shown !== null && (least === null || shown < least)) return null
  const spread = statedSpread(expectedMm, cautiousMm)
  const floor = (group.clean.rejects + 0.5) / (group.clean.packs + 1)
  const points = grid(spread).map(({ lnFactor, lnSteepness, prior }) => {
    const steepness = Math.exp(lnSteepness)
    const logL = group.exact.reduce((sum, { sizeMm, runs, found }) => {
      const asPredicted = halfMm * (sizeMm / (Math.exp(lnFactor) * halfMm)) ** steepness
      const own = chanceOnCurve(curve, asPredicted) ?? 0
      const p = Math.min(1 - 1e-9, Math.max(1e-9, floor + (1 - floor) * own))
      return sum + found * Math.log(p) + (runs - found) * Math.log1p(-p)
    }, prior)
    const ln90 = lnFactor + Math.log(halfMm) + Math.log(expectedMm / halfMm) / steepness
    return { lnFactor, lnSteepness, ln90, logL }
  })
  const most = Math.max(...points.map(({ logL }) => logL))
  const weighed = points.map((point) => ({ ...point, weight: Math.exp(point.logL - most) }))
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0)
  const mean = (of: (point: (typeof weighed)[number]) => number) =>
    weighed.reduce((sum, point) => sum + point.weight * of(point), 0) / total
  const ln90 = mean((point) => point.ln90)
  const sizeSpread = Math.sqrt(mean((point) => (point.ln90 - ln90) ** 2))
  const steepness = Math.exp(mean((point) => point.lnSteepness))
  // The factor that puts the 90 % size at its posterior mean with that steepness.
  const sizeFactor = Math.exp(ln90 - Math.log(halfMm) - Math.log(expectedMm / halfMm) / steepness)
  const constants = { sizeFactor: six(sizeFactor), sizeSpread: six(sizeSpread), steepness: six(steepness) }
  return { constants, words: wordsOf(spread) }
}

const six = (value: number) => Number(value.toPrecision(6))

function grid(spread: number): { lnFactor: number; lnSteepness: number; prior: number }[] {
  const steps = (count: number) =>
    Array.from({ length: count }, (_, i) => -WIDEST + (2 * WIDEST * i) / (count - 1))
  return steps(SIZE_STEPS).flatMap((z) =>
    steps(STEEPNESS_STEPS).map((w) => ({
      lnFactor: z * spread,
      lnSteepness: w * STEEPNESS_SPREAD,
      prior: -(z * z + w * w) / 2,
    })),
  )
}

const wordsOf = (spread: number) =>
  `Prior: every predicted size times a factor whose ln has a spread of ${spread.toFixed(2)} (from expected to safe to promise), steepness times a factor whose ln has a spread of ${STEEPNESS_SPREAD} (assumed); false rejects as in the clean run.`
