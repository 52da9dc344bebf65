import { type Family, RECORD_GROUNDS, type RecordGround } from '../../contract/index.ts'

/** Families of equipment a rule may be about. */
export const FAMILIES = [
  'xray',
  'coil',
  'static-field',
  'optical',
  'magnet',
  'sieve',
  'density',
] as const satisfies readonly Family[]

/**
 * What the register and the check plan ask: the record as a whole, a hazard of a line, a control of a hazard before
 * and after it is classed, a machine to be checked. Such rules are asked once for each, whatever their `each`.
 */
export { RECORD_GROUNDS, type RecordGround }

/**
 * Grounds of the second run, over what was ordered: one line (with each contaminant on it), one machine the
 * recommendation puts into use, one option in its place among the others of its point, two machines in use that can
 * find the same piece, two options of a point between which the order is close, the one recommended beside another,
 * a size that an option misses, or a quoted size.
 */
export const ORDERED_GROUNDS = [
  'line',
  'use',
  'option',
  'together',
  'close',
  'apart',
  'miss',
  'quote',
] as const

/** Grounds of a piece that was found: the answer as a whole, and each machine it passed. */
export const FOUND_GROUNDS = ['found', 'finder'] as const

/** Grounds of what was searched for last: a change of the line (or that there is none), and a value not given. */
export const SEARCHED_GROUNDS = ['change', 'missing'] as const
export type SearchedGround = (typeof SEARCHED_GROUNDS)[number]

/** What a rule stands on: the brief, an inspection point, a family of equipment at a point, the order, a search, or a part of the record. */
export const GROUNDS = [
  'brief',
  'point',
  ...FAMILIES,
  ...ORDERED_GROUNDS,
  ...SEARCHED_GROUNDS,
  ...FOUND_GROUNDS,
  ...RECORD_GROUNDS,
] as const
export type Ground = (typeof GROUNDS)[number]

/** How often a rule is asked on its ground: once, or once for every contaminant of the brief. */
export const EACH = ['once', 'contaminant'] as const
export type Each = (typeof EACH)[number]

/** Ground and frequency in one word: "xray", "xray:contaminant", "brief:contaminant", … */
export type RuleScope = Ground | `${Ground}:contaminant`

export const scopeOf = (ground: Ground, each: Each): RuleScope =>
  each === 'contaminant' ? `${ground}:contaminant` : ground

export function splitScope(scope: RuleScope): { ground: Ground; each: Each } {
  const [ground, each] = scope.split(':') as [Ground, string | undefined]
  return { ground, each: each === 'contaminant' ? 'contaminant' : 'once' }
}

/** The family a ground names, or null for the others. */
export const familyOf = (ground: Ground): Family | null =>
  (FAMILIES as readonly string[]).includes(ground) ? (ground as Family) : null

export const isRecordGround = (ground: Ground): ground is RecordGround =>
  (RECORD_GROUNDS as readonly string[]).includes(ground)
/** True for a ground that is asked about after the options are in order. */
export const isOrdered = (ground: Ground): boolean => (ORDERED_GROUNDS as readonly string[]).includes(ground)

/** True for a ground of a piece that was found. */
export const isFound = (ground: Ground): boolean => (FOUND_GROUNDS as readonly string[]).includes(ground)

/** The search a rule speaks of; null for the others. */
export const searchOf = (rule: { readonly appliesTo: readonly Ground[] }): SearchedGround | null =>
  SEARCHED_GROUNDS.find((ground) => rule.appliesTo.includes(ground)) ?? null

/** Scopes a rule is asked in. */
export const scopesOf = (rule: {
  readonly appliesTo: readonly Ground[]
  readonly each: Each
}): readonly RuleScope[] => rule.appliesTo.map((ground) => scopeOf(ground, rule.each))
