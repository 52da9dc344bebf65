import { roundedUp } from '../numerics/rounded-up.ts'

/** Sizes and counts as exercises write them. */

/** A size as every table shows it; "none" where there is none. */
export const mm = (size: number | null): string => (size === null ? 'none' : `${roundedUp(size)} mm`)

const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 })

/** A count: whole, with its thousands apart; two digits below 10. */
export const count = (value: number): string =>
  value < 10 ? String(Number(value.toPrecision(2))) : whole.format(value)

/** A number as people say it: whole from 100 on, thousands apart. */
export const written = (value: number): string =>
  value >= 100 ? whole.format(value) : String(Number(value.toPrecision(3)))

/** Units that come in whole things. */
const COUNTED = new Set(['packs', 'bags'])

/** A number with its unit as people say it; packs and bags are counted. */
export const amount = (value: number, unit: string): string =>
  `${COUNTED.has(unit) ? count(value) : written(value)} ${unit}`.trim()

/** "1 in 1,000". */
export const oneIn = (share: number): string => `1 in ${whole.format(1 / share)}`

/** How many times as large, in words: "2.1 times"; whole from 10 on. */
export const times = (ratio: number): string =>
  `${ratio < 10 ? ratio.toFixed(1) : whole.format(Number(ratio.toPrecision(2)))} times`
