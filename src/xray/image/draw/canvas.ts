import { LETTER_ADVANCE, LETTER_HEIGHT, LETTER_WIDTH, letterRows, printable } from './letters.ts'

/** A grey picture to draw on: 0 black, 255 white, row by row. */
export interface Canvas {
  readonly widthPx: number
  readonly heightPx: number
  readonly values: Uint8Array
}

export const WHITE = 255
export const BLACK = 0

export function blankCanvas(widthPx: number, heightPx: number, grey: number): Canvas {
  return { widthPx, heightPx, values: new Uint8Array(widthPx * heightPx).fill(grey) }
}

function dot(canvas: Canvas, x: number, y: number, grey: number): void {
  const column = Math.round(x)
  const row = Math.round(y)
  if (column < 0 || row < 0 || column >= canvas.widthPx || row >= canvas.heightPx) return
  canvas.values[row * canvas.widthPx + column] = grey
}

export function fillBox(
  canvas: Canvas,
  x: number,
  y: number,
  width: number,
  height: number,
  grey: number,
): void {
  for (let j = 0; j < height; j++) for (let i = 0; i < width; i++) dot(canvas, x + i, y + j, grey)
}

/** A closed or open line through points, so many dots thick; with `dashPx` every other dash is left out. */
export function strokeLine(
  canvas: Canvas,
  points: readonly (readonly [number, number])[],
  thick: number,
  grey: number,
  dashPx = 0,
): void {
  let walked = 0
  for (let k = 0; k + 1 < points.length; k++) {
    const [x0, y0] = points[k]!
    const [x1, y1] = points[k + 1]!
    const length = Math.hypot(x1 - x0, y1 - y0)
    const steps = Math.max(1, Math.ceil(length * 2))
    for (let i = 0; i <= steps; i++) {
      const at = walked + (length * i) / steps
      if (dashPx > 0 && Math.floor(at / dashPx) % 2 === 1) continue
      const x = x0 + ((x1 - x0) * i) / steps
      const y = y0 + ((y1 - y0) * i) / steps
      const from = -(thick - 1) / 2
      for (let a = 0; a < thick; a++)
        for (let b = 0; b < thick; b++) dot(canvas, x + from + a, y + from + b, grey)
    }
    walked += length
  }
}

/** Width of a text, px. */
export function textWidth(text: string, scale: number): number {
  return Math.max(0, printable(text).length * LETTER_ADVANCE - 1) * scale
}

/** Prints a text with its left top corner at (x, y). */
export function printText(
  canvas: Canvas,
  text: string,
  x: number,
  y: number,
  scale: number,
  grey: number,
): void {
  const letters = printable(text)
  for (let k = 0; k < letters.length; k++) {
    const rows = letterRows(letters[k]!)
    for (let row = 0; row < LETTER_HEIGHT; row++) {
      for (let column = 0; column < LETTER_WIDTH; column++) {
        if (((rows[row]! >> (LETTER_WIDTH - 1 - column)) & 1) === 0) continue
        const left = Math.round(x) + (k * LETTER_ADVANCE + column) * scale
        fillBox(canvas, left, Math.round(y) + row * scale, scale, scale, grey)
      }
    }
  }
}

/** Share of its grey a picture keeps under words. */
const PLATE_KEEPS = 0.4

/** Prints white words on a darkened strip of the picture, which stays visible underneath. */
export function printOnPlate(canvas: Canvas, text: string, x: number, y: number, scale: number): void {
  const left = Math.max(0, Math.round(x) - 2)
  const top = Math.max(0, Math.round(y) - 2)
  const right = Math.min(canvas.widthPx, Math.round(x) + textWidth(text, scale) + 2)
  const bottom = Math.min(canvas.heightPx, Math.round(y) + LETTER_HEIGHT * scale + 2)
  for (let row = top; row < bottom; row++) {
    for (let column = left; column < right; column++) {
      const at = row * canvas.widthPx + column
      canvas.values[at] = canvas.values[at]! * PLATE_KEEPS
    }
  }
  printText(canvas, text, x, y, scale, WHITE)
}
