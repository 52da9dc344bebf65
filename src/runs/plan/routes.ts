import type { CurveRoute, OneSizeRoute } from '../../contract/index.ts'
import { binomialAtMost, runsToDemonstrate } from '../../numerics/binomial.ts'
import { curvePower } from './curve-power.ts'
import { chanceAt, sizeOfChance, type Truth, truthOf } from './truth.ts'

/** What a trial has to show, about a machine predicted to find half at a50 and nine in ten at a90. */
export interface Aim {
  readonly a50: number
  readonly a90: number
  readonly sizeMm: number
  readonly confidence: number
  readonly power: number
  readonly seed: number
  /** Lies of the piece, each shown by itself: the trial passes when all do. */
  readonly lies: number
}

const SHOWN_CHANCE = 0.9
const SIZES = 6
const PER_SIZE = [10, 12, 15, 20, 30] as const
const MOST_MISSES = 3
/** Simulated trials behind a power: standard error at most 0.011. */
const SETS = 2000

/** Chance that few pieces at the lowest size, and nearly all at the highest, are found. */
const LOWEST = 0.03
const HIGHEST = 0.985

/** Test pieces come in steps of 0.1 mm, below 1 mm of 0.05 mm (common practice, no source). */
export const stepOf = (mm: number): number => (mm < 1 ? 0.05 : 0.1)
const toStep = (mm: number): number => Number((Math.round(mm / stepOf(mm)) * stepOf(mm)).toFixed(2))

/** The top of the sizes is moved to the size asked where that is no further off than this. */
const NEAR = 1.1

/**
 * Sizes even in their logarithm that bracket the 50 % and the 90 % size; the size asked is the largest of them, or
 * stands above them by itself. A size between two steps is asked exactly: no bound above the largest counts.
 */
export function bracketingSizes({ a50, a90, sizeMm }: Aim): number[] {
  const truth = truthOf(a50, a90)
  const from = sizeOfChance(truth, LOWEST)
  const steep = sizeOfChance(truth, HIGHEST)
  const to = sizeMm > steep && sizeMm < steep * NEAR ? sizeMm : steep
  const sizes = Array.from({ length: SIZES }, (_, i) => toStep(from * (to / from) ** (i / (SIZES - 1))))
  return [...new Set([...sizes.filter((size) => size < sizeMm || to > sizeMm), sizeMm])].sort((x, y) => x - y)
}

const powers = (of: (truth: Truth) => number, { a50, a90, lies }: Aim) => ({
  asPredicted: of(truthOf(a50, a90)) ** lies,
  fiveWorse: of(truthOf(a50, a90, 0.05)) ** lies,
  tenWorse: of(truthOf(a50, a90, 0.1)) ** lies,
})

/** Curves with more and more pieces a size, up to the first that is enough. */
export function curveRoutes(aim: Aim): CurveRoute[] {
  const sizesMm = bracketingSizes(aim)
  const truth = truthOf(aim.a50, aim.a90)
  const routes: CurveRoute[] = []
  for (const perSize of PER_SIZE) {
    const power = powers(
      (one) =>
        curvePower(one, { sizesMm, perSize }, aim.sizeMm, aim.confidence, { seed: aim.seed, sets: SETS }),
      aim,
    )
    const enough = power.asPredicted >= aim.power
    const chances = sizesMm.map((size) => chanceAt(truth, size))
    routes.push({ sizesMm, chances, perSize, pieces: perSize * sizesMm.length, power, enough })
    if (enough || power.asPredicted < aim.power / 4) break
  }
  return routes
}

/** The asked size alone, with more and more misses allowed; exact. */
export function oneSizeRoutes(aim: Aim): OneSizeRoute[] {
  return Array.from({ length: MOST_MISSES + 1 }, (_, misses) => {
    const pieces = runsToDemonstrate({ chance: SHOWN_CHANCE, confidence: aim.confidence }, misses)
    const power = powers((truth) => binomialAtMost(misses, pieces, 1 - chanceAt(truth, aim.sizeMm)), aim)
    return { sizeMm: aim.sizeMm, pieces, misses, power, enough: power.asPredicted >= aim.power }
  })
}

/** Smallest size at which some count of {@link oneSizeRoutes} is enough, up to the next step of test pieces. */
export function reachableSize(aim: Aim): number {
  const truth = truthOf(aim.a50, aim.a90)
  const sizes = oneSizeRoutes(aim).map(({ pieces, misses }) => {
    let [low, high] = [SHOWN_CHANCE, 1 - 1e-9]
    for (let k = 0; k < 60; k++) {
      const middle = (low + high) / 2
      if (binomialAtMost(misses, pieces, 1 - middle) ** aim.lies < aim.power) low = middle
      else high = middle
    }
    return sizeOfChance(truth, high)
  })
  const size = Math.min(...sizes)
  return Number((Math.ceil(size / stepOf(size) - 1e-9) * stepOf(size)).toFixed(2))
}
