import type { Family } from '../../contract/index.ts'

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

/** What a rule stands on: the whole brief, one inspection point, or one family of equipment at a point. */
export const GROUNDS = ['brief', 'point', ...FAMILIES] as const
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

/** The family a ground names, or null for the brief and the point. */
export const familyOf = (ground: Ground): Family | null =>
  ground === 'brief' || ground === 'point' ? null : ground

/** Scopes a rule is asked in. */
export const scopesOf = (rule: {
  readonly appliesTo: readonly Ground[]
  readonly each: Each
}): readonly RuleScope[] => rule.appliesTo.map((ground) => scopeOf(ground, rule.each))
