import { type Axis, linearAxis, logAxis, sizeAxis } from '../../src/charts/axis.ts'
import type { Series } from '../../src/trade-offs/size-against.ts'

const thousands = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 })

/** The axis of an input over all values of some series; false rejects are counted in 100,000 packs. */
export function inputAxis(
  series: readonly Series[],
  name: string,
  unit: string,
  scale: 'log' | 'linear',
): Axis {
  const values = series.flatMap((one) => one.steps.map(({ value }) => value))
  const from = Math.min(...values)
  const to = Math.max(...values)
  const build = scale === 'log' ? logAxis : linearAxis
  return series[0]?.input === 'false-rejects'
    ? build(from, to, `${name}, in 100,000 packs`, (value) => thousands.format(value * 1e5))
    : build(from, to, unit === '' ? name : `${name}, ${unit}`)
}

/** The axis of sizes that holds everything some series show, and the size to find. */
export function sizesAxis(series: readonly Series[], mustFindMm: number | null): Axis {
  const sizes = series.flatMap((one) =>
    one.steps.flatMap((step) => [step.bestMm, step.expectedMm, step.cautiousMm]),
  )
  return sizeAxis([...sizes, mustFindMm], 'findable size, mm')
}
