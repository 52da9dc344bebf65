import { besselJ0 } from '../../numerics/bessel.ts'
import { roomFor } from '../../numerics/working-room.ts'
import { answersAlong } from './answers-along.ts'
import type { Observer } from './observer.ts'
import { type Answers, ballTransform, grainsPerMm2, placesAround, type SizeStep } from './shot-noise.ts'

/** The places around a grain on one set of frequencies: what depends neither on the filter nor on the grain's size. */
interface Around {
  readonly stepMm: number
  readonly placesOf: (size: SizeStep) => number
  /** [place × frequency]: J₀(2πfr). */
  readonly waves: Float64Array
  /** 2πr·Δr, mm². */
  readonly rings: Float64Array
}

function aroundGrains({ frequencies, pack, imaging }: Observer): Around {
  const points = frequencies.length
  const { stepMm, placesOf, places } = placesAround(pack.grainMm, imaging.objectPixelMm)
  const waves = new Float64Array(places * points)
  const rings = new Float64Array(places)
  // Equal steps of 2πr·F(r): the end in the middle by Euler and Maclaurin.
  rings[0] = (2 * Math.PI * stepMm * stepMm) / 12
  for (let i = 0; i < places; i++) {
    const radiusMm = i * stepMm
    if (i > 0) rings[i] = 2 * Math.PI * radiusMm * stepMm
    for (let q = 0; q < points; q++)
      waves[i * points + q] = besselJ0(2 * Math.PI * frequencies[q]! * radiusMm)
  }
  return { stepMm, placesOf, waves, rings }
}

/** [grain size × frequency]: Ĝ. */
function shadowsOf({ frequencies, pack }: Observer, sizes: readonly SizeStep[]): Float64Array {
  const points = frequencies.length
  const shadows = new Float64Array(sizes.length * points)
  sizes.forEach(({ ratio }, g) => {
    for (let q = 0; q < points; q++)
      shadows[g * points + q] = ballTransform(frequencies[q]!, pack.grainMm * ratio)
  })
  return shadows
}

/** By the frequencies they are on, which images of one machine and food share. */
const around = new WeakMap<Float64Array, Around>()
const shadowed = new WeakMap<Float64Array, Map<readonly SizeStep[], Float64Array>>()

function aroundOn(observer: Observer): Around {
  const known = around.get(observer.frequencies) ?? aroundGrains(observer)
  around.set(observer.frequencies, known)
  return known
}

function shadowsOn(observer: Observer, sizes: readonly SizeStep[]): Float64Array {
  const bySizes = shadowed.get(observer.frequencies) ?? new Map<readonly SizeStep[], Float64Array>()
  shadowed.set(observer.frequencies, bySizes)
  const known = bySizes.get(sizes) ?? shadowsOf(observer, sizes)
  bySizes.set(sizes, known)
  return known
}

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
  const { frequencies, pack } = observer
  const points = frequencies.length
  const { waves, rings, placesOf } = aroundOn(observer)
  const shadows = shadowsOn(observer, sizes)
  const through = filters(2 * points)
  // Two sizes at a time go as far as the larger one; a last single one is followed twice.
  const most = placesOf(sizes.at(-1)!)
  const left = answers((sizes.length + 1) * most)
  const many = numbers((sizes.length + 1) * most)
  let square = 0
  let count = 0
  for (let g = 0; g < sizes.length; g += 2) {
    const pair = sizes.slice(g, g + 2)
    const places = placesOf(pair.at(-1)!)
    pair.forEach((size, second) => {
      const perMm2 = grainsPerMm2(pack.packing * pack.pathMm, pack.grainMm, size)
      const shadow = (g + second) * points
      let sum = 0
      for (let q = 0; q < points; q++) {
        const seen = shadows[shadow + q]!
        through[second * points + q] = filter[q]! * seen
        sum += squares[q]! * seen * seen
      }
      square += perMm2 * sum
      for (let i = 0; i < places; i++) many[count + second * places + i] = perMm2 * rings[i]!
    })
    answersAlong(left.subarray(count), through, 2, waves, places, points)
    count += pair.length * places
  }
  return { answers: left, numbers: many, count, square }
}
