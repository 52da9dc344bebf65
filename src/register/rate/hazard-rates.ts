import type { ControlChance } from '../sizes/control-chance.ts'
import { type FragmentSizes, shareFrom } from '../sizes/fragment-sizes.ts'
import { type Log, type Range, rangesOf, streamsFrom, upperWithoutFinds } from './incidence.ts'
import { foundAfter, missed } from './misses.ts'
import type { ControlLog, Stream } from './streams.ts'

/** Smallest lengths counted, mm: all; the ball of 3 mm as a chunk; hard or sharp in food eaten as it is. */
export const COUNTED_FROM_MM = [0, 5, 7] as const

export interface MissRow {
  readonly fromLengthMm: number
  readonly before: number | null
  readonly after: number | null
  readonly afterDependent: number | null
  readonly range: Range | null
}

export interface HazardRates {
  /** Pieces arriving per million in each stream; null where no log can say. */
  readonly arriving: readonly (number | null)[]
  readonly total: number | null
  readonly totalRange: Range | null
  /** True where nothing was found: the figures are upper 95 % bounds. */
  readonly isBound: boolean
  /** Chance averaged over everything that arrives in the first stream, of each control. */
  readonly meanChances: readonly number[]
  readonly rows: readonly MissRow[]
}

export interface RateInput {
  readonly sizes: FragmentSizes
  readonly controls: readonly ControlChance[]
  readonly streams: readonly Stream[]
  readonly logs: readonly ControlLog[]
}

/** How streams are told from the logs: the log that fixes each group, its streams, and the weights inside it. */
interface Group {
  readonly log: Log
  readonly streams: readonly number[]
  readonly weights: readonly number[]
}

/**
 * Pieces arriving and passing per million, by smallest length counted. Several controls are in series under the
 * integral; finds turn into arrivals by the mean chance of what reached the control; an interval is over events,
 * scaled by the pieces an event shed. Nothing logged: no figure.
 */
export function hazardRates({ sizes, controls, streams, logs }: RateInput): HazardRates {
  const behind = (stream: Stream) => controls.slice(stream.before)
  const reach = (stream: Stream, control: number) =>
    control < stream.before
      ? 0
      : foundAfter(sizes, controls.slice(stream.before, control), controls[control]!)
  const groups = groupsOf(streams, logs, reach)
  const nothing = groups.length > 0 && logs.every(({ events }) => events === 0)
  const perEvent = piecesPerEvent(logs)
  const rates = nothing ? boundOf(groups) : streamsFrom(groups.map(({ log }) => log)).map((r) => r * perEvent)
  const arriving = streams.map((_, s) => {
    const g = groups.findIndex((group) => group.streams.includes(s))
    return g < 0 ? null : rates[g]! * groups[g]!.weights[groups[g]!.streams.indexOf(s)]!
  })
  const known = arriving.every((rate) => rate !== null)
  const sum = (share: (stream: Stream) => number) =>
    known ? streams.reduce((all, stream, s) => all + arriving[s]! * share(stream), 0) : null
  const weightsOf = (share: (stream: Stream) => number) =>
    groups.map(({ streams: own, weights }) =>
      own.reduce((all, s, i) => all + weights[i]! * share(streams[s]!) * perEvent, 0),
    )
  const misses = COUNTED_FROM_MM.map((from) => streams.map((stream) => missed(sizes, behind(stream), from)))
  const lists = [
    weightsOf(() => 1),
    ...misses.map((row) => weightsOf((stream) => row[streams.indexOf(stream)]!.independent)),
  ]
  const ranges =
    known && !nothing
      ? rangesOf(
          groups.map(({ log }) => log),
          lists,
        )
      : null
  return {
    arriving,
    total: sum(() => 1),
    totalRange: ranges?.[0] ?? null,
    isBound: nothing,
    meanChances: controls.map((control) => foundAfter(sizes, [], control)),
    rows: COUNTED_FROM_MM.map((fromLengthMm, i) => ({
      fromLengthMm,
      before: sum(() => shareFrom(sizes, fromLengthMm)),
      after: sum((stream) => misses[i]![streams.indexOf(stream)]!.independent),
      afterDependent: sum((stream) => misses[i]![streams.indexOf(stream)]!.dependent),
      range: ranges?.[i + 1] ?? null,
    })),
  }
}

function piecesPerEvent(logs: readonly ControlLog[]): number {
  const events = logs.reduce((sum, log) => sum + log.events, 0)
  return events === 0 ? 1 : logs.reduce((sum, log) => sum + log.found, 0) / events
}

const boundOf = (groups: readonly Group[]): number[] =>
  groups.map(({ log }, g) => upperWithoutFinds(log.millionPacks, log.reach[g]!))

/**
 * With all shares known, or one stream: one rate, from all logs together. Else each stream from the first log at or
 * behind its entry; streams that share that log cannot be told apart and are taken to enter where fewest controls act.
 */
function groupsOf(
  streams: readonly Stream[],
  logs: readonly ControlLog[],
  reach: (stream: Stream, control: number) => number,
): Group[] {
  if (logs.length === 0) return []
  const all = streams.map((_, s) => s)
  if (streams.length === 1 || streams.every(({ share }) => share !== null)) {
    const shares = streams.map(({ share }) => (streams.length === 1 ? 1 : share!))
    const total = shares.reduce((sum, share) => sum + share, 0)
    const weights = shares.map((share) => share / total)
    const packs = Math.max(...logs.map(({ millionPacks }) => millionPacks))
    const seen = logs.reduce(
      (sum, log) =>
        sum +
        (log.millionPacks / packs) *
          all.reduce((inner, s) => inner + weights[s]! * reach(streams[s]!, log.control), 0),
      0,
    )
    if (seen <= 0) return []
    const events = logs.reduce((sum, log) => sum + log.events, 0)
    return [{ log: { events, millionPacks: packs, reach: [seen] }, streams: all, weights }]
  }
  const firstLog = streams.map(({ before }) => logs.find(({ control }) => control >= before))
  const used = logs.filter((log) => firstLog.includes(log))
  return used.map((log) => {
    const own = all.filter((s) => firstLog[s] === log)
    const latest = own.at(-1)!
    const ofGroup = (group: ControlLog) => all.filter((s) => firstLog[s] === group).at(-1)!
    return {
      log: {
        events: log.events,
        millionPacks: log.millionPacks,
        reach: used.map((group) => reach(streams[ofGroup(group)]!, log.control)),
      },
      streams: own,
      weights: own.map((s) => (s === latest ? 1 : 0)),
    }
  })
}
