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
  /** The hazard under which a sentence stands first; later ones point to it. */
  readonly saidFirstFor: (text: string) => string
}

type Inked = Pick<Advice, 'trace' | 'register' | 'checks' | 'cautions' | 'points'>

/** Sources of a calculation: its own, else those of what went into it. */
function calculationSources({ trace }: Inked): (id: string) => readonly string[] {
  const calculations = new Map(trace.calculations.map((one) => [one.id, one]))
  const walk = (id: string, seen: Set<string>): string[] => {
    const one = calculations.get(id)
    if (!one || seen.has(id)) return []
    seen.add(id)
    return one.sources.length > 0 ? one.sources : one.inputs.flatMap((input) => walk(input, seen))
  }
  return (id) => [...new Set(walk(id, new Set()))]
}

/** The sources that register, check plan, sizes in place and cautions rest on, in the order of the trace. */
export function citedSources(advice: Inked): Advice['trace']['sources'] {
  const of = calculationSources(advice)
  const { register, checks, cautions, points } = advice
  const inPlace = register.lines.flatMap(({ controls }) => controls)
  const findings = points.flatMap(({ name, options }) =>
    options
      .filter(({ equipment }) => inPlace.some((one) => one.point === name && one.equipment === equipment))
      .flatMap((option) => option.findings),
  )
  const calculations = [
    ...findings.map(({ calculation }) => calculation),
    ...register.hazards.flatMap((hazard) => [
      hazard.incidence.calculation,
      ...hazard.controls.map(({ calculation }) => calculation),
      ...hazard.missesPerMillion.map(({ calculation }) => calculation),
    ]),
    ...checks.points.flatMap(({ pieces }) => pieces.map(({ calculation }) => calculation)),
  ]
  const cited = new Set([
    ...calculations.flatMap(of),
    ...[...register.cites, ...register.law, ...cautions].flatMap(({ sources }) => sources),
  ])
  return advice.trace.sources.filter(({ id }) => cited.has(id))
}

/** Ink for an advice; `paper` shows source numbers in place of links. */
export function inkOf(advice: Inked, packed: string, paper: boolean): Ink {
  const numbers = new Map(paper ? citedSources(advice).map(({ id }, at) => [id, at + 1]) : [])
  const rules = new Map(advice.register.cites.map(({ rule, sources }) => [rule, sources]))
  const ofCalculation = calculationSources(advice)
  return {
    packed,
    paper,
    numberOf: (source) => numbers.get(source) ?? 0,
    sourcesOf: (kind, id) => (kind === 'rule' ? (rules.get(id) ?? []) : ofCalculation(id)),
    saidFirstFor: firstsOf(advice.register),
  }
}

/** The hazard under which a limit or a way of monitoring stands first, by its text. */
function firstsOf(register: Advice['register']): (text: string) => string {
  const firsts = new Map<string, string>()
  for (const { label, controls } of register.hazards)
    for (const { criticalLimit, monitoring } of controls)
      for (const { text } of [...criticalLimit, ...monitoring]) if (!firsts.has(text)) firsts.set(text, label)
  return (text) => firsts.get(text) ?? ''
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
