import { stepOfPoint } from '../../brief/entry.ts'
import type { Brief } from '../../contract/index.ts'
import type { Answers } from '../line/answers.ts'

/** Rework of a line: the steps that send it back, and the last place in the flow where it can come back in. */
export interface Rework {
  readonly from: string
  readonly to: string
  readonly at: number
}

const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase()

/**
 * Null where the flow sends no rework back. Where nobody says at which step it comes back in, the unfavourable holds:
 * at the step it leaves.
 */
export function reworkOf(brief: Brief, answers: Answers): Rework | null {
  const flow = brief.given.flow ?? []
  const leaves = flow.flatMap(({ step, rework }, at) => (rework ? [{ step, at }] : []))
  const last = leaves.at(-1)
  if (!last) return null
  const said = answers.word('plant.rework-to', '').value
  const at = flow.findIndex(({ step }) => same(step, said))
  return {
    from: leaves.map(({ step }) => step).join(', '),
    to: at >= 0 ? flow[at]!.step : `${last.step} (nobody said where; the place it leaves is taken)`,
    at: at >= 0 ? at : last.at,
  }
}

/** Whether rework comes back in behind an inspection point; false where the flow does not place the point. */
export function comesBackBehind(
  brief: Brief,
  rework: Rework | null,
  pointIndex: number | undefined,
): boolean {
  const place = pointIndex === undefined ? null : stepOfPoint(brief, pointIndex)
  return rework !== null && place !== null && rework.at > place
}
