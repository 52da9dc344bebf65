import { besselJ0 } from '../../numerics/bessel.ts'
import { gaussLegendre } from '../../numerics/gauss-legendre.ts'
import { recent } from '../../numerics/recent.ts'
import { roomFor } from '../../numerics/working-room.ts'
import { answersAlong, evenly } from './answers-along.ts'
import type { Observer } from './observer.ts'
import { type Answers, ballTransform, grainsPerMm2, placesAround, type SizeStep } from './shot-noise.ts'

/** Grains on one set of frequencies: what does not depend on the filter. */
interface Bed {
  /** An even number of them; one that was added has no ring. */
  readonly radii: number
  /** [radius × frequency]: J₀(2πfr). */
  readonly waves: Float64Array
  /** [grain size × frequency]: Ĝ. */
  readonly shadows: Float64Array
  /** 2πr·Δr, mm². */
  readonly rings: Float64Array
}

function bedOn({ frequencies, pack, imaging }: Observer, sizes: readonly SizeStep[]): Bed {
  const points = frequencies.length
  const { reachMm, places } = placesAround(pack.grainMm, imaging.objectPixelMm)
  const rule = gaussLegendre(places)
  const radii = evenly(places)
  const waves = new Float64Array(radii * points)
  const rings = new Float64Array(radii)
  for (let i = 0; i < places; i++) {
    const radiusMm = (reachMm * (rule.nodes[i]! + 1)) / 2
    rings[i] = Math.PI * radiusMm * reachMm * rule.weights[i]!
    for (let q = 0; q < points; q++)
      waves[i * points + q] = besselJ0(2 * Math.PI * frequencies[q]! * radiusMm)
  }
  const shadows = new Float64Array(sizes.length * points)
  sizes.forEach(({ ratio }, g) => {
    for (let q = 0; q < points; q++)
      shadows[g * points + q] = ballTransform(frequencies[q]!, pack.grainMm * ratio)
  })
  return { radii, waves, shadows, rings }
}

const beds = recent<Bed>(8)
const [filters, answers, numbers] = [roomFor(), roomFor(), roomFor()]

/**
 * What single grains leave in the filter of a ball or disc: h(r) = ∫2πf (K⁻¹S·t)·MTF·Ĝ(f)·J₀(2πfr)df.
 * filter: weight·(K⁻¹S·t) per frequency; squares: the same times (K⁻¹S·t)·MTF². The squares of all radii come
 * from the frequencies at once (Parseval).
 */
export function roundAnswers(
  observer: Observer,
  filter: Float64Array,
  squares: Float64Array,
  sizes: readonly SizeStep[],
): Answers {
  const { frequencies, pack, imaging } = observer
  const points = frequencies.length
  const key = [imaging.objectPixelMm, pack.grainMm, points, sizes.length].join()
  const { radii, waves, shadows, rings } = beds(key, () => bedOn(observer, sizes))
  const through = filters(evenly(sizes.length) * points)
  const left = answers(evenly(sizes.length) * radii)
  const many = numbers(sizes.length * radii)
  let square = 0
  sizes.forEach((size, g) => {
    const perMm2 = grainsPerMm2(pack.packing * pack.pathMm, pack.grainMm, size)
    let sum = 0
    for (let q = 0; q < points; q++) {
      const shadow = shadows[g * points + q]!
      through[g * points + q] = filter[q]! * shadow
      sum += squares[q]! * shadow * shadow
    }
    square += perMm2 * sum
    for (let i = 0; i < radii; i++) many[g * radii + i] = perMm2 * rings[i]!
  })
  answersAlong(left, through, evenly(sizes.length), waves, radii, points)
  return { answers: left, numbers: many, count: sizes.length * radii, square }
}
