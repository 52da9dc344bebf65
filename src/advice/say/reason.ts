import type { Brief, Reason, RuleTrace } from '../../contract/index.ts'
import { placeId } from '../facts/place-id.ts'
import type { Line, PlacedOutcome } from '../stages.ts'

type Asked = Pick<PlacedOutcome, 'pointIndex' | 'equipment' | 'contaminant' | 'rule'> & {
  readonly line?: number | null
  readonly beside?: string
}

/**
 * Where a rule was asked and which rule: "p1.xray-dual.c0.rule-id", "l0.c0.rule-id" on a line, "c0.rule-id" on the
 * brief, "with.product.grainMm.rule-id" of a value not given.
 */
export const traceKey = (outcome: Asked) =>
  [
    ...(outcome.line == null &&
    outcome.pointIndex === null &&
    outcome.equipment === null &&
    outcome.contaminant === null
      ? []
      : [
          placeId({
            line: outcome.line ?? null,
            point: outcome.pointIndex,
            equipment: outcome.equipment,
            contaminant: outcome.contaminant,
          }),
        ]),
    ...(outcome.beside === undefined ? [] : ['with', outcome.beside]),
    outcome.rule,
  ].join('.')

/** A rule's outcome as the trace keeps it: where it was asked, what came out, the evaluated tree. */
export const toRuleTrace = (
  outcome: PlacedOutcome & { readonly line?: number | null; readonly beside?: string },
  brief: Brief,
  lines: readonly Line[] = [],
): RuleTrace => ({
  key: traceKey(outcome),
  id: outcome.rule,
  title: outcome.title,
  type: outcome.type,
  book: outcome.book,
  equipment: outcome.equipment ?? '',
  point: outcome.pointIndex === null ? '' : (brief.points[outcome.pointIndex]?.name ?? ''),
  contaminant: outcome.contaminant,
  ...(outcome.line == null ? {} : { line: lines[outcome.line]?.name ?? '' }),
  outcome: outcome.outcome,
  conditions: outcome.conditions,
  decisive: [...outcome.decisive],
})

/** A fired rule as a reason of an option; `decisive` when the verdict would differ without it. */
export const toReason = (outcome: PlacedOutcome, decisive: boolean): Reason => ({
  rule: outcome.rule,
  type: outcome.type,
  text: outcome.text,
  because: outcome.because,
  truth: outcome.truth,
  decisive,
  trace: traceKey(outcome),
  evidence: outcome.evidence,
  sources: [...outcome.sources],
  book: outcome.book,
  title: outcome.title,
  exception: outcome.exception,
  answeredBy: outcome.answeredBy,
  contaminant: outcome.contaminant,
})
