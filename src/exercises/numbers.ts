/** Sizes and counts as exercises write them. */

/** mm, rounded up to 0.1 (below 1 mm to 0.01), so that no answer promises better than was computed. */
export function mm(size: number | null): string {
  if (size === null) return 'none'
  const step = size < 1 ? 100 : 10
  return `${(Math.ceil(size * step - 1e-9) / step).toFixed(size < 1 ? 2 : 1)} mm`
}

const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 })

/** A count: whole, with its thousands apart; two digits below 10. */
export const count = (value: number): string =>
  value < 10 ? String(Number(value.toPrecision(2))) : whole.format(value)

/** A number as people say it: whole from 100 on, thousands apart. */
export const written = (value: number): string =>
  value >= 100 ? whole.format(value) : String(Number(value.toPrecision(3)))

/** "1 in 1,000". */
export const oneIn = (share: number): string => `1 in ${whole.format(1 / share)}`

/** How many times as large, in words: "2.1 times"; whole from 10 on. */
export const times = (ratio: number): string =>
  `${ratio < 10 ? ratio.toFixed(1) : whole.format(Number(ratio.toPrecision(2)))} times`
