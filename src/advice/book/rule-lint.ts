import { type FactDefinition, THRESHOLD } from '../facts/list/fact-definition.ts'
import { factsIn } from '../facts/list/fact-list.ts'
import { canonical, factOperand, isNumeric, type Leaf, leavesOf } from './condition.ts'
import { namesIn } from './placeholders.ts'
import type { BookRule, Rulebook } from './rule-schema.ts'
import { isFound, isOrdered, type RuleScope, SEARCHED_GROUNDS, scopesOf } from './rule-scope.ts'

/**
 * Everything wrong with a rule book that can be seen without running it: unknown facts, units, sources or
 * thresholds, bare numbers, comparisons across units, missing examples, two rules that say the same of the same sources. Each line
 * names file and rule and says what is allowed. Shapes, operators and empty groups are the schema's business.
 */
export function lintRulebook(book: Rulebook): readonly string[] {
  const problems: string[] = []
  for (const rule of book.rules) {
    const say = (message: string) => problems.push(`${rule.file}: rule "${rule.id}": ${message}`)
    for (const scope of scopesOf(rule)) lintFacts(book, rule, scope, say)
    lintSources(book, rule, say)
    lintPlace(rule, say)
    for (const fires of [true, false]) {
      if (!rule.examples.some((example) => example.fires === fires))
        say(
          `no example that ${fires ? 'fires' : 'does not fire'}; a rule needs at least one with "fires": ${fires}`,
        )
    }
  }
  for (const threshold of book.thresholds.values()) {
    if (!book.sources.has(threshold.source))
      problems.push(
        `thresholds.json: "${threshold.id}": unknown source "${threshold.source}"; known: ${listed(book.sources.keys())}`,
      )
  }
  return [...new Set([...problems, ...twins(book), ...idle(book)])]
}

type Say = (message: string) => void

function lintFacts(book: Rulebook, rule: BookRule, scope: RuleScope, say: Say): void {
  const facts = factsIn(scope)
  const operand = (id: string): { unit: string; type: string } | undefined => {
    const threshold = id.startsWith(THRESHOLD) ? book.thresholds.get(id.slice(THRESHOLD.length)) : undefined
    return threshold ? { unit: threshold.unit, type: 'number' } : facts.get(id)
  }
  const unknown = (what: string, id: string) =>
    say(
      id.startsWith(THRESHOLD)
        ? `${what} names the unknown threshold "${id}"; known: ${listed([...book.thresholds.keys()].map((key) => THRESHOLD + key))}`
        : `${what} names the unknown fact "${id}" for ${scope}; known there: ${listed(facts.keys())}`,
    )
  for (const leaf of leavesOf(rule.conditions)) {
    const left = facts.get(leaf.fact)
    const other = factOperand(leaf.value)
    const right = other === null ? undefined : operand(other)
    if (!left) unknown('the condition', leaf.fact)
    if (other !== null && !right) unknown('the condition', other)
    const wrong = left && leafProblem(leaf, left, right)
    if (wrong) say(`${leaf.fact} ${leaf.operator}: ${wrong}`)
  }
  for (const name of namesOf(rule)) if (!operand(name)) unknown('the text', name)
}

/** Names in all that a rule says. */
const namesOf = ({ event: { params } }: BookRule): readonly string[] =>
  [params.text, ...(params.items ?? []).map(({ text }) => text)].flatMap(namesIn)

/** What is wrong with one comparison; only the first thing is said. */
function leafProblem(
  leaf: Leaf,
  left: FactDefinition,
  right: { unit: string; type: string } | undefined,
): string | null {
  if (left.type === 'number' && factOperand(leaf.value) === null)
    return `a number is compared with {"fact": "${THRESHOLD}…"} or another fact, never with a bare value (${JSON.stringify(leaf.value)}); put it into thresholds.json with its source`
  if (left.type !== 'number' && isNumeric(leaf.operator))
    return `the fact is a ${left.type}; allowed: equal, notEqual${left.type === 'string' ? ', in, notIn' : ''}`
  if (right && right.type !== left.type)
    return `compares a ${left.type} with a ${right.type}; both sides must be alike`
  if (right && right.unit !== left.unit)
    return `compares "${left.unit}" with "${right.unit}"; both sides must have the same unit`
  if (right) return null
  const isList = leaf.operator === 'in' || leaf.operator === 'notIn'
  if (isList !== Array.isArray(leaf.value))
    return isList ? 'takes a list of words' : 'takes one value, not a list'
  const words = [leaf.value].flat() as readonly unknown[]
  if (words.some((word) => typeof word !== left.type))
    return `the fact is a ${left.type}; ${JSON.stringify(leaf.value)} is not${left.type === 'boolean' ? '; allowed: true, false' : ''}`
  const strange = left.values && words.find((word) => !left.values?.includes(word as string))
  return strange === undefined
    ? null
    : `${JSON.stringify(strange)} is no value of it; allowed: ${listed(left.values ?? [])}`
}

