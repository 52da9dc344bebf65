import type { Raster } from '../food/raster.ts'
import { type GreyWindow, greyOf } from './grey-window.ts'

/** A grey picture, 0 black to 255 white, row by row: one dot for each pixel the machine reads. */
export interface GreyPicture {
  readonly widthPx: number
  readonly heightPx: number
  readonly values: Uint8Array
}

/** Values of a picture as greys. */
export function greyPicture(pixels: Raster, values: Float32Array, window: GreyWindow): GreyPicture {
  const greys = new Uint8Array(values.length)
  for (let at = 0; at < greys.length; at++) greys[at] = greyOf(window, values[at]!)
  return { widthPx: pixels.columns, heightPx: pixels.rows, values: greys }
}
