import { noiseWidth } from '../draw/grey-window.ts'
import type { Raster } from '../food/raster.ts'
import type { Piece } from '../pack/piece.ts'
import type { ReadSheet } from './machine-card.ts'

/** What taking the food off did to the pieces of a sheet. */
export interface FoodTakenOff {
  /** Median over the pieces: how far they stand out with the food off, over how far they do in the plain picture. */
  readonly gain: number
  /** Pieces that stand out in either picture and entered. */
  readonly pieces: number
}

/** A piece counts from so many noise widths in either picture: below, its place shows noise. */
const STANDS_OUT = 3

/**
 * Compares the two pictures of a machine with two energies, piece by piece: peak over noise with the food
 * cancelled, over peak over noise in the flattened plain picture. Null with one energy or where no piece stands out.
 */
export function foodTakenOff({ reading }: ReadSheet, pieces: readonly Piece[]): FoodTakenOff | null {
  const { channels, mask, pixels } = reading.area
  if (channels.length < 2) return null
  const off = channels[0]!
  const plain = channels.at(-1)!
  const [offWidth, plainWidth] = [noiseWidth(off, mask), noiseWidth(plain, mask)]
  const gains: number[] = []
  for (const piece of pieces) {
    const withOff = peakAt(off, pixels, piece) / offWidth
    const inPlain = peakAt(plain, pixels, piece) / plainWidth
    if (Math.max(withOff, inPlain) >= STANDS_OUT) gains.push(withOff / Math.max(inPlain, 1))
  }
  if (gains.length === 0) return null
  return { gain: gains.sort((a, b) => a - b)[gains.length >> 1]!, pieces: gains.length }
}

/** Strongest value within a pixel of a piece's middle. */
function peakAt(values: Float32Array, pixels: Raster, piece: Piece): number {
  const column = Math.floor((piece.u - pixels.leftMm) / pixels.pitchMm)
  const row = Math.floor((piece.v - pixels.topMm) / pixels.pitchMm)
  let peak = 0
  for (let y = Math.max(0, row - 1); y <= Math.min(pixels.rows - 1, row + 1); y++)
    for (let x = Math.max(0, column - 1); x <= Math.min(pixels.columns - 1, column + 1); x++)
      peak = Math.max(peak, Math.abs(values[y * pixels.columns + x]!))
  return peak
}
