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

function quantiles(values: Float32Array, mask: Uint8Array): { low: number; high: number; middle: number } {
  const step = Math.max(1, Math.floor(values.length / 20_000))
  const sample: number[] = []
  for (let i = 0; i < values.length; i += step) if (mask[i] === 1) sample.push(values[i]!)
  const sorted = Float64Array.from(sample).sort()
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))] ?? 0
  return { low: at(LOW_SHARE), high: at(HIGH_SHARE), middle: at(0.5) }
}

/** A window for a picture of attenuation: food in the middle greys, open beam white, metal black. */
export function packWindow(values: Float32Array, mask: Uint8Array): GreyWindow {
  const { low, high } = quantiles(values, mask)
  const range = Math.max(high - low, 1e-6)
  return { white: low - TOWARDS_WHITE * range, black: high + TOWARDS_BLACK * range }
}

/** A window for a picture of differences: nothing special is a light grey, denser is darker. */
export function differenceWindow(values: Float32Array, mask: Uint8Array): GreyWindow {
  const { low, high, middle } = quantiles(values, mask)
  const range = Math.max(high - low, 1e-6)
  return { white: middle - 1.1 * range, black: middle + 1.9 * range }
}

/** Grey 0 to 255 of a value. */
export function greyOf(window: GreyWindow, value: number): number {
  const share = (window.black - value) / (window.black - window.white)
  return share <= 0 ? 0 : share >= 1 ? 255 : Math.round(255 * share)
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
