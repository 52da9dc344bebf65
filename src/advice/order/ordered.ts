import type { Brief } from '../../contract/index.ts'
import type { Close, Judged, Ordered, OrderedLine, OrderedPoint, Ranked, Use } from '../stages.ts'
import { closeCallOf } from './close-call.ts'
import { combine } from './combine.ts'
import { contrastsAt } from './contrast.ts'
import { linesOf } from './lines.ts'
import { outcomesFor, rankOptions } from './rank.ts'
import { rowsOf } from './rows.ts'

/** The stage: verdicts, ranks, what to use on each line, and what parts two options. Values only. */
export function order(judged: Judged): Ordered {
  const { brief } = judged
  const options = brief.points.map((_, at) => ranksAt(judged, at))
  const lines = linesOf(brief).map((line): OrderedLine => {
    const combined = combine(brief, line, options)
    return { ...line, combined, rows: rowsOf(brief, line, combined, options) }
  })
  const usesFor = (at: number) =>
    lines.filter(({ points }) => points.includes(at)).flatMap(({ combined }) => combined.uses)
  return {
    ...judged,
    lines,
    points: options.map((there, at) => pointOf(judged, at, there, usesFor(at))),
  }
}

const ranksAt = ({ brief, detectors, outcomes }: Judged, at: number): Ranked[] =>
  rankOptions(
    brief,
    at,
    detectors[at]!.map((detector) => ({
      ...detector,
      outcomes: outcomesFor(outcomes, at, detector.linedUp.machine.id),
    })),
  )

function pointOf(
  { brief, outcomes }: Judged,
  at: number,
  options: readonly Ranked[],
  uses: readonly Use[],
): OrderedPoint {
  const inUse = uses.filter(({ point }) => point === at).map(({ option }) => option.equipment)
  const asked = outcomes.filter(({ pointIndex }) => pointIndex === at)
  return {
    options,
    apart: contrastsAt(brief.contaminants, asked, options, inUse),
    close: uses.length > 0 ? closeCallAt(brief, options, inUse) : closeCallOf(brief, options),
  }
}

/** On a line that uses a machine a close call counts where that is the first of the order: nothing else hangs on it. */
function closeCallAt(brief: Brief, options: readonly Ranked[], inUse: readonly string[]): Close | null {
  const close = closeCallOf(brief, options)
  return close && inUse.includes(close.first.equipment) ? close : null
}
