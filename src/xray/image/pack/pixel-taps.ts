import { invertSymmetric, modulationTransfer } from '../../noise/noise.ts'

/**
 * Weights that turn grid cells (k to a pixel, each holding a mean over the cell) into a pixel: fitted so that
 * cell mean and weights together pass each frequency as aperture and blur do, sinc(f·a)·exp(−2(π·f·blur·a)²),
 * up to twice the pixel's Nyquist frequency. Along one axis; first tap at cell −reach of the pixel.
 */
export interface PixelTaps {
  readonly cellsPerPixel: number
  readonly reach: number
  readonly weights: Float64Array
}

/** Taps for k cells per pixel of a mm and a blur in pixels. */
export function pixelTaps(cellsPerPixel: number, pixelMm: number, blurPixels: number): PixelTaps {
  const k = cellsPerPixel
  const reach = Math.max(1, Math.ceil(k * (0.5 + 3 * blurPixels)) - Math.floor(k / 2))
  const count = k + 2 * reach
  const pairs = Math.ceil(count / 2)
  const offset = (j: number) => ((j + 0.5 - count / 2) * pixelMm) / k
  const normal = new Float64Array(pairs * pairs)
  const right = new Float64Array(pairs)
  const row = new Float64Array(pairs)
  for (let step = 0; step <= 120; step++) {
    const f = step / (120 * pixelMm)
    const x = (Math.PI * f * pixelMm) / k
    const cell = x < 1e-9 ? 1 : Math.sin(x) / x
    const importance = step === 0 ? 1e4 : 1
    for (let j = 0; j < pairs; j++) {
      const twice = j === count - 1 - j ? 1 : 2
      row[j] = twice * cell * Math.cos(2 * Math.PI * f * offset(j))
    }
    const wanted = modulationTransfer(f, pixelMm, blurPixels)
    for (let i = 0; i < pairs; i++) {
      right[i]! += importance * row[i]! * wanted
      for (let j = 0; j < pairs; j++) normal[i * pairs + j]! += importance * row[i]! * row[j]!
    }
  }
  for (let i = 0; i < pairs; i++) normal[i * pairs + i]! += 1e-3
  invertSymmetric(normal, pairs)
  const half = row.map((_, i) => right.reduce((sum, r, j) => sum + normal[i * pairs + j]! * r, 0))
  const weights = Float64Array.from({ length: count }, (_, j) => half[Math.min(j, count - 1 - j)]!)
  const total = weights.reduce((sum, w) => sum + w, 0)
  return { cellsPerPixel: k, reach, weights: weights.map((w) => w / total) }
}

/** Working space, used anew by every call; nothing outlives the call that fills it. */
let room = new Float32Array(0)
function roomFor(length: number): Float32Array {
  if (room.length < length) room = new Float32Array(length)
  return room
}

/** Cells (columns × rows) into pixels along both axes; cells beyond the edge repeat the last one. */
export function cellsToPixels(
  cells: Float32Array,
  columns: number,
  rows: number,
  taps: PixelTaps,
): Float32Array {
  const { cellsPerPixel: k, reach } = taps
  const weights = Float64Array.from(taps.weights)
  const count = weights.length
  const wide = columns / k
  const high = rows / k
  const line = new Float64Array(columns + 2 * reach + k)
  const across = roomFor(wide * rows)
  for (let row = 0; row < rows; row++) {
    const from = row * columns
    for (let i = 0; i < line.length; i++)
      line[i] = cells[from + (i < reach ? 0 : i - reach < columns ? i - reach : columns - 1)]!
    for (let i = 0, first = 0; i < wide; i++, first += k) {
      let sum = 0
      for (let j = 0; j < count; j++) sum += weights[j]! * line[first + j]!
      across[row * wide + i] = sum
    }
  }
  const result = new Float32Array(wide * high)
  const sums = new Float64Array(wide)
  for (let i = 0; i < high; i++) {
    sums.fill(0)
    for (let j = 0; j < count; j++) {
      const row = Math.min(rows - 1, Math.max(0, i * k - reach + j)) * wide
      const weight = weights[j]!
      for (let x = 0; x < wide; x++) sums[x]! += weight * across[row + x]!
    }
    result.set(sums, i * wide)
  }
  return result
}
