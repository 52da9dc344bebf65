import type { ConditionTrace, Fact, RuleTrace, Truth } from '../../contract/index.ts'
import { factOperand, leavesOf } from '../book/condition.ts'
import { fillText } from '../book/placeholders.ts'
import type { BookRule, Rulebook } from '../book/rule-schema.ts'
import { type RuleScope, scopesOf } from '../book/rule-scope.ts'
import { THRESHOLD } from '../facts/list/fact-definition.ts'
import { FACTS } from '../facts/list/fact-list.ts'
import type { RuleOutcome } from '../stages.ts'
import { decisiveLeaves } from './decisive.ts'
import { explain, type Known, truthOf } from './explain.ts'

/** Rules of a book that are asked in a scope, by id. */
export function rulesIn({ rules }: Rulebook, scope: RuleScope): readonly BookRule[] {
  const scopes = byScope.get(rules) ?? new Map<RuleScope, readonly BookRule[]>()
  byScope.set(rules, scopes)
  const found = scopes.get(scope) ?? rules.filter((rule) => scopesOf(rule).includes(scope))
  scopes.set(scope, found)
  return found
}
const byScope = new WeakMap<Rulebook['rules'], Map<RuleScope, readonly BookRule[]>>()

/**
 * Outcome of every rule of a scope by the explainer alone: synchronous and fast, for searching what would
 * change an advice. A rule whose truth hangs on a value nobody knows (null) is unknown; one that hangs on a
 * fact this scope does not have (left out) is not applicable. Of a trial nobody reads the tree: it is left out.
 */
export function explainAll(book: Rulebook, scope: RuleScope, facts: readonly Fact[]): readonly RuleOutcome[] {
  const known = factMap(facts)
  const lookUp = (id: string): Known | undefined => thresholdAt(book, id) ?? known.get(id) ?? nameOnly(id)
  return rulesIn(book, scope).map((rule): RuleOutcome => {
    const conditions = book.trial ? bare(rule.conditions, lookUp) : explain(rule.conditions, lookUp)
    const outcome = OUTCOME_OF[conditions.truth]
    return {
      rule: rule.id,
      title: rule.title,
      scope,
      type: rule.event.type,
      part: rule.event.params.part ?? null,
      left: rule.event.params.left ?? null,
      open: rule.event.params.open ?? false,
      answeredBy: rule.event.type === 'requires' ? (rule.event.params.answeredBy ?? 'buyer') : null,
      outcome,
      truth: conditions.truth,
      text: outcome === 'fired' ? fillText(rule.event.params.text, lookUp) : '',
      slot: rule.event.params.slot ?? null,
      about: rule.event.params.about ?? '',
      items:
        outcome === 'fired'
          ? (rule.event.params.items ?? []).map(({ about = '', text }) => ({
              about,
              text: fillText(text, lookUp),
            }))
          : [],
      because: rule.because,
      exception: rule.exception,
      evidence: rule.evidence,
      sources: sourcesOf(book, rule),
      book: rule.book,
      conditions,
      decisive: book.trial ? NONE : decisiveLeaves(conditions),
    }
  })
}

const NONE: readonly string[] = []

/** A truth without the tree it grew on. */
const bare = (
  condition: BookRule['conditions'],
  lookUp: (id: string) => Known | undefined,
): ConditionTrace => ({
  kind: 'all',
  truth: truthOf(condition, lookUp),
  children: [],
})

const OUTCOME_OF: Readonly<Record<Truth, RuleTrace['outcome']>> = {
  true: 'fired',
  false: 'not-fired',
  unknown: 'unknown',
  'not-applicable': 'not-applicable',
}

/** A rule's sources with those of its thresholds; worked out once for a rule of a book. */
function sourcesOf(book: Rulebook, rule: BookRule): readonly string[] {
  const known = sourcesKnown.get(book.thresholds) ?? new Map<BookRule, readonly string[]>()
  sourcesKnown.set(book.thresholds, known)
  const sources = known.get(rule) ?? sourcesFor(book, rule)
  known.set(rule, sources)
  return sources
}
const sourcesKnown = new WeakMap<Rulebook['thresholds'], Map<BookRule, readonly string[]>>()

function sourcesFor(book: Rulebook, rule: BookRule): readonly string[] {
  const thresholds = leavesOf(rule.conditions).flatMap((leaf) => {
    const id = factOperand(leaf.value)
    return id?.startsWith(THRESHOLD) ? (book.thresholds.get(id.slice(THRESHOLD.length)) ?? []) : []
  })
  return [...new Set([...rule.sources, ...thresholds.map((threshold) => threshold.source)])]
}

const thresholdAt = (book: Rulebook, id: string): Known | undefined =>
  id.startsWith(THRESHOLD) ? book.thresholds.get(id.slice(THRESHOLD.length)) : undefined

/** A fact that this scope does not have still has a name in the trace. */
function nameOnly(id: string): Known | undefined {
  const definition = FACTS.get(id)
  return definition && { value: null, unit: definition.unit, label: definition.label, absent: true }
}

/** Facts by id; each must be in the fact list, of its declared type, finite, and given once. */
function factMap(facts: readonly Fact[]): ReadonlyMap<string, Fact> {
  const known = new Map<string, Fact>()
  for (const fact of facts) {
    const type = FACTS.get(fact.id)?.type
    if (type === undefined) throw new Error(`fact "${fact.id}" is not in the fact list`)
    if (known.has(fact.id)) throw new Error(`fact "${fact.id}" was given twice`)
    const typed = fact.value === null || typeof fact.value === type
    if (!typed || (typeof fact.value === 'number' && !Number.isFinite(fact.value)))
      throw new Error(`fact "${fact.id}" must be a finite ${type} or null; ${String(fact.value)} was given`)
    known.set(fact.id, fact)
  }
  return known
}
