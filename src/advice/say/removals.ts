import type { Removal } from '../../contract/index.ts'
import type { RemovalAssessment } from '../../separation/assessment.ts'
import { removalRows } from '../../separation/removal-rows.ts'
import type { PlacedOutcome } from '../stages.ts'
import { toReason } from './reason.ts'

/**
 * What one machine takes out at a point, with what the rules say of it: a rule that excludes makes a row
 * unsuitable in its own words, all others stand beside it. A rule asked once speaks of every row. Never ranked.
 */
export function judgedRemovals(
  assessment: RemovalAssessment,
  pointIndex: number,
  outcomes: readonly PlacedOutcome[],
): Removal[] {
  const spoken = outcomes.filter(
    (o) => o.outcome === 'fired' && o.pointIndex === pointIndex && o.equipment === assessment.equipment,
  )
  return removalRows(assessment).map((row): Removal => {
    const own = spoken.filter((o) => o.contaminant === null || o.contaminant === row.contaminant)
    const against = own.filter((o) => o.type === 'excludes')
    return {
      ...row,
      unsuitable: [...new Set(against.map((o) => o.text))].join(' '),
      reasons: own.map((o) => toReason(o, o.type === 'excludes')),
    }
  })
}
