import type { Judged, Ordered, OrderedPoint } from '../stages.ts'
import { closeCallOf } from './close-call.ts'
import { combine } from './combine.ts'
import { contrastsAt } from './contrast.ts'
import { headlineAt, hopeless } from './headline.ts'
import { outcomesFor, rankOptions } from './rank.ts'

/** The stage: verdicts, ranks, what parts two options, and the smallest set that does the work. Values only. */
export function order(judged: Judged): Ordered {
  const { brief } = judged
  const points = brief.points.map((_, at) => orderPoint(judged, at))
  return {
    ...judged,
    points,
    combination: combine(brief, points),
    hopeless: hopeless(brief.contaminants.length, points),
  }
}

function orderPoint({ brief, detectors, outcomes }: Judged, at: number): OrderedPoint {
  const options = rankOptions(
    brief,
    detectors[at]!.map((detector) => ({
      ...detector,
      outcomes: outcomesFor(outcomes, at, detector.linedUp.machine.id),
    })),
  )
  const asked = outcomes.filter(({ pointIndex }) => pointIndex === at)
  return {
    options,
    apart: contrastsAt(brief.contaminants, asked, options),
    close: closeCallOf(brief, options),
    headline: headlineAt(options),
  }
}
