import type { Point } from '../../src/contract/brief.ts'
import type { Clause, RunRow, RunsAnswer } from '../../src/contract/runs.ts'
import { Page } from '../page.tsx'
import { sizeWords } from '../words/size.ts'
import type { ShownGroup } from './props.ts'
import { countWords, rateWords } from './run-words.ts'

export interface TrialSheetProps {
  readonly title: string | null
  readonly points: readonly Point[]
  readonly answer: RunsAnswer
  readonly shown: readonly ShownGroup[]
  readonly clause: Clause | null
  readonly machines: readonly string[]
  readonly nameOf: (equipment: string) => string
  readonly rows: readonly RunRow[]
  readonly printedOn: string
}

const each = (values: readonly (string | undefined)[]) =>
  [...new Set(values.filter((value): value is string => !!value))].join(', ') || 'not recorded'

/** What a supplier and a buyer both sign: what was run, what was shown, what was not, the clause met or not. */
export function TrialSheetPage(props: TrialSheetProps) {
  const { title, shown, answer, printedOn } = props
  return (
    <Page title="Trial sheet" packed={null} here="runs" print ran>
      <p class="over-title">Trial sheet</p>
      <h1>{title ?? 'Test runs on the product'}</h1>
      <WhatWasRun {...props} />
      <section aria-labelledby="sheet-shown">
        <h2 id="sheet-shown">What was shown, and what was not</h2>
        {shown.map(({ group, title: name }) => (
          <p>
            <strong>{name}.</strong> {group.words}
          </p>
        ))}
        {answer.paired.map((pair) => (
          <p>
            <strong>{`${pair.first} and ${pair.second}, same packs.`}</strong>{' '}
            {`Both found ${pair.both}, only the first ${pair.onlyFirst}, only the second ${pair.onlySecond}, neither ${pair.neither}: ${pair.words}.`}
          </p>
        ))}
        {answer.missing.length > 0 ? (
          <>
            <h3>Missing</h3>
            <ul>
              {answer.missing.map((one) => (
                <li>{one}</li>
              ))}
            </ul>
          </>
        ) : null}
      </section>
      <ClauseMet {...props} />
      <SizesRun shown={shown} />
      <Signatures />
      <p class="versions">Printed on {printedOn}. It holds for these packs, this day and this setting.</p>
    </Page>
  )
}

function WhatWasRun({ points, machines, rows, answer, nameOf }: TrialSheetProps) {
  const pieces = rows.filter(({ material }) => material !== '')
  return (
    <section aria-labelledby="sheet-run">
      <h2 id="sheet-run">What was run</h2>
      <table>
        <tbody>
          <Line head="Machine" text={each(machines)} />
          <Line head="Setting, locked" text={each(rows.map(({ setting }) => setting))} />
          <Line head="Day" text={each(rows.map(({ date }) => date))} />
          <Line
            head="Shift, operator"
            text={each(rows.flatMap(({ shift, operator }) => [shift, operator]))}
          />
          {points.map((point) => (
            <Line
              head="Product there"
              text={`${point.name}: ${point.speedMPerMin} m/min, ${point.product.temperatureC} °C, ${point.heightMm} mm high`}
            />
          ))}
          <Line
            head="Pieces"
            text={`${countWords(answer.groups.reduce((sum, group) => sum + group.pieces, 0))} in ${new Set(pieces.map(({ pack }) => pack).filter(Boolean)).size || 'unnamed'} packs`}
          />
          {answer.clean.map(({ equipment, setting, run }) => (
            <Line
              head="Clean packs"
              text={`${nameOf(equipment)}${setting ? ` at setting ${setting}` : ''}: ${countWords(run.rejects)} of ${countWords(run.packs)} rejected, ${rateWords(run)}`}
            />
          ))}
        </tbody>
      </table>
    </section>
  )
}

function Line({ head, text }: { head: string; text: string }) {
  return (
    <tr>
      <th scope="row">{head}</th>
      <td>{text}</td>
    </tr>
  )
}

function ClauseMet({ clause, answer, shown }: TrialSheetProps) {
  if (!clause)
    return (
      <section aria-labelledby="sheet-clause">
        <h2 id="sheet-clause">Acceptance clause</h2>
        <p>None was entered with these runs, so none is judged. Agreed: {'.'.repeat(60)}</p>
      </section>
    )
  return (
    <section aria-labelledby="sheet-clause">
      <h2 id="sheet-clause">Acceptance clause</h2>
      <p>
        {`${clause.pieces} pieces of ${clause.sizeMm} mm, ${clause.misses === 0 ? 'none' : `at most ${clause.misses}`} missed`}
        {clause.cleanPacks > 0
          ? `; ${countWords(clause.cleanPacks)} clean packs, at most ${clause.cleanRejects} rejected.`
          : '.'}
      </p>
      {answer.clause?.length === 0 ? <p>Not met: no piece of that size was run.</p> : null}
      {answer.clause?.map(({ group, words }) => (
        <p>
          <strong>{words}</strong> {shown[group]!.title}
        </p>
      ))}
    </section>
  )
}

function SizesRun({ shown }: { shown: readonly ShownGroup[] }) {
  return (
    <section aria-labelledby="sheet-sizes" class="new-sheet">
      <h2 id="sheet-sizes">Sizes one by one</h2>
      {shown.map(({ group, title }) => (
        <table>
          <caption>{title}</caption>
          <thead>
            <tr>
              <th scope="col">Size, mm</th>
              <th scope="col" class="n">
                Pieces
              </th>
              <th scope="col" class="n">
                Found
              </th>
              <th scope="col" class="n">
                At least, 95 % sure
              </th>
            </tr>
          </thead>
          <tbody>
            {group.exact.map((row) => (
              <tr>
                <th scope="row">{row.sizeMm}</th>
                <td class="n">{row.runs}</td>
                <td class="n">{row.found}</td>
                <td class="n">{`${(row.lower95 * 100).toFixed(0)} %`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
      <p class="small">
        {`Best guess of the size found 9 times in 10: ${shown.map(({ group, title }) => `${title}: ${sizeWords(group.a90)} mm`).join('; ')}.`}
      </p>
    </section>
  )
}

function Signatures() {
  return (
    <section aria-labelledby="sheet-signed">
      <h2 id="sheet-signed">Signed</h2>
      {['For the supplier', 'For the buyer', 'Who ran the pieces'].map((who) => (
        <p class="name-line">
          {who} <span class="rule" /> Date <span class="rule short" />
        </p>
      ))}
    </section>
  )
}
