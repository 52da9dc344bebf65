import { ticks as niceTicks } from 'd3-array'
import { scaleLinear, scaleLog } from 'd3-scale'

/** Where a value stands on an axis, as a share of its length, and the values written beside it. */
export interface Axis {
  readonly from: number
  readonly to: number
  readonly ticks: readonly { readonly value: number; readonly words: string }[]
  /** 0 at the start of the axis, 1 at its end; values beyond stand at the ends. */
  readonly share: (value: number) => number
}

const plain = (value: number): string => String(Number(value.toPrecision(3))).replace('-', '−')

/** Share of the axis that the last tick's words take up together with the unit. */
const LAST_WORDS = 0.18

/** The last tick carries the unit; ticks its words would cover are left out. */
function labelled(
  values: readonly number[],
  unit: string,
  words: (value: number) => string,
  share: (value: number) => number,
): Axis['ticks'] {
  const last = values.at(-1) ?? 0
  return values
    .filter((value) => !unit || value === last || share(last) - share(value) > LAST_WORDS)
    .map((value) => ({ value, words: value === last && unit ? `${words(value)} ${unit}` : words(value) }))
}

/** 1, 2, 5, 10 … between two values; more within one decade, whole decades only over more than three. */
function logTicks(from: number, to: number): number[] {
  const decades = Math.log10(to / from)
  const steps = decades > 3 ? [1] : decades > 1.1 ? [1, 2, 5] : [1, 1.5, 2, 3, 5, 7]
  const first = Math.floor(Math.log10(from))
  const last = Math.ceil(Math.log10(to))
  const all = Array.from({ length: last - first + 1 }, (_, k) => first + k).flatMap((power) =>
    steps.map((step) => Number(`${step}e${power}`)),
  )
  return all.filter((value) => value >= from * 0.999 && value <= to * 1.001)
}

/** Keeps at least two ticks where the axis is too short for round ones. */
const atLeastTwo = (ticks: readonly number[], from: number, to: number): readonly number[] =>
  ticks.length >= 2 ? ticks : [from, to]

/** A log axis from one positive value to another. */
export function logAxis(from: number, to: number, unit: string, words = plain): Axis {
  const end = to > from ? to : from * 2
  const scale = scaleLog([from, end], [0, 1]).clamp(true)
  return {
    from,
    to: end,
    ticks: labelled(atLeastTwo(logTicks(from, end), from, end), unit, words, scale),
    share: (value) => scale(value),
  }
}

/** An even axis from one value to another. */
export function linearAxis(from: number, to: number, unit: string, words = plain, count = 6): Axis {
  const end = to > from ? to : from + 1
  const scale = scaleLinear([from, end], [0, 1]).clamp(true)
  return {
    from,
    to: end,
    ticks: labelled(atLeastTwo(niceTicks(from, end, count), from, end), unit, words, scale),
    share: (value) => scale(value),
  }
}

const ENDS_MM = [0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 1, 1.5, 2, 3, 5, 7, 10, 15, 20, 30, 50]

/** A log axis that holds all given sizes in mm and ends on round ones; 0.5 to 10 mm where there are none. */
export function sizeAxis(sizesMm: readonly (number | null)[]): Axis {
  const sizes = sizesMm.filter((size): size is number => size !== null && size > 0)
  const least = sizes.length > 0 ? Math.min(...sizes) : 0.5
  const most = sizes.length > 0 ? Math.max(...sizes) : 10
  return logAxis(
    ENDS_MM.findLast((end) => end <= least * 0.95) ?? ENDS_MM[0]!,
    ENDS_MM.find((end) => end >= most * 1.05) ?? ENDS_MM.at(-1)!,
    'mm',
  )
}

/** Chance of finding, 0 to 1, written in per cent. */
export const chanceAxis = (): Axis => linearAxis(0, 1, '', (value) => `${Math.round(value * 100)} %`, 4)
