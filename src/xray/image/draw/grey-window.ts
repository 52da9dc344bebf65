import { quickselect } from 'd3-array'

/** Which values of a picture become white and which black; between them the grey is linear. */
export interface GreyWindow {
  readonly white: number
  readonly black: number
}

const LOW_SHARE = 0.01
const HIGH_SHARE = 0.97
/** How far the window reaches beyond the ordinary values, in widths of their range (judgement, looks). */
const TOWARDS_WHITE = 0.35
const TOWARDS_BLACK = 0.9
/** An even food keeps its calm: the range counts as at least this share of the food there is (judgement, looks). */
const LEAST_RANGE = 0.25
/** Every so manieth value enters the quantiles. */
const SAMPLED = 7

/**
 * The grey scale of a pack, in millimetres of its solid food along the beam: food in the middle greys, open
 * beam white, what weighs as much as far more food black. One for all machines that look the same way.
 */
export function foodWindow(foodMm: Float32Array): GreyWindow {
  const sample: number[] = []
  for (let i = 0; i < foodMm.length; i += SAMPLED) if (foodMm[i]! > 0) sample.push(foodMm[i]!)
  const sorted = Float64Array.from(sample).sort()
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))] ?? 1
  const [low, high] = [at(LOW_SHARE), at(HIGH_SHARE)]
  const range = Math.max(high - low, LEAST_RANGE * high)
  return { white: Math.max(0, low - TOWARDS_WHITE * range), black: high + TOWARDS_BLACK * range }
}

/** The grey scale of a picture with its food taken off, in widths of its own noise: nothing special is a light grey. */
export const NOISE_WINDOW: GreyWindow = { white: -5, black: 9 }

/** Grey 0 to 255 of a value. */
export function greyOf(window: GreyWindow, value: number): number {
  const share = (window.black - value) / (window.black - window.white)
  return share <= 0 ? 0 : share >= 1 ? 255 : Math.round(255 * share)
}

/** Median of the distance from the median, as a standard deviation of normal noise (1.4826 × MAD), where mask is 1. */
export function noiseWidth(values: Float32Array, mask: Uint8Array): number {
  const sample: number[] = []
  for (let i = 0; i < values.length; i += SAMPLED) if (mask[i] === 1) sample.push(values[i]!)
  const middleOf = (list: number[]) => quickselect(list, list.length >> 1)[list.length >> 1] ?? 0
  const middle = middleOf(sample)
  return 1.4826 * middleOf(sample.map((value) => Math.abs(value - middle)))
}

/** Mean over 3 × 3 pixels weighted 1-2-1 both ways, for looking at noisy differences only. */
export function smoothed(values: Float32Array, columns: number, rows: number): Float32Array {
  const across = new Float32Array(values.length)
  const result = new Float32Array(values.length)
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const at = row * columns + column
      const left = column > 0 ? values[at - 1]! : values[at]!
      const right = column + 1 < columns ? values[at + 1]! : values[at]!
      across[at] = (left + 2 * values[at]! + right) / 4
    }
  }
  for (let at = 0; at < result.length; at++) {
    const above = at >= columns ? across[at - columns]! : across[at]!
    const below = at + columns < result.length ? across[at + columns]! : across[at]!
    result[at] = (above + 2 * across[at]! + below) / 4
  }
  return result
}
