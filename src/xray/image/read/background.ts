/**
 * Slow changes of a picture, as a machine takes them away before it looks for small things: a running mean
 * over the part that is read, three times over (close to a Gaussian of the given standard deviation).
 */
export interface Background {
  /** Half width of each running mean, pixels. */
  readonly halfPx: number
}

/** Standard deviation of the background's blur, mm: longer than any piece, shorter than a pack (judgement). */
export const BACKGROUND_MM = 10
const ROUNDS = 3

/** The running mean that comes nearest to the wanted blur: variance of three boxes of width w is (w² − 1)/4. */
export function backgroundFor(pixelMm: number): Background {
  const width = Math.sqrt((12 / ROUNDS) * (BACKGROUND_MM / pixelMm) ** 2 + 1)
  return { halfPx: Math.max(1, Math.round((width - 1) / 2)) }
}

/** Share of a wave of f per pixel along one axis that the background keeps (and the picture loses). */
export function backgroundPasses(background: Background, perPixel: number): number {
  const width = 2 * background.halfPx + 1
  const x = Math.PI * perPixel
  const one = Math.abs(x) < 1e-9 ? 1 : Math.sin(x * width) / (width * Math.sin(x))
  return one ** ROUNDS
}

/** Subtracts the background from pictures of one mask, in place; outside the mask they become 0. */
export function flatten(
  pictures: readonly Float32Array[],
  mask: Uint8Array,
  columns: number,
  rows: number,
  background: Background,
): void {
  const blurred = (values: Float32Array) => {
    for (let round = 0; round < ROUNDS; round++) runningMean(values, columns, rows, background.halfPx)
    return values
  }
  const weight = blurred(Float32Array.from(mask))
  for (const values of pictures) {
    for (let i = 0; i < values.length; i++) if (mask[i] === 0) values[i] = 0
    const slow = blurred(Float32Array.from(values))
    for (let i = 0; i < values.length; i++) if (mask[i]! > 0) values[i]! -= slow[i]! / weight[i]!
  }
}

/** Mean over a square of 2·half + 1 pixels, zero outside, in place: along the rows, then down the columns. */
function runningMean(values: Float32Array, columns: number, rows: number, half: number): void {
  const scale = 1 / (2 * half + 1)
  const line = new Float64Array(columns)
  for (let row = 0; row < rows; row++) {
    const from = row * columns
    let sum = 0
    for (let i = 0; i < columns; i++) line[i] = values[from + i]!
    for (let i = 0; i < Math.min(half, columns); i++) sum += line[i]!
    for (let i = 0; i < columns; i++) {
      if (i + half < columns) sum += line[i + half]!
      if (i > half) sum -= line[i - half - 1]!
      values[from + i] = sum * scale
    }
  }
  const source = Float32Array.from(values)
  const sums = new Float64Array(columns)
  const add = (row: number, sign: number) => {
    for (let i = 0; i < columns; i++) sums[i]! += sign * source[row * columns + i]!
  }
  for (let row = 0; row < Math.min(half, rows); row++) add(row, 1)
  for (let row = 0; row < rows; row++) {
    if (row + half < rows) add(row + half, 1)
    if (row > half) add(row - half - 1, -1)
    for (let i = 0; i < columns; i++) values[row * columns + i] = sums[i]! * scale
  }
}
