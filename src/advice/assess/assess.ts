import type { Brief } from '../../contract/index.ts'
import type { Assessed } from '../stages.ts'
import { assessDetector, assessRemovals } from './assess-machine.ts'
import { lineUp } from './line-up.ts'

/** The stage: every machine that can stand at a point, worked out by the physics of its family. */
export function assess(brief: Brief): Assessed {
  const lineUps = brief.points.map((point) => lineUp(brief, point))
  return {
    brief,
    removals: lineUps.map((line, pointIndex) => assessRemovals(brief, pointIndex, line)),
    detectors: lineUps.map((line, pointIndex) =>
      line.flatMap((linedUp) => {
        const done = assessDetector(brief, pointIndex, linedUp)
        return done ? [{ linedUp, ...done }] : []
      }),
    ),
  }
}
