import { readFileSync } from 'node:fs'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { aMachine } from '../../../src/advice/say/machine-words.ts'
import { demos } from '../../../src/brief/demos.ts'
import { EXERCISES } from '../../../src/exercises/list.ts'
import { VOICES } from '../../../src/exercises/voice.ts'
import { archetypes, materials } from '../../../src/reference/index.ts'
import { shortName } from '../../../views/words/machine.ts'
import { visibleText } from './crawl.ts'

/**
 * Where a label's words come from: the trade's own or an open standard's term, or ours. A label is a heading,
 * the name of a box, a choice or a column, a button, a fold or a link of a navigation.
 */
export type Origin = 'trade' | 'standard' | 'ours'

const LABEL_FILE = new URL('./labels.json', import.meta.url)

/** The reviewed labels with their origins. */
export const reviewedLabels = (): Readonly<Record<string, Origin | ''>> =>
  JSON.parse(readFileSync(LABEL_FILE, 'utf8'))

export const labelFile = LABEL_FILE

const ELEMENTS = ['h1', 'h2', 'h3', 'h4', 'legend', 'label', 'button', 'summary', 'dt']
const COLUMN = /<th[^>]*scope="col"[^>]*>([\s\S]*?)<\/th>/g
const NAV_LINK = /<nav[\s\S]*?<\/nav>|<ul class="acts">[\s\S]*?<\/ul>/g

/** Names that come from data and not from a page, longest first, each with what stands for it. */
const named: readonly (readonly [name: string, stands: string])[] = (() => {
  const pairs: [string, string][] = []
  for (const { title, brief } of demos) {
    pairs.push([title, '{title}'])
    for (const { name } of brief.points) if (name) pairs.push([name, '{point}'])
  }
  for (const { id, label } of archetypes.values()) {
    pairs.push([aMachine({ equipment: id, label }), '{machine}'])
    pairs.push([label, '{machine}'], [label.replace(/ \(.*\)$/, ''), '{machine}'])
    pairs.push([shortName({ equipment: id, label }), '{machine}'])
  }
  for (const { label } of materials.values())
    pairs.push([label, '{material}'], [label.replace(/\s*\([^)]*\)/g, ''), '{material}'])
  for (const { title, subject, id } of loadRulebook().rules)
    pairs.push([title, '{rule}'], [subject, '{subject}'], [id, '{id}'])
  for (const { title } of EXERCISES) pairs.push([title(VOICES.full), '{exercise}'])
  return pairs.sort((a, b) => b[0].length - a[0].length)
})()

/** Materials whose kind is not known go by one word in tables. */
const inAWord = [...materials.values()].flatMap(({ label }) =>
  label.endsWith(', kind not known') ? [label.replace(', kind not known', '')] : [],
)
const isMaterial = (text: string) =>
  inAWord.some((word) => text === word || text.startsWith(`${word} wire`) || text.startsWith(`${word} flake`))

/** A label with its data taken out: names by what they name, numbers by #. */
export function bare(label: string): string {
  if (isMaterial(label.trim())) return '{material}'
  let text = label
  for (const [name, stands] of named) if (text.includes(name)) text = text.replaceAll(name, stands)
  return text
    .replace(
      /\{material\}(?: \{material\})*, (?:sphere|wire(?: [\d.]+ mm long)?|flake(?: of [\d.]+ mm²)?)/g,
      '{piece}',
    )
    .replace(/\d[\d.,]*/g, '#')
    .replace(/[●◐◔○✕–]/g, '')
    .replace(/\s+/g, ' ')
    .trim()
}

/** What is asked and answered, drawn and calculated is content, not label. */
const CONTENT = [
  /<svg[\s\S]*?<\/svg>/g,
  // What a fold holds and what was asked are the brief's own words.
  /<span class="(?:held|over-facts|asked|needed)">[\s\S]*?<\/span>/g,
  /<form class="prediction"[\s\S]*?<\/form>/g,
  /<h2 class="ask">[\s\S]*?<\/h2>/g,
  /<dl class="facts">[\s\S]*?<\/dl>/g,
  /<figure class="exercise-picture">[\s\S]*?<\/figure>/g,
  /<caption[^>]*>[\s\S]*?<\/caption>/g,
  /<summary>\s*<span class="symbol">[\s\S]*?<\/summary>/g,
]

/** Every label a reader sees on a page. */
export function labelsOn(html: string): Set<string> {
  const body = CONTENT.reduce((rest, content) => rest.replace(content, ' '), html)
  const labels = new Set<string>()
  const add = (inner: string) => {
    const label = bare(visibleText(inner))
    if (/\p{L}/u.test(label.replace(/\{\w+\}/g, ''))) labels.add(label)
  }
  for (const element of ELEMENTS)
    for (const [, inner = ''] of body.matchAll(
      new RegExp(`<${element}\\b[^>]*>([\\s\\S]*?)</${element}>`, 'g'),
    ))
      add(inner)
  for (const [, inner = ''] of body.matchAll(COLUMN)) add(inner)
  for (const [block = ''] of body.matchAll(NAV_LINK))
    for (const [, inner = ''] of block.matchAll(/<a\b[^>]*>([\s\S]*?)<\/a>/g)) add(inner)
  return labels
}
