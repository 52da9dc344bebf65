import type { ConditionTrace } from '../../src/contract/advice.ts'
import type { EFFECTS, EVIDENCE, OUTCOMES } from '../../src/contract/advice-words.ts'

export type Outcome = (typeof OUTCOMES)[number]

/** One example of a rule: what differs from the base brief, and what is expected of the rule there. */
export interface RuleExample {
  readonly fires: boolean
  /** Machine, contaminant and point it is held to; empty where any will do. */
  readonly place: string
  /** The differences as JSON text. */
  readonly differs: string
  /** The whole brief of the example, packed for a link; null where it is no brief that can be advised on. */
  readonly packed: string | null
}

/** Where a rule came out how for the brief in hand. */
export interface RulePlace {
  readonly outcome: Outcome
  /** Point and machine in words; empty for the brief as a whole. */
  readonly where: string
  /** The contaminants it came out so for, in words; empty where it speaks of none. */
  readonly pieces: readonly string[]
  readonly point: number | null
  readonly equipment: string
}

export interface RuleThreshold {
  readonly id: string
  readonly label: string
  readonly value: number
  readonly unit: string
  readonly evidence: (typeof EVIDENCE)[number]
  readonly source: string
}

/** A rule as the book shows it. */
export interface RuleCard {
  readonly id: string
  readonly title: string
  readonly subject: string
  readonly appliesTo: readonly string[]
  /** True where it is asked once for every contaminant. */
  readonly perContaminant: boolean
  readonly type: (typeof EFFECTS)[number]
  /** What it says, with the names of values in place of the values. */
  readonly text: string
  readonly because: string
  readonly exception: string
  readonly evidence: (typeof EVIDENCE)[number]
  readonly book: string
  readonly conditions: ConditionTrace
  readonly thresholds: readonly RuleThreshold[]
  readonly sources: readonly { readonly id: string; readonly text: string; readonly mark: string }[]
  readonly examples: readonly RuleExample[]
  /** What it did for the brief in hand; null without one. */
  readonly places: readonly RulePlace[] | null
}

/** What a reader narrows the book down to; empty: everything. */
export interface RuleFilter {
  readonly subject: string
  readonly family: string
  readonly evidence: string
  readonly outcome: string
}

/** The outcome a rule is filed under: the strongest it had anywhere. */
export function outcomeOf({ places }: Pick<RuleCard, 'places'>): Outcome | null {
  if (places === null) return null
  const order: readonly Outcome[] = ['fired', 'unknown', 'not-fired', 'not-applicable']
  return order.find((outcome) => places.some((place) => place.outcome === outcome)) ?? 'not-applicable'
}

/** The rules that pass a filter, in the order of the book. */
export function filtered(cards: readonly RuleCard[], filter: RuleFilter): readonly RuleCard[] {
  const holds = (wanted: string, ...given: (string | null)[]) => wanted === '' || given.includes(wanted)
  return cards.filter(
    (card) =>
      holds(filter.subject, card.subject) &&
      holds(filter.family, ...card.appliesTo) &&
      holds(filter.evidence, card.evidence) &&
      holds(filter.outcome, outcomeOf(card)),
  )
}
