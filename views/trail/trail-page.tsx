import type { Calculation, Fact, Source } from '../../src/contract/advice.ts'
import { trailLink } from '../advice/links.ts'
import { type Citations, numbered } from '../advice/reasons/citations.ts'
import { Cited, CitedSources } from '../advice/reasons/cited.tsx'
import { Page } from '../page.tsx'
import { valueWords } from '../words/size.ts'
import { type Step, sourcesOf } from './unfold.ts'

export interface TrailPageProps {
  readonly trail: Extract<Step, { kind: 'calculation' }>
  /** What the number is about, e.g. the piece, the machine and the point. */
  readonly about: string
  readonly sources: readonly Source[]
  readonly packed: string
  /** Every step open, for paper. */
  readonly print: boolean
}

/** One number walked to its end: formula, inputs, theirs, down to table values and sources. */
export function TrailPage({ trail, about, sources, packed, print }: TrailPageProps) {
  const { calculation } = trail
  const title = calculation.label.charAt(0).toUpperCase() + calculation.label.slice(1)
  const citations = numbered(sourcesOf(trail), sources)
  return (
    <Page title={`Calculation: ${calculation.label}`} packed={packed} here="other" print={print}>
      <p class="over-title">
        <a href={`/advice?b=${packed}`}>Advice</a>
      </p>
      <h1>{title}</h1>
      {about ? <p class="standfirst">{about}</p> : null}
      <p class="result">
        <SymbolOf of={calculation} />
        <strong>{withUnit(calculation)}</strong>
      </p>
      <p>
        Under each value: the formula it came from and the values that went in, down to measured tables and
        entered values. Used twice, a value is written out once.{' '}
        {print ? null : <a href={`${trailLink({ packed }, calculation.id)}&print=1`}>Open every step</a>}
      </p>
      <div class="trail">
        <Line step={trail} citations={citations} packed={packed} depth={0} all={print} />
      </div>
      <CitedSources citations={citations} />
    </Page>
  )
}

const withUnit = ({ value, unit }: Pick<Calculation | Fact, 'value' | 'unit'>) =>
  `${valueWords(value)} ${unit}`.trim()

const anchor = (id: string) => `step-${id.replace(/[^\w-]+/g, '-')}`

/** Steps nearer to the answer than this stand open. */
const OPEN_DEPTH = 3

interface LineProps {
  readonly step: Step
  readonly citations: Citations
  readonly packed: string
  readonly depth: number
  readonly all: boolean
}

function Line({ step, citations, packed, depth, all }: LineProps) {
  if (step.kind === 'unnamed') return <>{step.id}</>
  if (step.kind === 'fact')
    return (
      <>
        {step.fact.label} = <strong>{withUnit(step.fact)}</strong>{' '}
        <span class="small">({step.fact.origin})</span>
      </>
    )
  const { calculation } = step
  if (step.kind === 'again')
    return (
      <>
        <Head calculation={calculation} /> <a href={`#${anchor(calculation.id)}`}>written out above</a>
      </>
    )
  const under = (
    <p class="formula">
      {calculation.formula}
      <Cited ids={calculation.sources} citations={citations} />
    </p>
  )
  if (step.inputs.length === 0)
    return (
      <div id={anchor(calculation.id)}>
        <Head calculation={calculation} />
        {under}
      </div>
    )
  return (
    <details id={anchor(calculation.id)} {...(all || depth < OPEN_DEPTH ? { open: true } : {})}>
      <summary>
        <Head calculation={calculation} />
      </summary>
      {under}
      <ul>
        {step.inputs.map((input) => (
          <li>
            <Line step={input} citations={citations} packed={packed} depth={depth + 1} all={all} />
          </li>
        ))}
      </ul>
    </details>
  )
}

function Head({ calculation }: { calculation: Calculation }) {
  return (
    <>
      <SymbolOf of={calculation} />
      <strong>{withUnit(calculation)}</strong> <span class="what">{calculation.label}</span>
    </>
  )
}

function SymbolOf({ of: { symbol } }: { of: Calculation }) {
  return symbol === '' ? null : (
    <>
      <span class="symbol">{symbol}</span> ={' '}
    </>
  )
}
