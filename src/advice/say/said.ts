import type { Traced } from '../../contract/index.ts'
import type { LineOutcome } from '../stages.ts'
import { traceKey } from './reason.ts'

/** What a rule says, with its link. */
export const saidOf = (outcome: LineOutcome): Traced => ({
  text: outcome.text,
  rule: outcome.rule,
  trace: traceKey(outcome),
  sources: [...outcome.sources],
})

/** Traceds one after the other, each once. */
export const joined = (outcomes: readonly Pick<LineOutcome, 'text'>[]): string =>
  [...new Set(outcomes.map(({ text }) => text))].join(' ')

/** Traceds that several places say alike, once each. */
export function once(said: readonly Traced[]): Traced[] {
  return [...new Map(said.map((one) => [one.text, one])).values()]
}
