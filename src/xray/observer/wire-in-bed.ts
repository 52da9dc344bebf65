import { besselJ1 } from '../../numerics/bessel.ts'
import { gaussLegendre } from '../../numerics/gauss-legendre.ts'
import type { Observer } from './observer.ts'
import { dot } from './round-in-bed.ts'
import { type Answers, grainsPerMm2, NINE_SIZES, placesAround, recent, type SizeStep } from './shot-noise.ts'

/** Half chords of a slice through a grain at which its answer is tabulated, and places along the wire. */
const SLICES = 24
const ALONG = 8
const WITHIN = 8

/** Slices through grains on one set of frequencies. */
interface Slices {
  readonly longestMm: number
  readonly places: number
  /** [slice][place × frequency]: ρJ₁(2πfρ)/f·cos(2πfx), the slice of half chord ρ as a line filter meets it at x. */
  readonly answers: readonly Float64Array[]
  /** Δx, mm. */
  readonly widths: Float64Array
}

function slicesOn({ frequencies, pack, imaging }: Observer): Slices {
  const points = frequencies.length
  const { reachMm, places } = placesAround(pack.grainMm, imaging.objectPixelMm)
  const rule = gaussLegendre(places)
  const longestMm = (NINE_SIZES.at(-1)!.ratio * pack.grainMm) / 2
  const waves = new Float64Array(places * points)
  for (let i = 0; i < places; i++)
    for (let q = 0; q < points; q++)
      waves[i * points + q] = Math.cos(Math.PI * frequencies[q]! * reachMm * (rule.nodes[i]! + 1))
  const answers = Array.from({ length: SLICES + 1 }, (_, j) => {
    const rho = (j * longestMm) / SLICES
    const slice = frequencies.map((f) => (rho * besselJ1(2 * Math.PI * f * rho)) / f)
    return waves.map((wave, k) => wave * slice[k % points]!)
  })
  return { longestMm, places, answers, widths: rule.weights.map((w) => (w * reachMm) / 2) }
}

const sliced = recent<Slices>(2)

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
  const key = [imaging.objectPixelMm, pack.grainMm, frequencies.length].join()
  const { longestMm, places, answers: rows, widths } = sliced(key, () => slicesOn(observer))
  const points = frequencies.length
  const lines = rows.map((row) => {
    const line = new Float64Array(places)
    for (let i = 0; i < places; i++) line[i] = dot(filter, row, i * points)
    return line
  })
  const answers = new Float64Array(sizes.length * ALONG * places)
  const numbers = new Float64Array(answers.length)
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
        const share = slice - low
        const weight = ((to - from) / 2) * within.weights[k]!
        const [below, above] = [lines[low]!, lines[low + 1]!]
        for (let i = 0; i < places; i++)
          answers[at + i]! += weight * (below[i]! + share * (above[i]! - below[i]!))
      }
      // Four quarters of the plane are alike.
      const rowMm2 = 4 * perMm2 * (reach / 2) * along.weights[m]!
      for (let i = 0; i < places; i++) {
        numbers[at + i] = rowMm2 * widths[i]!
        square += numbers[at + i]! * answers[at + i]! ** 2
      }
      at += places
    }
  }
  return { answers, numbers, square }
}
