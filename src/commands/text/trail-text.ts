import { type Step, sourcesOf, unfold } from '../../../views/trail/unfold.ts'
import { valueWords } from '../../../views/words/size.ts'
import { currentCalculation } from '../../advice/facts/renamed-ids.ts'
import type { Advice } from '../../contract/index.ts'

const withUnit = ({ value, unit }: { value: string | number | boolean | null; unit: string }) =>
  `${valueWords(value)} ${unit}`.trim()

function stepLines(step: Step, indent: string): string[] {
  if (step.kind === 'unnamed') return [`${indent}${step.id}`]
  if (step.kind === 'fact')
    return [`${indent}${step.fact.label} = ${withUnit(step.fact)} (${step.fact.origin})`]
  const { calculation } = step
  const symbol = calculation.symbol ? `${calculation.symbol} = ` : ''
  const head = `${indent}${symbol}${withUnit(calculation)}  ${calculation.label}`
  if (step.kind === 'again') return [`${head} (written out above)`]
  const sources = calculation.sources.length > 0 ? ` [${calculation.sources.join(', ')}]` : ''
  const formula = calculation.formula || sources ? [`${indent}  ${calculation.formula}${sources}`] : []
  return [head, ...formula, ...step.inputs.flatMap((input) => stepLines(input, `${indent}    `))]
}

/** A calculation walked to its end: symbol, value, unit, formula, inputs, sources. null: no such calculation. */
export function trailText(advice: Advice, id: string): string | null {
  const trail = unfold(advice.trace, currentCalculation(id))
  if (trail?.kind !== 'calculation') return null
  const texts = new Map(advice.trace.sources.map((source) => [source.id, source]))
  const cited = [...new Set(sourcesOf(trail))].map((source) => {
    const { text, mark } = texts.get(source) ?? { text: '', mark: '' }
    return `  ${source}: ${text}${mark ? ` (${mark})` : ''}`
  })
  const sources = cited.length > 0 ? ['', 'Sources:', ...cited] : []
  return `${[...stepLines(trail, ''), ...sources].join('\n')}\n`
}

/** Ids of calculations that resemble one that was not found. */
export function resembling(advice: Advice, id: string): string[] {
  const last = id.split('.').at(-1) ?? id
  return advice.trace.calculations
    .map((calculation) => calculation.id)
    .filter((known) => known.endsWith(last))
    .slice(0, 8)
}
