/** Closed lists of words an advice speaks in. */
export const VERDICTS = ['best-fit', 'worth-a-test', 'conditional', 'no-build', 'not-suitable'] as const
/** partly: yes at every place where the piece can lie but the named ones, and it does not settle there. */
export const MEETS = ['yes', 'partly', 'maybe', 'no', 'cannot', 'open'] as const
/** Of a node: unknown hangs on a value nobody gave; not-applicable on one that does not exist there. */
export const TRUTHS = ['true', 'false', 'unknown', 'not-applicable'] as const
export const OUTCOMES = ['fired', 'not-fired', 'unknown', 'not-applicable'] as const
export const EFFECTS = ['excludes', 'weakens', 'favours', 'requires', 'places', 'tests', 'warns'] as const
/** What a rule, a threshold or a source rests on; a law is opened only where its words were seen in a copy. */
export const EVIDENCE = [
  'law-opened',
  'law-from-memory',
  'guidance',
  'standard',
  'private-standard',
  'paper',
  'fact-sheet',
  'computed',
  'common-practice',
  'memory',
  'judgement',
] as const
export const ORIGINS = ['entered', 'assumed', 'computed'] as const

export type Verdict = (typeof VERDICTS)[number]
export type Meets = (typeof MEETS)[number]
export type Truth = (typeof TRUTHS)[number]
