import type { Input } from '../../trade-offs/input.ts'
import type { Setup } from '../../trade-offs/setup.ts'
import type { Sizes } from '../../trade-offs/sizes-at.ts'

/** Places of the control. */
export const STOPS = 9

/** The values a control can take, and which of them is the brief's own; −1 where the brief has none. */
export interface Stops {
  readonly values: readonly number[]
  readonly present: number
}

const nearest = (list: readonly number[], value: number) =>
  list.reduce((best, one, i) => (Math.abs(one - value) < Math.abs(list[best]! - value) ? i : best), 0)

/** Stops of an input over its range, the brief's own value among them. Null where it has none here. */
export function stopsOf(input: Input, setup: Setup, now: Sizes): Stops | null {
  const present = input.present(setup, now)
  if (present === null) return null
  const [from, to] = input.range(setup, now)
  const own = input.values?.(setup)
  const even = Array.from({ length: STOPS }, (_, i) =>
    input.scale === 'log' ? from * (to / from) ** (i / (STOPS - 1)) : from + ((to - from) * i) / (STOPS - 1),
  )
  const values = own ? [...new Set(even.map((value) => own[nearest(own, value)]!))] : [...even]
  values[nearest(values, present)] = present
  return { values, present: values.indexOf(present) }
}
