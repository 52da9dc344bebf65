import type { Brief, Reason, RuleTrace } from '../contract/index.ts'
import type { PlacedOutcome } from './judge.ts'

/** A rule's outcome as the trace keeps it: where it was asked, what came out, the evaluated tree. */
export const toRuleTrace = (outcome: PlacedOutcome, brief: Brief): RuleTrace => ({
  id: outcome.rule,
  equipment: outcome.equipment ?? '',
  point: outcome.pointIndex === null ? '' : (brief.points[outcome.pointIndex]?.name ?? ''),
  contaminant: outcome.contaminant,
  outcome: outcome.outcome,
  conditions: outcome.conditions,
})

/** A fired rule as a reason of an option; `decisive` when the verdict would differ without it. */
export const toReason = (outcome: PlacedOutcome, decisive: boolean): Reason => ({
  rule: outcome.rule,
  type: outcome.type,
  text: outcome.text,
  because: outcome.because,
  truth: outcome.truth,
  decisive,
  evidence: outcome.evidence,
  sources: [...outcome.sources],
  book: outcome.book,
  title: outcome.title,
  exception: outcome.exception,
  contaminant: outcome.contaminant,
})
