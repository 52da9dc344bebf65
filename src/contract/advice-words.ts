/** Closed lists of words an advice speaks in. */
export const VERDICTS = ['best-fit', 'worth-a-test', 'conditional', 'no-build', 'not-suitable'] as const
/** partly: yes at every place where the piece can lie but the named ones, and it does not settle there. */
export const MEETS = ['yes', 'partly', 'maybe', 'no', 'cannot', 'open'] as const
/** Of a node: unknown hangs on a value nobody gave; not-applicable on one that does not exist there. */
export const TRUTHS = ['true', 'false', 'unknown', 'not-applicable'] as const
export const OUTCOMES = ['fired', 'not-fired', 'unknown', 'not-applicable'] as const
/** prevents: how a contaminant is kept out where no machine takes care of it. */
export const EFFECTS = [
  'excludes',
  'weakens',
  'favours',
  'requires',
  'places',
  'tests',
  'warns',
  'headline',
  'leaves',
  'asks',
  'grounds',
  'combines',
  'multiplies',
  'hinges',
  'parts',
  'alters',
  'matters',
  'misses',
  'judges',
  'tells',
  'notes',
  'records',
  'prevents',
] as const
/** Who answers for what is required of a machine or its place. */
export const ANSWERED_BY = ['supplier', 'buyer'] as const
/** Places in the register and the check plan that rules of the effect "records" fill. */
export const SLOTS = [
  'question',
  'answer',
  'limit',
  'monitoring',
  'verification',
  'note',
  'acceptable',
  'unseen',
  'revalidate',
  'retention',
  'auditor',
  'carrier',
  'pieces',
  'position',
  'when',
  'if-fails',
  'rejects',
  'reject-type',
  'reject-timing',
  'proof',
  'keeping',
  'drill',
  'careful',
  'record-line',
  'site',
] as const
/** Parts of the first sentence, in the order in which they are said. */
export const HEADLINE_PARTS = ['put', 'meets', 'misses', 'remedy'] as const
/** What is left to do about a contaminant. */
export const LEFT = ['done', 'test', 'prevent', 'agree', 'look-elsewhere', 'set-a-size'] as const
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
/** Parts of the register and the check plan that rules are asked of. */
export const RECORD_GROUNDS = ['record', 'hazard', 'control', 'classed', 'check'] as const

export type RecordGround = (typeof RECORD_GROUNDS)[number]
export type Slot = (typeof SLOTS)[number]