/** What rules that word something other than a reason are asked of, and how often. */
const SAYS: Readonly<Record<string, { readonly grounds: readonly string[]; readonly each: string }>> = {
  headline: { grounds: ['line'], each: 'once' },
  combines: { grounds: ['line', 'point'], each: 'once' },
  multiplies: { grounds: ['line', 'together', 'found'], each: 'once' },
  hinges: { grounds: ['close'], each: 'once' },
  parts: { grounds: ['apart'], each: 'once' },
  misses: { grounds: ['miss'], each: 'once' },
  judges: { grounds: ['quote'], each: 'once' },
  tells: { grounds: ['found', 'finder'], each: 'once' },
  alters: { grounds: ['change'], each: 'once' },
  matters: { grounds: ['missing'], each: 'once' },
  leaves: { grounds: ['line'], each: 'contaminant' },
  grounds: { grounds: ['option'], each: 'once' },
  notes: { grounds: ['xray', 'coil', 'static-field'], each: 'contaminant' },
}

/** Asking and testing stand on any ground of the second run; in the first run a test is a reason of a machine. */
const ASKS = ['asks', 'tests']

function lintPlace(rule: BookRule, say: Say): void {
  const { type, params } = rule.event
  const place = SAYS[type]
  const ordered = rule.appliesTo.filter((ground) => isOrdered(ground) || isFound(ground))
  if (place && (rule.each !== place.each || rule.appliesTo.some((ground) => !place.grounds.includes(ground))))
    say(`"${type}" is said of ${place.grounds.join(', ')}, each: "${place.each}"`)
  const searched = SEARCHED_GROUNDS.filter((ground) => rule.appliesTo.includes(ground))
  if (!place && searched.length > 0) say(`${searched.join(', ')}: allowed event types are alters, matters`)
  if (!place && ordered.length > 0 && !ASKS.includes(type))
    say(
      `${ordered.join(', ')}: allowed event types are ${[...Object.keys(SAYS).filter((word) => word !== 'notes'), ...ASKS].join(', ')}`,
    )
  if (type === 'asks' && ordered.length < rule.appliesTo.length)
    say('"asks" is said of line, use, option, quote or found')
  if ((type === 'headline') !== (params.part !== undefined))
    say('a headline, and nothing else, names its part')
  if ((type === 'leaves') !== (params.left !== undefined))
    say('what is left to do, and nothing else, names its kind in "left"')
}

function lintSources(book: Rulebook, rule: BookRule, say: Say): void {
  for (const id of rule.sources)
    if (!book.sources.has(id)) say(`unknown source "${id}"; known: ${listed(book.sources.keys())}`)
}

/** Two rules of one scope with the same conditions and a source in common: one of them is too many. */
function twins(book: Rulebook): string[] {
  const seen = new Map<string, BookRule[]>()
  const problems: string[] = []
  for (const rule of book.rules) {
    for (const scope of scopesOf(rule)) {
      const { slot = '' } = rule.event.params
      const key = `${scope} ${slot} ${canonical(rule.conditions)}`
      const alike = seen.get(key) ?? []
      const first = alike.find(({ sources }) => sources.some((id) => rule.sources.includes(id)))
      if (first)
        problems.push(
          `${rule.file}: rule "${rule.id}": has the same conditions as "${first.id}" (${first.file}) for ${scope}; join them into one`,
        )
      seen.set(key, [...alike, rule])
    }
  }
  return problems
}

/** Thresholds no rule looks at. */
function idle(book: Rulebook): string[] {
  const used = new Set(
    book.rules.flatMap((rule) => [
      ...leavesOf(rule.conditions).map((leaf) => factOperand(leaf.value) ?? ''),
      ...namesOf(rule),
    ]),
  )
  return [...book.thresholds.values()]
    .filter(({ id }) => !used.has(THRESHOLD + id))
    .map(({ id }) => `thresholds.json: "${id}": no rule compares with it; remove it or use it`)
}

const listed = (words: Iterable<string>) => [...words].join(', ')
