import { fft2d } from '../../../numerics/fft.ts'
import type { NoiseInverse } from './noise-inverse.ts'
import type { PictureTransform } from './picture-transform.ts'
import type { ReadArea } from './read-area.ts'
import { type Template, templateAt, templatesAt } from './template.ts'

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
    for (const template of pair) addAnswer(re, im, template, inverse, picture, template !== pair[0])
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

/** A round filter is read from a table over |f|, [step][channel]; a wire's is worked out at every frequency. */
function roundAnswer(template: Template, inverse: NoiseInverse): Float64Array {
  const { channels: n, steps, stepPerMm, values } = inverse
  const table = new Float64Array((steps + 1) * n)
  for (let step = 0; step <= steps; step++) {
    for (let j = 0; j < n; j++) {
      const s = templateAt(template, j, step * stepPerMm, 0)
      for (let c = 0; c < n; c++) table[step * n + c]! += values[(step * n + c) * n + j]! * s
    }
  }
  return table
}

/**
 * Adds a filter's answer to the transform of A + i·B, A and B the answers of two filters, as A or (turned) as B: one way
 * back then gives A as its real and B as its imaginary part. Filters are real and so are pictures: half of the
 * frequencies stand for the other half.
 */
function addAnswer(
  re: Float64Array,
  im: Float64Array,
  template: Template,
  inverse: NoiseInverse,
  picture: PictureTransform,
  turned: boolean,
): void {
  const { columns, rows, frequencyU, frequencyV, channels, stepOf } = picture
  const n = channels.length
  const round = template.alongMm === null ? roundAnswer(template, inverse) : null
  const { values } = inverse
  const shown = new Float64Array(n)
  for (let row = 0; row <= rows >> 1; row++) {
    const fv = frequencyV[row]!
    const mirrorRow = (rows - row) % rows
    for (let column = 0; column < columns; column++) {
      const at = row * columns + column
      const from = stepOf[at]! * n
      let [a, b] = [0, 0]
      if (round) {
        for (let c = 0; c < n; c++) {
          const f = round[from + c]!
          a += f * channels[c]!.re[at]!
          b += f * channels[c]!.im[at]!
        }
      } else {
        templatesAt(template, frequencyU[column]!, fv, shown)
        for (let c = 0; c < n; c++) {
          let f = 0
          for (let j = 0; j < n; j++) f += values[(from + c) * n + j]! * shown[j]!
          a += f * channels[c]!.re[at]!
          b += f * channels[c]!.im[at]!
        }
      }
      if (turned) {
        re[at]! -= b
        im[at]! += a
      } else {
        re[at] = a
        im[at] = b
      }
      if (mirrorRow === row) continue
      const mirror = mirrorRow * columns + (column === 0 ? 0 : columns - column)
      if (turned) {
        re[mirror]! += b
        im[mirror]! += a
      } else {
        re[mirror] = a
        im[mirror] = -b
      }
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
