import type { RuleTrace } from '../../src/contract/advice.ts'

/** What became of a rule where it was asked: the same words on pages and in the terminal. */
export const OUTCOME_WORDS: Readonly<Record<RuleTrace['outcome'], string>> = {
  fired: 'applies',
  'not-fired': 'does not apply',
  unknown: 'not known, a value is missing',
  'not-applicable': 'does not concern it',
}
