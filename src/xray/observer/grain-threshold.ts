import { tailPoint } from '../../numerics/tail-point.ts'
import { modulationTransfer } from '../noise/noise.ts'
import { grainNoisePower } from '../noise/texture.ts'
import { type Observer, objectTransform } from './observer.ts'
import { roundAnswers } from './round-in-bed.ts'
import type { SeenObject } from './seen-object.ts'
import { FIVE_SIZES, NINE_SIZES, type SizeStep } from './shot-noise.ts'
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
const LIKE_A_GRAIN = 0.5
/** An answer below this share of a standard deviation has no third moment to speak of. */
const SMALLEST_ANSWER = 0.01

interface Grain {
  /** MTF² and noise power, mm⁴, at the frequencies of an observer. */
  readonly seen: Float64Array
  readonly power: Float64Array
}
const grains = new WeakMap<Observer, Grain>()

function grainOf(observer: Observer): Grain {
  let grain = grains.get(observer)
  if (!grain) {
    const { frequencies, pack, imaging } = observer
    const { grainMm, packing, pathMm } = pack
    grain = {
      seen: frequencies.map((f) => modulationTransfer(f, imaging.objectPixelMm, imaging.blurPixels) ** 2),
      power: frequencies.map((f) => imaging.textureScale * grainNoisePower(f, grainMm, packing, pathMm)),
    }
    grains.set(observer, grain)
  }
  return grain
}

/** The filter of one object as grain meets it. */
interface Filter {
  /** Quadrature weight × (K⁻¹S·t), and that × (K⁻¹S·t)·MTF², per frequency. */
  readonly weighted: Float64Array
  readonly squares: Float64Array
  /** Share of the grain in the variance of what it gives. */
  readonly grainShare: number
}

function filterOf(observer: Observer, object: SeenObject, sizeMm: number): Filter {
  const { frequencies, inverse, channels } = observer
  const weights = object.shape === 'wire' ? observer.lineWeights : observer.areaWeights
  const n = channels.count
  const { seen, power: grain } = grainOf(observer)
  const s = objectTransform(observer, object, sizeMm)
  const weighted = new Float64Array(frequencies.length)
  const squares = new Float64Array(frequencies.length)
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
function pointOfOne(
  observer: Observer,
  object: SeenObject,
  sizeMm: number,
  grainSizes: readonly SizeStep[],
  tail: number,
  normalPoint: number,
): number {
  const { weighted, squares, grainShare } = filterOf(observer, object, sizeMm)
  if (!(grainShare > 0)) return normalPoint
  const { answers, numbers, square } =
    object.shape === 'wire'
      ? wireAnswers(
          observer,
          weighted,
          Math.min(object.lengthMm, Math.max(object.gatheredMm, sizeMm)),
          grainSizes,
        )
      : roundAnswers(observer, weighted, squares, grainSizes)
  const scale = Math.sqrt(grainShare / square)
  let count = 0
  for (let i = 0; i < answers.length; i++) {
    const h = answers[i]! * scale
    if (h < SMALLEST_ANSWER && h > -SMALLEST_ANSWER) continue
    answers[count] = h
    numbers[count++] = numbers[i]!
  }
  return tailPoint({ answers, numbers, count }, tail, normalPoint)
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
  const fine = observer.overBed()
  const grainSizes = sizeMm > LIKE_A_GRAIN * observer.pack.grainMm ? NINE_SIZES : FIVE_SIZES
  const one = (mm: number) => pointOfOne(fine, object, mm, grainSizes, tail, normalPoint)
  if (object.shape === 'flake') return one(sizeMm)
  return FIVE_SIZES.reduce((sum, { ratio, weight }) => sum + weight * one(sizeMm * ratio), 0)
}
