import { besselJ0 } from '../../numerics/bessel.ts'
import { gaussLegendre } from '../../numerics/gauss-legendre.ts'
import type { Observer } from './observer.ts'
import {
  type Answers,
  ballTransform,
  grainsPerMm2,
  placesAround,
  recent,
  type SizeStep,
} from './shot-noise.ts'

/** Grains of one size on one set of frequencies: what does not depend on the filter. */
interface Bed {
  readonly radii: number
  /** [grain size][radius × frequency]: Ĝ·J₀. */
  readonly answers: readonly Float64Array[]
  /** [grain size][frequency]: Ĝ². */
  readonly powers: readonly Float64Array[]
  /** 2πr·Δr, mm². */
  readonly rings: Float64Array
}

function bedOn({ frequencies, pack, imaging }: Observer, sizes: readonly SizeStep[]): Bed {
  const points = frequencies.length
  const { reachMm, places: radii } = placesAround(pack.grainMm, imaging.objectPixelMm)
  const rule = gaussLegendre(radii)
  const radiusMm = rule.nodes.map((x) => (reachMm * (x + 1)) / 2)
  const waves = new Float64Array(radii * points)
  for (let i = 0; i < radii; i++)
    for (let q = 0; q < points; q++)
      waves[i * points + q] = besselJ0(2 * Math.PI * frequencies[q]! * radiusMm[i]!)
  const shadows = sizes.map(({ ratio }) => frequencies.map((f) => ballTransform(f, pack.grainMm * ratio)))
  return {
    radii,
    answers: shadows.map((shadow) => waves.map((wave, k) => wave * shadow[k % points]!)),
    powers: shadows.map((shadow) => shadow.map((v) => v * v)),
    rings: radiusMm.map((r, i) => Math.PI * r * reachMm * rule.weights[i]!),
  }
}

const beds = recent<Bed>(4)
let answers = new Float64Array(0)
let numbers = new Float64Array(0)

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
  const bed = beds(key, () => bedOn(observer, sizes))
  const most = bed.radii * sizes.length
  if (answers.length !== most) {
    answers = new Float64Array(most)
    numbers = new Float64Array(most)
  }
  let square = 0
  let at = 0
  sizes.forEach((size, g) => {
    const perMm2 = grainsPerMm2(pack.packing * pack.pathMm, pack.grainMm, size)
    const powers = bed.powers[g]!
    const rows = bed.answers[g]!
    for (let q = 0; q < points; q++) square += perMm2 * squares[q]! * powers[q]!
    for (let i = 0; i < bed.radii; i++) {
      answers[at] = dot(filter, rows, i * points)
      numbers[at++] = perMm2 * bed.rings[i]!
    }
  })
  return { answers, numbers, square }
}

/** Σ a_q·b_(from + q), in four sums that do not wait for one another. */
export function dot(a: Float64Array, b: Float64Array, from: number): number {
  const n = a.length
  const even = n - (n % 4)
  let [w, x, y, z] = [0, 0, 0, 0]
  for (let q = 0; q < even; q += 4) {
    w += a[q]! * b[from + q]!
    x += a[q + 1]! * b[from + q + 1]!
    y += a[q + 2]! * b[from + q + 2]!
    z += a[q + 3]! * b[from + q + 3]!
  }
  for (let q = even; q < n; q++) w += a[q]! * b[from + q]!
  return w + x + y + z
}
