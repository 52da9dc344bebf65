import { OWN_FIELDS, ownName, SHARED_FIELDS } from '../../src/compare/cost-fields.ts'
import type { CostId, CostLine, YearlyCost } from '../../src/compare/running-cost.ts'
import { CostBox } from './cost-box.tsx'
import { COMPARE_FORM, type ComparePageProps } from './props.ts'

const LINE_WORDS: Readonly<Record<CostId, string>> = {
  price: 'Price, spread over its years',
  upkeep: 'Upkeep',
  energy: 'Energy',
  work: 'Work',
  'false-rejects': 'Good packs rejected',
}

const amount = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 })
const money = (value: number) => (value < 100 ? String(Number(value.toPrecision(3))) : amount.format(value))

/** The yearly cost from numbers the person enters; nothing is assumed, and what is blank is not computed. */
export function Costs(props: ComparePageProps) {
  const { comparison, printedOn } = props
  const any = comparison.costs.some(({ sum }) => sum !== null)
  const typed = Object.values(comparison.asked.typed).some((text) => text !== '')
  if (printedOn !== null) return any ? <CostTable {...props} /> : <PerDay {...props} />
  return (
    <section aria-labelledby="costs">
      <h2 id="costs">Running cost</h2>
      <PerDay {...props} />
      {any ? <CostTable {...props} /> : null}
      <details open={typed}>
        <summary>Enter prices, power and work: the yearly cost is computed from your numbers only</summary>
        <CostBoxes {...props} />
      </details>
    </section>
  )
}

/** What a day's false rejects come to at the one rate. */
function PerDay({ comparison, rejectWords }: ComparePageProps) {
  const all = new Set(rejectWords)
  return (
    <p>
      False rejects:{' '}
      {all.size === 1
        ? `${rejectWords[0]}, whichever machine it is.`
        : `${comparison.sides.map((side, at) => `${side.words}, ${rejectWords[at]}`).join('; ')}.`}
    </p>
  )
}

function CostBoxes({ comparison }: ComparePageProps) {
  const { asked, problems, sides } = comparison
  const wrong = new Map(problems.map(({ path, message }) => [path, message]))
  const box = (path: string, field: { label: string; hint: string; unit: string }) => (
    <CostBox
      path={path}
      form={COMPARE_FORM}
      label={field.label}
      hint={field.hint}
      unit={field.unit}
      typed={asked.typed[path] ?? ''}
      wrong={wrong.get(path)}
    />
  )
  return (
    <>
      <fieldset class="sub">
        <legend>For all</legend>
        <div class="fields">{SHARED_FIELDS.map((field) => box(field.name, field))}</div>
      </fieldset>
      {sides.map((side) => (
        <fieldset class="sub">
          <legend>{side.words}</legend>
          <div class="fields">{OWN_FIELDS.map((field) => box(ownName(side, field.name), field))}</div>
        </fieldset>
      ))}
      <button type="submit" class="work-out" form={COMPARE_FORM}>
        Work out the cost
      </button>
    </>
  )
}

const WAITS_WORDS: Readonly<Record<CostLine['waitsFor'][number], string>> = {
  ...(Object.fromEntries(
    [...SHARED_FIELDS, ...OWN_FIELDS].map(({ name, label }) => [name, label.toLowerCase()]),
  ) as Record<Exclude<CostLine['waitsFor'][number], 'packsPerMin'>, string>),
  packsPerMin: 'packs per minute in the brief',
}

function CostTable({ comparison }: ComparePageProps) {
  const { sides, costs } = comparison
  const ids = costs[0]!.lines.map(({ id }) => id)
  return (
    <section class="scroll" tabindex={0} aria-labelledby="cost-table">
      <table>
        <caption id="cost-table">Cost a year, in the currency you entered</caption>
        <thead>
          <tr>
            <td />
            {sides.map((side) => (
              <th scope="col" class="n">
                {side.words}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {ids.map((id, line) => (
            <tr>
              <th scope="row">{LINE_WORDS[id]}</th>
              {costs.map((cost) => (
                <LineCell line={cost.lines[line]!} />
              ))}
            </tr>
          ))}
          <tr>
            <th scope="row">Sum of what is computed</th>
            {costs.map((cost) => (
              <td class="n">{sumWords(cost)}</td>
            ))}
          </tr>
        </tbody>
      </table>
    </section>
  )
}

function LineCell({ line: { perYear, waitsFor } }: { line: CostLine }) {
  if (perYear !== null) return <td class="n">{money(perYear)}</td>
  return (
    <td class="n">
      not computed
      <span class="settings">blank: {waitsFor.map((name) => WAITS_WORDS[name]).join(', ')}</span>
    </td>
  )
}

function sumWords({ sum, lines, complete }: YearlyCost): string {
  if (sum === null) return '–'
  const done = lines.filter(({ perYear }) => perYear !== null).length
  return complete ? money(sum) : `${money(sum)} (${done} of ${lines.length} lines)`
}
