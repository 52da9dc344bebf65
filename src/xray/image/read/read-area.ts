import { columnMm, type Raster, rowMm } from '../food/raster.ts'
import type { Radiograph } from '../pack/radiograph.ts'
import { holds, innerRectangle, READ_MARGIN_MM, readDepthMm, type View } from '../pack/view.ts'
import { backgroundFor, flatten } from './background.ts'
import { type FoodCurve, withoutFood } from './cancel-food.ts'

/** The part of a radiograph that is read, made ready for filters: food cancelled, slow changes taken away. */
export interface ReadArea {
  readonly pixels: Raster
  /** 1 where a pixel is read. */
  readonly mask: Uint8Array
  readonly readPixels: number
  /** Food cancelled in all channels but the last, flattened, and let go softly over the blind margin. */
  readonly channels: readonly Float32Array[]
}

/** The filters see this much of the blind margin, fading out, so that the cut itself gives no answer, mm. */
const FADE_MM = READ_MARGIN_MM - 1

/** Cuts out and prepares what is read of a radiograph. Throws when the blind margins leave nothing. */
export function readArea(view: View, picture: Radiograph, curve: FoodCurve): ReadArea {
  const whole = picture.pixels
  const deep = innerRectangle(view, view.edgeMm + READ_MARGIN_MM + 1)
  const depths = new Float32Array(whole.columns * whole.rows)
  let [left, right, top, bottom] = [whole.columns, -1, whole.rows, -1]
  for (let row = 0, at = 0; row < whole.rows; row++) {
    for (let column = 0; column < whole.columns; column++, at++) {
      const u = columnMm(whole, column)
      const v = rowMm(whole, row)
      depths[at] = holds(deep, u, v) ? 1 : readDepthMm(view, u, v)
      if (depths[at]! <= -FADE_MM) continue
      left = Math.min(left, column)
      right = Math.max(right, column)
      top = Math.min(top, row)
      bottom = row
    }
  }
  const columns = right - left + 1
  const rows = bottom - top + 1
  const pixels: Raster = {
    pitchMm: whole.pitchMm,
    columns,
    rows,
    leftMm: whole.leftMm + left * whole.pitchMm,
    topMm: whole.topMm + top * whole.pitchMm,
  }
  const mask = new Uint8Array(Math.max(0, columns * rows))
  const seen = new Uint8Array(mask.length)
  const fade = new Float32Array(mask.length)
  let readPixels = 0
  for (let row = 0, at = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, at++) {
      const inside = depths[(top + row) * whole.columns + left + column]!
      if (inside <= -FADE_MM) continue
      seen[at] = 1
      fade[at] = inside >= 0 ? 1 : 0.5 + 0.5 * Math.cos((Math.PI * inside) / FADE_MM)
      if (inside >= 0) {
        mask[at] = 1
        readPixels++
      }
    }
  }
  if (readPixels === 0)
    throw new RangeError('nothing of this pack is read: it is smaller than its blind margins')
  const last = picture.channels.length - 1
  const shown = withoutMould(picture)
  const channels = shown.map((channel, i) => {
    const source = i === last ? channel : withoutFood(curve, shown, i)
    const cut = new Float32Array(columns * rows)
    for (let row = 0; row < rows; row++) {
      const from = (top + row) * whole.columns + left
      cut.set(source.subarray(from, from + columns), row * columns)
    }
    if (view.outline === 'standing cylinder') takeShape(cut, seen, columns, rows)
    return cut
  })
  flatten(channels, seen, columns, rows, backgroundFor(pixels.pitchMm))
  for (const channel of channels) for (let at = 0; at < channel.length; at++) channel[at]! *= fade[at]!
  return { pixels, mask, readPixels, channels }
}

/** The channels without what the machine has learnt of the mould. */
export function withoutMould({ channels, mould }: Radiograph): readonly Float32Array[] {
  return mould ? channels.map((channel, c) => channel.map((value, at) => value - mould[c]![at]!)) : channels
}

/** A standing container's own shape, the same at every height: the mean of each column is taken away. */
function takeShape(values: Float32Array, mask: Uint8Array, columns: number, rows: number): void {
  for (let column = 0; column < columns; column++) {
    let sum = 0
    let count = 0
    for (let row = 0; row < rows; row++) {
      const at = row * columns + column
      if (mask[at] === 0) continue
      sum += values[at]!
      count++
    }
    const mean = count > 0 ? sum / count : 0
    for (let row = 0; row < rows; row++) values[row * columns + column]! -= mean
  }
}
