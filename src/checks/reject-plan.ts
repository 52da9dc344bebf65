import type { Brief, CheckPoint, FactValues, Point } from '../contract/index.ts'

import { beltTiming, fallTiming, speedAfterFall } from './reject-timing.ts'

type Timing = Omit<CheckPoint['reject'], 'because'>

/** What is known of the reject at a point; `timing` says which sum was made, or that its figures are missing. */
export function rejectAt(brief: Brief, pointIndex: number): { plan: Timing; facts: FactValues } {
  const point = brief.points[pointIndex]!
  const plan =
    point.stage === 'free-fall' ? falling(point) : point.stage === 'packed' ? onBelt(point) : open(point)
  const timing =
    plan.possible !== null
      ? point.stage === 'free-fall'
        ? 'fall'
        : 'belt'
      : point.stage === 'packed' || point.stage === 'free-fall'
        ? 'missing'
        : 'none'
  return {
    plan,
    facts: {
      'check.rejectType': plan.type,
      'check.rejectGiven': point.reject?.type !== undefined,
      'check.rejectPossible': plan.possible,
      'check.rejectTiming': timing,
      'check.neededGapMm': plan.neededGapMm,
      'check.shortestGapMm': plan.shortestGapMm,
    },
  }
}

const open = ({ reject }: Point): Timing => ({
  type: reject?.type ?? '',
  delayMs: null,
  windowMs: null,
  shortestGapMm: null,
  neededGapMm: null,
  possible: null,
})

/** On a belt: tracked by travel, refused where the shortest gap leaves no room. */
function onBelt(point: Point): Timing {
  const { reject, packsPerMin, speedMPerMin, lanes, lengthMm } = point
  const { distanceToRejectMm, cycleMs, positionErrorMm, shortestGapMm } = reject ?? {}
  if (
    packsPerMin === null ||
    distanceToRejectMm === undefined ||
    cycleMs === undefined ||
    positionErrorMm === undefined ||
    shortestGapMm === undefined
  )
    return { ...open(point), shortestGapMm: shortestGapMm ?? null }
  const timing = beltTiming({
    speedMPerMin,
    packMm: lengthMm,
    pitchMm: (1000 * speedMPerMin * lanes) / packsPerMin,
    distanceMm: distanceToRejectMm,
    cycleMs,
    positionErrorMm,
    shortestGapMm,
  })
  return {
    type: reject?.type ?? '',
    delayMs: timing.delayMs,
    windowMs: [timing.actAtLeastMs, timing.actAtMostMs],
    shortestGapMm,
    neededGapMm: timing.neededGapMm,
    possible: timing.possible,
  }
}

/** In free fall: from the speed at the coil, after the height already fallen, to the flap. */
function falling(point: Point): Timing {
  const { distanceToRejectMm, cycleMs } = point.reject ?? {}
  if (distanceToRejectMm === undefined || cycleMs === undefined || point.fallHeightMm === null)
    return open(point)
  const { fallMs, possible } = fallTiming(
    speedAfterFall(point.fallHeightMm / 1000),
    distanceToRejectMm,
    cycleMs,
  )
  return { ...open(point), delayMs: fallMs, possible }
}
