import { stepOfPoint, waysIn } from '../../brief/entry.ts'
import type { Brief, Find } from '../../contract/index.ts'
import type { InPlace } from '../line/controls-in-place.ts'

/** Pieces of a contaminant that enter before a control (its number in the line), or behind all of them. */
export interface Stream {
  readonly before: number
  readonly steps: readonly string[]
  /** Share of all pieces; null where nobody said. */
  readonly share: number | null
}

/**
 * The ways in of a contaminant by the first control behind them: a control counts only for what entered before it.
 * Where the flow or the place of a point is not said, everything is taken to enter before the first control.
 */
export function streamsOf(
  brief: Brief,
  contaminant: number,
  controls: readonly { readonly pointIndex: number }[],
): Stream[] {
  const places = controls.map(({ pointIndex }) => stepOfPoint(brief, pointIndex))
  const ways = waysIn(brief, contaminant)
  if (ways.length === 0) return [{ before: 0, steps: [], share: null }]
  const streams = new Map<number, { steps: string[]; share: number | null }>()
  for (const { step, at, share } of ways) {
    const first = places.findIndex((place) => place === null || at <= place)
    const before = first < 0 ? controls.length : first
    const stream = streams.get(before) ?? { steps: [], share: 0 }
    stream.steps.push(step)
    stream.share = share === null || stream.share === null ? null : stream.share + share
    streams.set(before, stream)
  }
  return [...streams].map(([before, rest]) => ({ before, ...rest })).sort((a, b) => a.before - b.before)
}

/** What a control's log holds of a contaminant; customers' finds are no log of a control. */
export interface ControlLog {
  readonly control: number
  readonly millionPacks: number
  readonly found: number
  readonly events: number
}

/** Logs by control; finds without a point belong to the last control of the line. */
export function logsOf(
  finds: readonly Find[],
  contaminant: number,
  controls: readonly InPlace[],
): ControlLog[] {
  return controls.flatMap(({ point }, control) => {
    const mine = finds.filter(
      (find) =>
        find.contaminant === contaminant &&
        find.by !== 'customer' &&
        (find.point === undefined ? control === controls.length - 1 : find.point === point),
    )
    if (mine.length === 0) return []
    const sum = (pick: (find: Find) => number) => mine.reduce((all, find) => all + pick(find), 0)
    return [
      {
        control,
        millionPacks: sum(({ packs }) => packs) / 1e6,
        found: sum(({ found }) => found),
        events: sum(({ events, found }) => events ?? found),
      },
    ]
  })
}
