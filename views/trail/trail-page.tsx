import type { Calculation, Fact, Source } from '../../src/contract/advice.ts'
import { type Links, trailLink } from '../advice/links.ts'
import { SourceList } from '../advice/source-list.tsx'
import { Page } from '../page.tsx'
import { valueWords } from '../words/size.ts'
import type { Step } from './unfold.ts'

export interface TrailPageProps {
  readonly trail: Extract<Step, { kind: 'calculation' }>
  readonly sources: readonly Source[]
  readonly links: Links
}

/** One number walked to its end: formula, inputs, theirs, down to table values and sources. */
export function TrailPage({ trail, sources, links }: TrailPageProps) {
  const { calculation } = trail
  return (
    <Page title={`Calculation: ${calculation.label}`} packed={links.packed} here="other">
      <p class="over-title">
        <a href={`/advice?b=${links.packed}`}>Advice</a>
      </p>
      <h1>{calculation.label}</h1>
      <p class="result">
        {calculation.symbol} = <strong>{withUnit(calculation)}</strong>
      </p>
      <p>
        Each line: symbol, value, unit; under it the formula it came from and the values that went in, down to
        measured tables and entered values. A value used twice is written out once.
      </p>
      <ol class="trail">
        <Line step={trail} sources={sources} links={links} top />
      </ol>
    </Page>
  )
}

const withUnit = ({ value, unit }: Pick<Calculation | Fact, 'value' | 'unit'>) =>
  `${valueWords(value)} ${unit}`.trim()

const anchor = (id: string) => `step-${id.replace(/[^\w-]+/g, '-')}`

interface LineProps {
  readonly step: Step
  readonly sources: readonly Source[]
  readonly links: Links
  readonly top?: boolean
}

function Line({ step, sources, links, top = false }: LineProps) {
  if (step.kind === 'unnamed') return <li>{step.id}</li>
  if (step.kind === 'fact')
    return (
      <li>
        {step.fact.label} = <strong>{withUnit(step.fact)}</strong>{' '}
        <span class="small">({step.fact.origin})</span>
      </li>
    )
  const { calculation } = step
  const head = (
    <>
      <span class="symbol">{calculation.symbol}</span> = <strong>{withUnit(calculation)}</strong>{' '}
      <span class="what">{calculation.label}</span>
    </>
  )
  if (step.kind === 'again')
    return (
      <li>
        {head} (<a href={`#${anchor(calculation.id)}`}>written out above</a>)
      </li>
    )
  return (
    <li id={anchor(calculation.id)}>
      {head}
      {calculation.formula ? <p class="formula">{calculation.formula}</p> : null}
      {calculation.sources.length > 0 ? (
        <p class="small">
          <SourceList ids={calculation.sources} sources={sources} />
        </p>
      ) : null}
      {step.inputs.length > 0 ? (
        <ol>
          {step.inputs.map((input) => (
            <Line step={input} sources={sources} links={links} />
          ))}
        </ol>
      ) : null}
      {top || step.inputs.length === 0 ? null : (
        <p class="small">
          <a href={trailLink(links, calculation.id)}>
            this part alone<span class="unseen">: {calculation.label}</span>
          </a>
        </p>
      )}
    </li>
  )
}
