import { tailPoint } from '../../numerics/tail-point.ts'
import { roomFor } from '../../numerics/working-room.ts'
import { objectTransform } from './object-transform.ts'
import type { Observer } from './observer.ts'
import { roundAnswers } from './round-in-bed.ts'
import type { SeenObject } from './seen-object.ts'
import { FIVE_LN_STEP, FIVE_SIZES, NINE_SIZES } from './shot-noise.ts'
import { wireAnswers } from './wire-in-bed.ts'

/**
 * What an image filter gives in a clean bed of grains. Each grain's shadow passes the filter; where several lie on
 * one another they look like a piece, so the tail is wider than a normal one. With λ = φ·path/volume grains thrown
 * at random per area (shot noise; Campbell), the log moments of the filter's output, scaled to variance 1, are
 *   Λ(s) = ½s² + λ∫(e^{sh} − 1 − sh − ½s²h²)dA,
 * h the answer of the filter to one grain, scaled so that λ∫h²dA is the share that the grain's noise power has in the
 * filter's variance: grains in a bed are not independent of one another. Grains vary in size by 0.2 in ln, every size
 * with its share of the food. All other noise is normal. The point of the tail is that of Lugannani & Rice.
 */

/** From this share of the grain on, a piece and a grain can be of one size, where the answer has a peak. */
const LIKE_A_GRAIN = 0.3

/** The filter of one object as grain meets it. */
interface Filter {
  /** Quadrature weight × (K⁻¹S·t), and that × (K⁻¹S·t)·MTF², per frequency. */
  readonly weighted: Float64Array
  readonly squares: Float64Array
  /** Share of the grain in the variance of what it gives. */
  readonly grainShare: number
}

/** Working space of the last filter; what was given back is used before the next is made. */
const [weightedRoom, squaresRoom] = [roomFor(), roomFor()]

function filterOf(observer: Observer, object: SeenObject, sizeMm: number): Filter {
  const { frequencies, inverse, channels, seen, grain } = observer
  const weights = object.shape === 'wire' ? observer.lineWeights : observer.areaWeights
  const n = channels.count
  const s = objectTransform(observer, object, sizeMm)
  const weighted = weightedRoom(frequencies.length)
  const squares = squaresRoom(frequencies.length)
  let power = 0
  let fromGrain = 0
  for (let q = 0; q < frequencies.length; q++) {
    let onGrain = 0
    let form = 0
    for (let i = 0; i < n; i++) {
      let w = 0
      for (let j = 0; j < n; j++) w += inverse[(q * n + i) * n + j]! * s[q * n + j]!
      onGrain += w * channels.foodMu[i]!
      form += w * s[q * n + i]!
    }
    power += weights[q]! * form
    weighted[q] = weights[q]! * onGrain
    squares[q] = weighted[q]! * onGrain * seen[q]!
    fromGrain += squares[q]! * grain[q]!
  }
  return { weighted, squares, grainShare: power > 0 ? fromGrain / power : 0 }
}

/** Share of the grain in the variance of the filter for a perfect object. */
export function grainShare(observer: Observer, object: SeenObject, sizeMm: number): number {
  return filterOf(observer, object, sizeMm).grainShare
}

/** Point that the filter for one perfect object exceeds in a clean bed with a chance. */
export function pointOfOne(
  usual: Observer,
  object: SeenObject,
  sizeMm: number,
  tail: number,
  normalPoint: number,
): number {
  const observer = usual.overBed()
  const acrossMm = object.shape === 'flake' ? 2 * Math.sqrt(object.faceMm2 / Math.PI) : sizeMm
  const grainSizes = acrossMm > LIKE_A_GRAIN * observer.pack.grainMm ? NINE_SIZES : FIVE_SIZES
  const { weighted, squares, grainShare } = filterOf(observer, object, sizeMm)
  if (!(grainShare > 0)) return normalPoint
  const answered =
    object.shape === 'wire'
      ? wireAnswers(
          observer,
          weighted,
          Math.min(object.lengthMm, Math.max(object.gatheredMm, sizeMm)),
          grainSizes,
        )
      : roundAnswers(observer, weighted, squares, grainSizes)
  return tailPoint({ ...answered, scale: Math.sqrt(grainShare / answered.square) }, tail, normalPoint)
}

/**
 * Point that the filters for a piece of a size exceed in a clean bed with a chance, the mean over the spread of the
 * piece's size. normalPoint: that of normal noise.
 */
export function bedPoint(
  observer: Observer,
  object: SeenObject,
  sizeMm: number,
  tail: number,
  normalPoint: number,
): number {
  const one = (mm: number) => pointOfOne(observer, object, mm, tail, normalPoint)
  if (object.shape === 'flake') return one(sizeMm)
  return FIVE_SIZES.reduce((sum, { ratio, weight }) => sum + weight * one(sizeMm * ratio), 0)
}

/** Sizes of the grid of {@link bedPointsOf} lie this far apart in ln: two steps of the spread of a piece's size. */
export const GRID_LN_STEP = 2 * FIVE_LN_STEP
/** Below this share of a grain the point changes so little with the size that every second step is read between. */
const FAR_BELOW_A_GRAIN = 0.15
/** Where the middle size's point falls short of a least one by so much, the mean over its neighbours does too. */
const WELL_BELOW = 0.9

/**
 * {@link bedPoint} for one kind of piece at the sizes e^(k·GRID_LN_STEP) mm, or the least point asked for where it is
 * plainly below that. Each size's spread shares three of its five steps with the next one's, so that they are worked
 * out once.
 */
export function bedPointsOf(
  observer: Observer,
  object: SeenObject,
  tail: number,
  normalPoint: number,
): (k: number, least: number) => number {
  const ones = new Map<number, number>()
  const one = (step: number): number => {
    let point = ones.get(step)
    if (point === undefined) {
      const sizeMm = Math.exp(step * FIVE_LN_STEP)
      const between = step % 2 !== 0 && sizeMm < FAR_BELOW_A_GRAIN * observer.pack.grainMm
      point = between
        ? (one(step - 1) + one(step + 1)) / 2
        : pointOfOne(observer, object, sizeMm, tail, normalPoint)
      ones.set(step, point)
    }
    return point
  }
  if (object.shape === 'flake') return (k) => one(2 * k)
  return (k, least) =>
    one(2 * k) < WELL_BELOW * least
      ? least
      : FIVE_SIZES.reduce((sum, { weight }, j) => sum + weight * one(2 * k + j - 2), 0)
}
