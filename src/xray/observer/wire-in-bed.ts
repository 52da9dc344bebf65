import { besselJ1 } from '../../numerics/bessel.ts'
import { gaussLegendre } from '../../numerics/gauss-legendre.ts'
import { recent } from '../../numerics/recent.ts'
import { roomFor } from '../../numerics/working-room.ts'
import { answersAlong, evenly } from './answers-along.ts'
import type { Observer } from './observer.ts'
import { type Answers, grainsPerMm2, NINE_SIZES, placesAround, type SizeStep } from './shot-noise.ts'

/** Half chords of a slice through a grain at which its answer is tabulated, and places along the wire. */
const SLICES = 24
const ALONG = 8
const WITHIN = 8

/** Slices through grains on one set of frequencies. */
interface Slices {
  readonly longestMm: number
  /** An even number of them; one that was added has no width. */
  readonly places: number
  /** [place × frequency]: cos(2πfx), x the distance from the wire. */
  readonly waves: Float64Array
  /** [slice × frequency]: ρJ₁(2πfρ)/f, the slice of half chord ρ. */
  readonly slices: Float64Array
  /** Δx, mm. */
  readonly widths: Float64Array
}

function slicesOn({ frequencies, pack, imaging }: Observer): Slices {
  const points = frequencies.length
  const { reachMm, places: looked } = placesAround(pack.grainMm, imaging.objectPixelMm)
  const rule = gaussLegendre(looked)
  const places = evenly(looked)
  const longestMm = (NINE_SIZES.at(-1)!.ratio * pack.grainMm) / 2
  const waves = new Float64Array(places * points)
  for (let i = 0; i < looked; i++)
    for (let q = 0; q < points; q++)
      waves[i * points + q] = Math.cos(Math.PI * frequencies[q]! * reachMm * (rule.nodes[i]! + 1))
  const slices = new Float64Array((SLICES + 1) * points)
  for (let j = 0; j <= SLICES; j++) {
    const rho = (j * longestMm) / SLICES
    for (let q = 0; q < points; q++) {
      const f = frequencies[q]!
      slices[j * points + q] = (rho * besselJ1(2 * Math.PI * f * rho)) / f
    }
  }
  const widths = new Float64Array(places)
  for (let i = 0; i < looked; i++) widths[i] = (rule.weights[i]! * reachMm) / 2
  return { longestMm, places, waves, slices, widths }
}

const sliced = recent<Slices>(4)
const [filters, lines, answers, numbers] = [roomFor(), roomFor(), roomFor(), roomFor()]

/**
 * What single grains leave in the filter of a wire: the line filter across it times a rectangle of the gathered
 * length along it, over the plane. A grain is met slice by slice: at y′ from its middle its half chord is √(R² − y′²).
 */
export function wireAnswers(
  observer: Observer,
  filter: Float64Array,
  gatheredMm: number,
  sizes: readonly SizeStep[],
): Answers {
  const { frequencies, pack, imaging } = observer
  const points = frequencies.length
  const key = [imaging.objectPixelMm, pack.grainMm, points].join()
  const { longestMm, places, waves, slices, widths } = sliced(key, () => slicesOn(observer))
  const through = filters(evenly(SLICES + 1) * points)
  for (let j = 0; j <= SLICES; j++)
    for (let q = 0; q < points; q++) through[j * points + q] = filter[q]! * slices[j * points + q]!
  const line = lines(evenly(SLICES + 1) * places)
  answersAlong(line, through, evenly(SLICES + 1), waves, places, points)

  const count = sizes.length * ALONG * places
  const left = answers(count).fill(0, 0, count)
  const many = numbers(count)
  const along = gaussLegendre(ALONG)
  const within = gaussLegendre(WITHIN)
  let square = 0
  let at = 0
  for (const size of sizes) {
    const radius = (pack.grainMm * size.ratio) / 2
    const perMm2 = grainsPerMm2(pack.packing * pack.pathMm, pack.grainMm, size)
    const reach = radius + gatheredMm / 2
    for (let m = 0; m < ALONG; m++) {
      const y = (reach * (along.nodes[m]! + 1)) / 2
      const from = Math.max(-radius, y - gatheredMm / 2)
      const to = Math.min(radius, y + gatheredMm / 2)
      for (let k = 0; k < WITHIN; k++) {
        const inside = from + ((to - from) * (within.nodes[k]! + 1)) / 2
        const slice = (Math.sqrt(Math.max(0, radius * radius - inside * inside)) / longestMm) * SLICES
        const low = Math.min(SLICES - 1, slice | 0)
        const weight = ((to - from) / 2) * within.weights[k]!
        const ofAbove = weight * (slice - low)
        const ofBelow = weight - ofAbove
        const below = low * places
        const above = below + places
        for (let i = 0; i < places; i++)
          left[at + i]! += ofBelow * line[below + i]! + ofAbove * line[above + i]!
      }
      // Four quarters of the plane are alike.
      const rowMm2 = 4 * perMm2 * (reach / 2) * along.weights[m]!
      for (let i = 0; i < places; i++) {
        const n = rowMm2 * widths[i]!
        const h = left[at + i]!
        many[at + i] = n
        square += n * h * h
      }
      at += places
    }
  }
  return { answers: left, numbers: many, count, square }
}
