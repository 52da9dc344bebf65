import { besselJ1 } from '../../numerics/bessel.ts'
import { roomFor } from '../../numerics/working-room.ts'
import { answersAlong, evenly } from './answers-along.ts'
import type { Observer } from './observer.ts'
import { type Answers, grainsPerMm2, NINE_SIZES, placesAround, type SizeStep } from './shot-noise.ts'

/** Steps along the wire, and of the half chords of slices through a grain, in object pixels. */
const ALONG_STEP = 0.5
const CHORD_STEP = 0.5

/** Slices through grains on one set of frequencies. */
interface Slices {
  /** Distances from the wire: how far apart, mm, how many of them around a grain of a size, and at most. */
  readonly apartMm: number
  readonly placesOf: (size: SizeStep) => number
  readonly places: number
  /** [place × frequency]: cos(2πfx), x the distance from the wire. */
  readonly waves: Float64Array
  /** [slice × frequency]: ρJ₁(2πfρ)/f, the slice of half chord ρ, one step apart; the first is −1 step. */
  readonly count: number
  readonly stepMm: number
  readonly slices: Float64Array
}

function slicesOn({ frequencies, pack, imaging }: Observer): Slices {
  const points = frequencies.length
  const { stepMm: apartMm, placesOf, places } = placesAround(pack.grainMm, imaging.objectPixelMm)
  const waves = new Float64Array(places * points)
  for (let i = 0; i < places; i++)
    for (let q = 0; q < points; q++)
      waves[i * points + q] = Math.cos(2 * Math.PI * frequencies[q]! * i * apartMm)
  const stepMm = CHORD_STEP * imaging.objectPixelMm
  const longestMm = (NINE_SIZES.at(-1)!.ratio * pack.grainMm) / 2
  const count = evenly(Math.ceil(longestMm / stepMm) + 3)
  const slices = new Float64Array(count * points)
  for (let j = 0; j < count; j++) {
    const rho = (j - 1) * stepMm
    for (let q = 0; q < points; q++) {
      const f = frequencies[q]!
      slices[j * points + q] = (rho * besselJ1(2 * Math.PI * f * rho)) / f
    }
  }
  return { apartMm, placesOf, places, waves, count, stepMm, slices }
}

/** By the frequencies they are on, which images of one machine and food share. */
const sliced = new WeakMap<Float64Array, Slices>()
const [filters, lines, along, answers, numbers] = [roomFor(), roomFor(), roomFor(), roomFor(), roomFor()]

/**
 * What single grains leave in the filter of a wire: the line filter across it times a rectangle of the gathered
 * length along it, over the plane. A grain is met slice by slice: at y from its middle its half chord is √(R² − y²).
 * Slices are summed up from the middle outwards in steps that the half of the gathered length is a multiple of, so
 * that what lies under the rectangle is the difference of two sums.
 */
export function wireAnswers(
  observer: Observer,
  filter: Float64Array,
  gatheredMm: number,
  sizes: readonly SizeStep[],
): Answers {
  const { frequencies, pack, imaging } = observer
  const points = frequencies.length
  const bed = sliced.get(frequencies) ?? slicesOn(observer)
  sliced.set(frequencies, bed)
  const { waves, count: slicesCount, stepMm, slices, apartMm, placesOf } = bed
  const through = filters(slicesCount * points)
  for (let j = 0; j < slicesCount; j++)
    for (let q = 0; q < points; q++) through[j * points + q] = filter[q]! * slices[j * points + q]!
  const line = lines(slicesCount * bed.places)
  answersAlong(line, through, slicesCount, waves, bed.places, points)

  const halfSteps = Math.max(1, Math.ceil(gatheredMm / 2 / (ALONG_STEP * imaging.objectPixelMm)))
  const dy = gatheredMm / 2 / halfSteps
  const rowsOf = (size: SizeStep) => Math.ceil((pack.grainMm * size.ratio) / 2 / dy) + halfSteps
  const count = sizes.reduce((sum, size) => sum + rowsOf(size) * placesOf(size), 0)
  const left = answers(count)
  const many = numbers(count)
  let square = 0
  let at = 0
  for (const size of sizes) {
    const radius = (pack.grainMm * size.ratio) / 2
    const perMm2 = grainsPerMm2(pack.packing * pack.pathMm, pack.grainMm, size)
    const steps = Math.ceil(radius / dy)
    const places = placesOf(size)
    const sums = summedFromMiddle(line, bed.places, places, radius, stepMm, steps, dy)
    // Four quarters of the plane are alike.
    for (let m = 0; m < steps + halfSteps; m++) {
      const to = Math.min(steps, m + halfSteps) * places
      const from = Math.min(steps, Math.abs(m - halfSteps)) * places
      const sign = m < halfSteps ? -1 : 1
      const rowMm2 = 4 * perMm2 * (m === 0 ? dy / 2 : dy)
      for (let i = 0; i < places; i++) {
        const h = sums[to + i]! - sign * sums[from + i]!
        const n = i === 0 ? (rowMm2 * apartMm) / 2 : rowMm2 * apartMm
        left[at + i] = h
        many[at + i] = n
        square += n * h * h
      }
      at += places
    }
  }
  return { answers: left, numbers: many, count, square }
}

/** Slices of a grain summed from its middle to k steps outwards, [k × place]; `apart`: length of a row of `line`. */
function summedFromMiddle(
  line: Float64Array,
  apart: number,
  places: number,
  radius: number,
  stepMm: number,
  steps: number,
  dy: number,
): Float64Array {
  const width = places * (steps + 3)
  const room = along(2 * width)
  const sums = room.subarray(0, width)
  const rows = room.subarray(width, 2 * width)
  // rows: slices at −1 … steps + 1 steps from the middle; nothing beyond the rim.
  for (let k = 0; k <= steps + 1; k++) {
    const rho2 = radius * radius - k * k * dy * dy
    const row = (k + 1) * places
    if (rho2 <= 0) {
      rows.fill(0, row, row + places)
      continue
    }
    // Cubic between the four nearest half chords.
    const position = Math.sqrt(rho2) / stepMm + 1
    const low = position | 0
    const t = position - low
    const a = (-t * (t - 1) * (t - 2)) / 6
    const b = ((t + 1) * (t - 1) * (t - 2)) / 2
    const c = (-(t + 1) * t * (t - 2)) / 2
    const d = ((t + 1) * t * (t - 1)) / 6
    const base = (low - 1) * apart
    for (let i = 0; i < places; i++)
      rows[row + i] =
        a * line[base + i]! +
        b * line[base + apart + i]! +
        c * line[base + 2 * apart + i]! +
        d * line[base + 3 * apart + i]!
  }
  rows.copyWithin(0, 2 * places, 3 * places)
  sums.fill(0, 0, places)
  for (let k = 0; k < steps; k++) {
    const row = k * places
    for (let i = 0; i < places; i++)
      sums[row + places + i] =
        sums[row + i]! +
        (dy / 24) *
          (13 * (rows[row + places + i]! + rows[row + 2 * places + i]!) -
            rows[row + i]! -
            rows[row + 3 * places + i]!)
  }
  return sums
}
