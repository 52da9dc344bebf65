import { type Complex, multiply } from '../../numerics/complex.ts'
import { decisionStatistic, type Whitening } from '../food/clutter.ts'
import type { ResponseTable } from '../piece/response-table.ts'
import { positionOf, SIZE_COUNT, SIZE_STEP } from '../piece/size-grid.ts'
import { quickNormalChance } from './chance-table.ts'

/** Spread u is taken at 41 equal steps over ±4 standard deviations. */
const NODES = 41
const NODE_STEP = 0.2
const MIDDLE = (NODES - 1) / 2
/** Marks a grid size not worked out yet. */
const UNKNOWN = -1
const NO_HITS = new Float64Array(0)
const WEIGHTS = Float64Array.from({ length: NODES }, (_, k) => Math.exp(-((k * NODE_STEP - 4) ** 2) / 2))
const TOTAL = WEIGHTS.reduce((sum, weight) => sum + weight, 0)
WEIGHTS.forEach((weight, k) => {
  WEIGHTS[k] = weight / TOTAL
})

/** A target as the detector meets it: tables per frequency, what a closed layer leaves, and a mix of two ways. */
export interface CurveTarget {
  readonly along: readonly ResponseTable[]
  readonly across: readonly ResponseTable[]
  /** cos² of the angle between the piece and the travel: 1 along, 0 across. */
  readonly alongShare: number
  /** T² per frequency; null outside a closed layer. */
  readonly layer: readonly Complex[] | null
  /** Coupling relative to the centre of the opening. */
  readonly gain: number
}

/**
 * Chance of finding against size: POD(d) = E_u[Φ(D(d·e^(−s·u)) − z)], u standard normal. D and Φ are worked
 * out only where they are asked for. `spread` s ≥ 0; `threshold` z.
 */
export class DetectionCurve {
  private readonly whitening: Whitening
  private readonly target: CurveTarget
  private readonly threshold: number
  /** Grid steps from one node of the spread to the next; a whole number for the usual spreads. */
  private readonly shift: number
  private readonly whole: boolean
  private readonly statistics = new Float64Array(SIZE_COUNT).fill(UNKNOWN)
  private readonly hits: Float64Array
  private readonly signal: Float64Array

  constructor(whitening: Whitening, target: CurveTarget, threshold: number, spread: number) {
    this.whitening = whitening
    this.target = target
    this.threshold = threshold
    const shift = (spread * NODE_STEP) / SIZE_STEP
    this.whole = Math.abs(shift - Math.round(shift)) < 1e-9
    this.shift = this.whole ? Math.round(shift) : shift
    this.hits = this.shift === 0 ? NO_HITS : new Float64Array(SIZE_COUNT).fill(UNKNOWN)
    this.signal = new Float64Array(whitening.size)
  }

  /** D at a grid size. */
  statistic(k: number): number {
    const known = this.statistics[k]!
    if (known >= 0) return known
    const { along, across, alongShare, layer, gain } = this.target
    const signal = this.signal
    for (let i = 0; i < along.length; i++) {
      let re = along[i]!.re[k]!
      let im = along[i]!.im[k]!
      if (alongShare < 1) {
        re = alongShare * re + (1 - alongShare) * across[i]!.re[k]!
        im = alongShare * im + (1 - alongShare) * across[i]!.im[k]!
      }
      if (layer) ({ re, im } = multiply({ re, im }, layer[i]!))
      signal[2 * i] = re
      signal[2 * i + 1] = im
    }
    const value = gain * decisionStatistic(this.whitening, signal)
    this.statistics[k] = value
    return value
  }

  /** D at any grid position, straight in ln D against ln d between two sizes. */
  statisticAt(position: number): number {
    if (position <= 0) return this.statistic(0)
    if (position >= SIZE_COUNT - 1) return this.statistic(SIZE_COUNT - 1)
    const k = Math.floor(position)
    const t = position - k
    if (t === 0) return this.statistic(k)
    const left = this.statistic(k)
    const right = this.statistic(k + 1)
    return left > 0 && right > 0 ? left ** (1 - t) * right ** t : left + t * (right - left)
  }

  private hit(k: number): number {
    if (k < 0) return quickNormalChance(-this.threshold)
    const at = k < SIZE_COUNT ? k : SIZE_COUNT - 1
    const known = this.hits[at]!
    if (known >= 0) return known
    const value = quickNormalChance(this.statistic(at) - this.threshold)
    this.hits[at] = value
    return value
  }

  /** Chance of finding at a grid position. */
  chanceAt(position: number): number {
    const between = position !== Math.floor(position)
    if (this.shift === 0) return quickNormalChance(this.statisticAt(position) - this.threshold)
    let sum = 0
    if (this.whole && !between) {
      let k = position + MIDDLE * this.shift
      for (let n = 0; n < NODES; n++) {
        sum += WEIGHTS[n]! * this.hit(k)
        k -= this.shift
      }
      return sum
    }
    for (let n = 0; n < NODES; n++) {
      const at = position - (n - MIDDLE) * this.shift
      sum += WEIGHTS[n]! * (at < 0 ? this.hit(-1) : quickNormalChance(this.statisticAt(at) - this.threshold))
    }
    return sum
  }

  /** Chance of finding a piece of this size (mm). */
  chanceOf(sizeMm: number): number {
    return this.chanceAt(positionOf(sizeMm))
  }
}
