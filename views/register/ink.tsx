import type { Sentence } from '../../src/contract/register.ts'
import { ruleLink, trailLink } from '../advice/links.ts'
import { type Cited, calculationSources, citedSources } from './cited.ts'

/** How a sentence or a figure shows what it rests on: by links on a page, by numbers of sources on paper. */
export interface Ink {
  readonly packed: string
  readonly paper: boolean
  /** Number of a source in the list at the end; 0 where it has none. */
  readonly numberOf: (source: string) => number
  readonly sourcesOf: (kind: 'rule' | 'calculation', id: string) => readonly string[]
}

/** Ink for an advice; `paper` shows source numbers in place of links. */
export function inkOf(advice: Cited, packed: string, paper: boolean): Ink {
  const numbers = new Map(paper ? citedSources(advice).map(({ id }, at) => [id, at + 1]) : [])
  const rules = new Map(advice.register.cites.map(({ rule, sources }) => [rule, sources]))
  const ofCalculation = calculationSources(advice)
  return {
    packed,
    paper,
    numberOf: (source) => numbers.get(source) ?? 0,
    sourcesOf: (kind, id) => (kind === 'rule' ? (rules.get(id) ?? []) : ofCalculation(id)),
  }
}

/** Numbers of sources in square brackets, e.g. [3, 7]; nothing where there are none. */
export function Numbers({ ink, sources }: { ink: Ink; sources: readonly string[] }) {
  const numbers = [...new Set(sources.map(ink.numberOf))].filter((n) => n > 0).sort((a, b) => a - b)
  return numbers.length === 0 ? null : <span class="source-numbers"> [{numbers.join(', ')}]</span>
}

/** What a rule's sentence rests on. */
export function ByRule({ ink, rule, sources }: { ink: Ink; rule: string; sources?: readonly string[] }) {
  if (rule === '') return null
  if (ink.paper) return <Numbers ink={ink} sources={sources ?? ink.sourcesOf('rule', rule)} />
  return (
    <>
      {' '}
      <a class="why" href={ruleLink(rule, ink.packed)}>
        rule
      </a>
    </>
  )
}

/** What a figure rests on. */
export function ByCalculation({ ink, id }: { ink: Ink; id: string }) {
  if (ink.paper) return <Numbers ink={ink} sources={ink.sourcesOf('calculation', id)} />
  return (
    <>
      {' '}
      <a class="why" href={trailLink(ink, id)}>
        how
      </a>
    </>
  )
}

/** Sentences of rules, one paragraph each. */
export function Sentences({ ink, sentences }: { ink: Ink; sentences: readonly Sentence[] }) {
  return (
    <>
      {sentences.map(({ text, rule, sources }) => (
        <p>
          {text}
          <ByRule ink={ink} rule={rule} sources={sources} />
        </p>
      ))}
    </>
  )
}
