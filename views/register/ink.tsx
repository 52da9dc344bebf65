import type { Advice } from '../../src/contract/advice.ts'
import type { Sentence } from '../../src/contract/register.ts'
import { ruleLink, trailLink } from '../advice/links.ts'

/** How a sentence or a figure shows what it rests on: by links on a page, by numbers of sources on paper. */
export interface Ink {
  readonly packed: string
  readonly paper: boolean
  /** Number of a source in the list at the end; 0 where it has none. */
  readonly numberOf: (source: string) => number
  readonly sourcesOf: (kind: 'rule' | 'calculation', id: string) => readonly string[]
}

/** Ink for an advice; `paper` shows source numbers in place of links. */
export function inkOf(
  advice: Pick<Advice, 'trace' | 'register' | 'cautions'>,
  packed: string,
  paper: boolean,
): Ink {
  const numbers = new Map(advice.trace.sources.map(({ id }, at) => [id, at + 1]))
  const calculations = new Map(advice.trace.calculations.map(({ id, sources }) => [id, sources]))
  const rules = new Map(rulesIn(advice.register).map(({ rule, sources }) => [rule, sources]))
  return {
    packed,
    paper,
    numberOf: (source) => numbers.get(source) ?? 0,
    sourcesOf: (kind, id) => (kind === 'rule' ? rules.get(id) : calculations.get(id)) ?? [],
  }
}

/** Every sentence with its rule and sources, wherever it stands. */
function rulesIn(part: unknown): { rule: string; sources: readonly string[] }[] {
  if (typeof part !== 'object' || part === null) return []
  const { rule, sources } = part as { rule?: unknown; sources?: unknown }
  const own =
    typeof rule === 'string' && Array.isArray(sources)
      ? [{ rule, sources: sources as readonly string[] }]
      : []
  return [...own, ...Object.values(part).flatMap(rulesIn)]
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
