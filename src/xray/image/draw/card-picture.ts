import type { RowCaption } from '../card/card-layout.ts'
import type { Raster } from '../food/raster.ts'
import { halfExtents, type Piece } from '../pack/piece.ts'
import { BLACK, blankCanvas, type Canvas, printOnPlate, printText, textWidth, WHITE } from './canvas.ts'
import { drawLegend, LETTER_SCALE, LINE_PX, legendRows, STRIP_MARGIN_PX } from './card-legend.ts'
import { type GreyWindow, greyOf } from './grey-window.ts'
import { LETTER_HEIGHT } from './letters.ts'
import { drawMark, type Mark } from './marks.ts'

/** A mark at a place of the picture plane, surrounding a half width and half height; mm. */
export interface PlacedMark {
  readonly mark: Mark
  readonly u: number
  readonly v: number
  readonly halfU: number
  readonly halfV: number
}

/** Everything that goes into one picture. */
export interface PictureContent {
  readonly pixels: Raster
  readonly values: Float32Array
  readonly window: GreyWindow
  /** mm of the picture plane per dot of the picture. */
  readonly dotMm: number
  readonly pieces: readonly Piece[]
  readonly captions: readonly RowCaption[]
  readonly marks: readonly PlacedMark[]
  /** Lines printed under the picture; the first says that it is simulated. */
  readonly lines: readonly string[]
}

/** A size stands so far below its piece, outside the mark, and a row's words as far above, mm. */
const LABEL_BELOW_MM = 2.7

/** Room for a row's words and for a size like "0.8" under its piece, in mm of the picture plane. */
export function letterRoomMm(dotMm: number) {
  const heightMm = (LETTER_HEIGHT * LETTER_SCALE + 4) * dotMm + LABEL_BELOW_MM
  return { captionMm: heightMm, labelMm: heightMm, labelWidthMm: textWidth('0.8', LETTER_SCALE) * dotMm }
}

/** Draws a radiograph with its row captions, sizes and marks, and the strip of words underneath. */
export function drawPicture(content: PictureContent): Canvas {
  const { pixels, values, window, dotMm } = content
  const widthPx = Math.floor((pixels.columns * pixels.pitchMm) / dotMm)
  const pictureHeight = Math.floor((pixels.rows * pixels.pitchMm) / dotMm)
  const lines = content.lines.flatMap((line) => wrapped(line, widthPx - 2 * STRIP_MARGIN_PX))
  const legend = legendRows(widthPx)
  const stripHeight = 2 * STRIP_MARGIN_PX + (lines.length + legend.length) * LINE_PX
  const canvas = blankCanvas(widthPx, pictureHeight + stripHeight, WHITE)
  const columnOf = Int32Array.from({ length: widthPx }, (_, x) =>
    Math.min(pixels.columns - 1, Math.floor(((x + 0.5) * dotMm) / pixels.pitchMm)),
  )
  for (let y = 0; y < pictureHeight; y++) {
    const row = Math.min(pixels.rows - 1, Math.floor(((y + 0.5) * dotMm) / pixels.pitchMm))
    for (let x = 0; x < widthPx; x++)
      canvas.values[y * widthPx + x] = greyOf(window, values[row * pixels.columns + columnOf[x]!]!)
  }
  const x = (u: number) => (u - pixels.leftMm) / dotMm
  const y = (v: number) => (v - pixels.topMm) / dotMm
  for (const caption of content.captions)
    printOnPlate(
      canvas,
      caption.text,
      Math.max(4, Math.min(x(caption.u), widthPx - 4 - textWidth(caption.text, LETTER_SCALE))),
      y(caption.v),
      LETTER_SCALE,
    )
  for (const piece of content.pieces) {
    const text = String(piece.sizeMm)
    const below = y(piece.v + halfExtents(piece).acrossMm + LABEL_BELOW_MM)
    printOnPlate(canvas, text, x(piece.u) - textWidth(text, LETTER_SCALE) / 2, below, LETTER_SCALE)
  }
  for (const m of content.marks) drawMark(canvas, m.mark, x(m.u), y(m.v), m.halfU / dotMm, m.halfV / dotMm)
  let at = pictureHeight + STRIP_MARGIN_PX
  for (const line of lines) {
    printText(canvas, line, STRIP_MARGIN_PX, at, LETTER_SCALE, BLACK)
    at += LINE_PX
  }
  for (const row of legend) {
    drawLegend(canvas, row, at, dotMm)
    at += LINE_PX
  }
  return canvas
}

/** A line broken between words so that it fits a width in dots. */
function wrapped(line: string, widthPx: number): string[] {
  const result: string[] = []
  let current = ''
  for (const word of line.split(' ')) {
    const longer = current === '' ? word : `${current} ${word}`
    if (current !== '' && textWidth(longer, LETTER_SCALE) > widthPx) {
      result.push(current)
      current = word
    } else current = longer
  }
  return [...result, current]
}
