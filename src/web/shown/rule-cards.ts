import type { RuleCard, RuleExample, RulePlace } from '../../../views/rules/rule-card.ts'
import { grouped } from '../../../views/words/grouped.ts'
import { factOperand, leavesOf } from '../../advice/book/condition.ts'
import { mergeBrief } from '../../advice/book/rule-examples.ts'
import type { BookRule, Rulebook } from '../../advice/book/rulebook.ts'
import { explain, type Known } from '../../advice/decide/explain.ts'
import { THRESHOLD } from '../../advice/facts/list/fact-definition.ts'
import { FACTS } from '../../advice/facts/list/fact-list.ts'
import { parseBrief } from '../../brief/index.ts'
import type { Advice } from '../../contract/index.ts'
import { packBrief } from '../asked/packed-brief.ts'

/** Names of facts and thresholds, without any value of a fact. */
function nameOf(book: Rulebook, id: string): Known | undefined {
  if (id.startsWith(THRESHOLD)) return book.thresholds.get(id.slice(THRESHOLD.length))
  const fact = FACTS.get(id)
  return fact && { value: null, unit: fact.unit, label: fact.label }
}

/** A text with the labels of its values: "The food is [height of the food] high." */
function template(book: Rulebook, text: string): string {
  return text.replace(/\{([\w.-]+)\}/g, (_, id: string) => {
    const named = nameOf(book, id)
    if (id.startsWith(THRESHOLD) && named) return `${named.value} ${named.unit}`.trim()
    return `[${named?.label ?? id}]`
  })
}

function thresholdsOf(book: Rulebook, rule: BookRule): RuleCard['thresholds'] {
  const ids = leavesOf(rule.conditions).flatMap((leaf) => factOperand(leaf.value) ?? [])
  const named = ids.filter((id) => id.startsWith(THRESHOLD)).map((id) => id.slice(THRESHOLD.length))
  return [...new Set(named)].flatMap((id) => {
    const threshold = book.thresholds.get(id)
    if (!threshold) return []
    const { label, value, unit, evidence } = threshold
    return [{ id, label, value, unit, evidence, source: book.sources.get(threshold.source)?.text ?? '' }]
  })
}

function examplesOf(book: Rulebook, rule: BookRule): RuleExample[] {
  return rule.examples.map(({ brief, fires, equipment, contaminant, point }) => {
    const whole = mergeBrief(book.baseBrief, brief)
    const parsed = parseBrief(whole)
    const place = [
      point ?? '',
      equipment ?? '',
      contaminant === undefined ? '' : `contaminant ${contaminant + 1}`,
    ]
    return {
      fires,
      place: place.filter((part) => part !== '').join(', '),
      differs: JSON.stringify(brief),
      packed: parsed.ok ? packBrief(whole) : null,
    }
  })
}

const traces = new WeakMap<Advice, Map<string, Advice['trace']['rules']>>()

/** The rules an advice tried, by id; sorted out once for all the rules of a book. */
function tracesOf(advice: Advice): Map<string, Advice['trace']['rules']> {
  const known = traces.get(advice) ?? grouped(advice.trace.rules, ({ id }) => id)
  traces.set(advice, known)
  return known
}

/** Outcomes of a rule by place; contaminants for which it came out alike stand together. */
function placesOf(advice: Advice, id: string, pieces: readonly string[]): RulePlace[] {
  const places = new Map<string, RulePlace & { pieces: string[] }>()
  for (const { outcome, point, equipment, contaminant } of tracesOf(advice).get(id) ?? []) {
    const at = advice.points.findIndex(({ name }) => name === point)
    const there = advice.points[at]
    const machines = there ? [...there.options, ...there.removals] : []
    const label = machines.find((one) => one.equipment === equipment)?.label ?? equipment
    const where = [point, label].filter((part) => part !== '').join(', ')
    const key = `${at} ${equipment} ${outcome}`
    const place = places.get(key) ?? { outcome, where, point: at < 0 ? null : at, equipment, pieces: [] }
    if (contaminant !== null) place.pieces.push(pieces[contaminant] ?? '')
    places.set(key, place)
  }
  return [...places.values()]
}

/** A rule with all that stands behind it, and what it did for an advice where one is in hand. */
export const ruleCard = (
  book: Rulebook,
  rule: BookRule,
  advice: Advice | null,
  pieces: readonly string[],
) => ({
  ...ruleLine(book, rule, advice, pieces),
  examples: examplesOf(book, rule),
})

/** The same for the list, where the examples are not shown (each is a brief to be read and packed). */
export function ruleLine(
  book: Rulebook,
  rule: BookRule,
  advice: Advice | null,
  pieces: readonly string[],
): RuleCard {
  const { id, title, subject, appliesTo, because, exception, evidence } = rule
  return {
    id,
    title,
    subject,
    appliesTo,
    perContaminant: rule.each === 'contaminant',
    type: rule.event.type,
    text: template(book, rule.event.params.text),
    because,
    exception,
    evidence,
    book: rule.book,
    conditions: explain(rule.conditions, (name) => nameOf(book, name)),
    thresholds: thresholdsOf(book, rule),
    sources: rule.sources.flatMap((source) => book.sources.get(source) ?? []),
    examples: [],
    places: advice ? placesOf(advice, id, pieces) : null,
  }
}
