import { ticks as niceTicks } from 'd3-array'
import { scaleLinear, scaleLog } from 'd3-scale'

/** Where a value stands on an axis, as a share of its length, and what is written beside it. */
export interface Axis {
  readonly from: number
  readonly to: number
  /** What it measures, in which unit, and that it is a log axis where it is one. */
  readonly title: string
  readonly ticks: readonly { readonly value: number; readonly words: string }[]
  /** 0 at the start of the axis, 1 at its end; values beyond stand at the ends. */
  readonly share: (value: number) => number
}

const plain = (value: number): string => String(Number(value.toPrecision(3))).replace('-', '−')

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

const written = (values: readonly number[], words: (value: number) => string): Axis['ticks'] =>
  values.map((value) => ({ value, words: words(value) }))

/** A log axis from one positive value to another; `title` names quantity and unit. */
export function logAxis(from: number, to: number, title: string, words = plain): Axis {
  const end = to > from ? to : from * 2
  const scale = scaleLog([from, end], [0, 1]).clamp(true)
  return {
    from,
    to: end,
    title: `${title}, log scale`,
    ticks: written(atLeastTwo(logTicks(from, end), from, end), words),
    share: (value) => scale(value),
  }
}

/** An even axis from one value to another; `title` names quantity and unit. */
export function linearAxis(from: number, to: number, title: string, words = plain, count = 6): Axis {
  const end = to > from ? to : from + 1
  const scale = scaleLinear([from, end], [0, 1]).clamp(true)
  return {
    from,
    to: end,
    title,
    ticks: written(atLeastTwo(niceTicks(from, end, count), from, end), words),
    share: (value) => scale(value),
  }
}

const ENDS_MM = [0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 1, 1.5, 2, 3, 5, 7, 10, 15, 20, 30, 50]

/** A log axis that holds all given sizes in mm and ends on round ones; 0.5 to 10 mm where there are none. */
export function sizeAxis(sizesMm: readonly (number | null)[], title = 'size, mm'): Axis {
  const sizes = sizesMm.filter((size): size is number => size !== null && size > 0)
  const least = sizes.length > 0 ? Math.min(...sizes) : 0.5
  const most = sizes.length > 0 ? Math.max(...sizes) : 10
  return logAxis(
    ENDS_MM.findLast((end) => end <= least * 0.95) ?? ENDS_MM[0]!,
    ENDS_MM.find((end) => end >= most * 1.05) ?? ENDS_MM.at(-1)!,
    title,
  )
}

/** Chance of finding, 0 to 1, written in per cent. */
export const chanceAxis = (): Axis =>
  linearAxis(0, 1, 'chance of finding, %', (value) => String(Math.round(value * 100)), 4)
