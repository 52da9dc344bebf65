import type { Brief, Caution } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import type { PlacedOutcome } from '../stages.ts'
import { nameWords, wordList } from './words.ts'

type Fired = Pick<PlacedOutcome, 'rule' | 'text' | 'sources' | 'contaminant' | 'pointIndex'>

const once = <T>(items: readonly T[]): T[] => [...new Set(items)]

function groupsOf<T>(items: readonly T[], keyOf: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>()
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item])
  return [...groups.values()]
}

function labelOf(brief: Brief, contaminant: number): string {
  const { material } = brief.contaminants[contaminant]!
  return materials.get(material)?.label ?? material
}

/** A rule's text without the name of its contaminant: two texts that differ in the name alone say the same. */
function nameless(brief: Brief, { text, contaminant }: Fired): string {
  if (contaminant === null) return text
  return text.toLowerCase().replaceAll(labelOf(brief, contaminant).toLowerCase(), '')
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1)

/** Outcomes that say the same but for the name, as one text with every contaminant in it. */
function alikeText(brief: Brief, alike: readonly Fired[]): string {
  const { text, contaminant } = alike[0]!
  if (contaminant === null || brief.contaminants.length === 1) return text
  const named = text.toLowerCase().includes(labelOf(brief, contaminant).toLowerCase())
  const others = once(alike.map((one) => one.contaminant!)).filter((c) => !named || c !== contaminant)
  if (others.length === 0) return text
  const pieces = wordList(others.map((c) => nameWords(brief, c)))
  return named ? `${text} (also: ${pieces})` : `${capital(pieces)}: ${text}`
}

/** All that one rule says, at one point or wherever it says it alike. */
const textOf = (brief: Brief, same: readonly Fired[]): string =>
  groupsOf(same, (one) => nameless(brief, one))
    .map((alike) => alikeText(brief, alike))
    .join(' ')

/** The text of one rule; points at which it says something else are told apart by their names. */
function wholeText(brief: Brief, same: readonly Fired[]): string {
  const byPoint = groupsOf(same, (one) => String(one.pointIndex)).map((there) => ({
    point: there[0]!.pointIndex,
    text: textOf(brief, there),
  }))
  const texts = once(byPoint.map(({ text }) => text))
  if (texts.length === 1 || byPoint.some(({ point }) => point === null)) return texts.join(' ')
  return byPoint.map(({ point, text }) => `“${brief.points[point!]!.name}”: ${text}`).join(' ')
}

/** One caution per rule, in the order the rules first fired, with every contaminant and point concerned. */
export const cautionsFrom = (brief: Brief, fired: readonly Fired[]): Caution[] =>
  groupsOf(fired, ({ rule }) => rule).map((same) => ({
    id: same[0]!.rule,
    text: wholeText(brief, same),
    sources: once(same.flatMap(({ sources }) => sources)),
  }))
