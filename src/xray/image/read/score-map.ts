import { fft2d } from '../../../numerics/fft.ts'
import type { NoiseInverse } from './noise-inverse.ts'
import type { PictureTransform } from './picture-transform.ts'
import type { ReadArea } from './read-area.ts'
import { type Template, templateAt } from './template.ts'

/** Answer of one filter at every pixel of the read area, in standard deviations of its own noise. */
export interface ScoreMap {
  readonly template: Template
  readonly scores: Float32Array
  /** Noise of the answer before it was divided by it (unit of the strength, near the filter's own d′). */
  readonly sigma: number
}

const CLIP = 3.5
/** Standard deviation of a normal variate cut at ±3.5 is this share of the whole one's. */
const CLIPPED_SHARE = 0.9945
/** Every so manieth pixel enters the noise of a map (a prime, so that no column is preferred). */
const NOISE_EVERY = 3

/**
 * Runs the filters K⁻¹S over a read area; the noise each map is divided by is measured on the map itself, where
 * pixels are usable (1).
 */
export function scoreMaps(
  area: ReadArea,
  usable: Uint8Array,
  picture: PictureTransform,
  filters: readonly Template[],
  inverse: NoiseInverse,
): ScoreMap[] {
  const { columns, rows } = picture
  const re = new Float64Array(columns * rows)
  const im = new Float64Array(columns * rows)
  const maps: ScoreMap[] = []
  for (let i = 0; i < filters.length; i += 2) {
    const pair = filters.slice(i, i + 2)
    answerPair(re, im, new Answer(pair[0]!, inverse), pair[1] ? new Answer(pair[1], inverse) : null, picture)
    fft2d(re, im, columns, rows, true)
    pair.forEach((template, second) => {
      maps.push({ template, ...inNoise(second === 1 ? im : re, columns, area, usable) })
    })
  }
  return maps
}

/** Cuts the read area out of a transformed answer and divides it by its noise. */
function inNoise(answer: Float64Array, columns: number, area: ReadArea, usable: Uint8Array) {
  const { pixels, mask } = area
  const scores = new Float32Array(pixels.columns * pixels.rows)
  for (let row = 0; row < pixels.rows; row++) {
    const from = row * columns
    scores.set(answer.subarray(from, from + pixels.columns), row * pixels.columns)
  }
  const sigma = noiseOf(scores, usable)
  for (let at = 0; at < scores.length; at++) scores[at] = mask[at]! > 0 && sigma > 0 ? scores[at]! / sigma : 0
  return { scores, sigma }
}

/** A filter K⁻¹S, read per frequency; a round one from a table over |f|. */
class Answer {
  readonly filter: Float64Array
  readonly #template: Template
  readonly #inverse: NoiseInverse
  readonly #round: Float64Array | null

  constructor(template: Template, inverse: NoiseInverse) {
    const n = inverse.channels
    this.filter = new Float64Array(n)
    this.#template = template
    this.#inverse = inverse
    this.#round = null
    if (template.alongMm !== null) return
    const table = new Float64Array((inverse.steps + 1) * n)
    for (let step = 0; step <= inverse.steps; step++) {
      this.at(step, step * inverse.stepPerMm, 0)
      table.set(this.filter, step * n)
    }
    this.#round = table
  }

  /** Sets `filter` to K⁻¹S at a frequency (1/mm), the noise being read at its step. */
  at(step: number, fu: number, fv: number): void {
    const { filter } = this
    const n = filter.length
    const round = this.#round
    if (round) {
      for (let c = 0; c < n; c++) filter[c] = round[step * n + c]!
      return
    }
    const { values } = this.#inverse
    filter.fill(0)
    for (let j = 0; j < n; j++) {
      const s = templateAt(this.#template, j, fu, fv)
      for (let c = 0; c < n; c++) filter[c]! += values[(step * n + c) * n + j]! * s
    }
  }
}

/**
 * Transform of A + i·B, A and B the answers of two filters: one way back then gives A as its real and B as
 * its imaginary part. Filters are real and so are pictures: half of the frequencies stand for the other half.
 */
function answerPair(
  re: Float64Array,
  im: Float64Array,
  one: Answer,
  other: Answer | null,
  picture: PictureTransform,
): void {
  const { columns, rows, frequencyU, frequencyV, channels, stepOf } = picture
  const n = channels.length
  for (let row = 0; row <= rows >> 1; row++) {
    const fv = frequencyV[row]!
    const mirrorRow = (rows - row) % rows
    for (let column = 0; column < columns; column++) {
      const fu = frequencyU[column]!
      const at = row * columns + column
      const step = stepOf[at]!
      let [aRe, aIm, bRe, bIm] = [0, 0, 0, 0]
      one.at(step, fu, fv)
      for (let c = 0; c < n; c++) {
        aRe += one.filter[c]! * channels[c]!.re[at]!
        aIm += one.filter[c]! * channels[c]!.im[at]!
      }
      if (other) {
        other.at(step, fu, fv)
        for (let c = 0; c < n; c++) {
          bRe += other.filter[c]! * channels[c]!.re[at]!
          bIm += other.filter[c]! * channels[c]!.im[at]!
        }
      }
      re[at] = aRe - bIm
      im[at] = aIm + bRe
      if (mirrorRow === row) continue
      const mirror = mirrorRow * columns + (column === 0 ? 0 : columns - column)
      re[mirror] = aRe + bIm
      im[mirror] = bRe - aIm
    }
  }
}

/** Standard deviation over the mask, what stands out left aside. */
function noiseOf(values: Float32Array, mask: Uint8Array): number {
  let limit = Number.POSITIVE_INFINITY
  let sigma = 0
  for (let round = 0; round < 4; round++) {
    let sum = 0
    let count = 0
    for (let i = 0; i < values.length; i += NOISE_EVERY) {
      if (mask[i] === 0 || Math.abs(values[i]!) > limit) continue
      sum += values[i]! * values[i]!
      count++
    }
    sigma = count > 0 ? Math.sqrt(sum / count) / (round === 0 ? 1 : CLIPPED_SHARE) : 0
    limit = CLIP * sigma
  }
  return sigma
}
