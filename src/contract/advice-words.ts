/** Closed lists of words an advice speaks in. */
export const VERDICTS = ['best-fit', 'worth-a-test', 'conditional', 'not-suitable'] as const
export const MEETS = ['yes', 'maybe', 'no', 'cannot', 'open'] as const
/** Of a node: unknown hangs on a value nobody gave; not-applicable on one that does not exist there. */
export const TRUTHS = ['true', 'false', 'unknown', 'not-applicable'] as const
export const OUTCOMES = ['fired', 'not-fired', 'unknown', 'not-applicable'] as const
export const EFFECTS = ['excludes', 'weakens', 'favours', 'requires', 'places', 'tests', 'warns'] as const
export const EVIDENCE = [
  'standard',
  'regulation',
  'paper',
  'computed',
  'common practice',
  'judgement',
] as const
export const ORIGINS = ['entered', 'assumed', 'computed'] as const

export type Verdict = (typeof VERDICTS)[number]
export type Meets = (typeof MEETS)[number]
export type Truth = (typeof TRUTHS)[number]
