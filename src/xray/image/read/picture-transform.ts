import { fastLength, fftOfTwo } from '../../../numerics/fft.ts'
import type { ExposedPack } from '../pack/exposed-pack.ts'
import { backgroundFor, backgroundPasses } from './background.ts'
import { noiseStepPerMm } from './noise-inverse.ts'
import type { ReadArea } from './read-area.ts'
import { pixelTransfer } from './template.ts'

/**
 * Transforms of the channels of a read area with room around it, already multiplied by what pixel, blur and
 * background let through: the part of every filter that does not depend on what is looked for.
 */
export interface PictureTransform {
  readonly columns: number
  readonly rows: number
  readonly frequencyU: Float64Array
  readonly frequencyV: Float64Array
  /** Nearest step of the noise's frequency table. */
  readonly stepOf: Uint16Array
  readonly channels: readonly { readonly re: Float64Array; readonly im: Float64Array }[]
}

/** Room around the area so that a filter does not reach across to the other side, mm. */
const APART_MM = 8

/** Transforms the channels of a read area, two at a time. */
export function transformPicture(exposed: ExposedPack, area: ReadArea): PictureTransform {
  const { pixels } = area
  const columns = fastLength(pixels.columns + APART_MM / pixels.pitchMm)
  const rows = fastLength(pixels.rows + APART_MM / pixels.pitchMm)
  const u = axis(exposed, columns)
  const v = axis(exposed, rows)
  const laid = (channel: Float32Array | undefined) => {
    const room = new Float64Array(columns * rows)
    for (let row = 0; channel && row < pixels.rows; row++) {
      room.set(channel.subarray(row * pixels.columns, (row + 1) * pixels.columns), row * columns)
    }
    return room
  }
  const channels: { re: Float64Array; im: Float64Array }[] = []
  for (let c = 0; c < area.channels.length; c += 2) {
    const first = { re: laid(area.channels[c]), im: laid(area.channels[c + 1]) }
    const second = fftOfTwo(first.re, first.im, columns, rows)
    channels.push(first)
    if (c + 1 < area.channels.length) channels.push(second)
  }
  for (const { re, im } of channels) {
    for (let row = 0, at = 0; row < rows; row++) {
      for (let column = 0; column < columns; column++, at++) {
        const gain = u.transfer[column]! * v.transfer[row]! * (1 - u.slow[column]! * v.slow[row]!)
        re[at]! *= gain
        im[at]! *= gain
      }
    }
  }
  const stepOf = new Uint16Array(columns * rows)
  const perStep = 1 / noiseStepPerMm(exposed.objectPixelMm)
  for (let row = 0, at = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, at++)
      stepOf[at] = Math.sqrt(u.frequency[column]! ** 2 + v.frequency[row]! ** 2) * perStep + 0.5
  }
  return { columns, rows, frequencyU: u.frequency, frequencyV: v.frequency, stepOf, channels }
}

function axis(exposed: ExposedPack, count: number) {
  const a = exposed.objectPixelMm
  const background = backgroundFor(a)
  const frequency = Float64Array.from(
    { length: count },
    (_, i) => (i < count / 2 ? i : i - count) / (count * a),
  )
  return {
    frequency,
    transfer: frequency.map((f) => pixelTransfer(exposed, f)),
    slow: frequency.map((f) => backgroundPasses(background, f * a)),
  }
}
