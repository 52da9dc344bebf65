import { rowsOf } from '../../src/brief/form/form-index.ts'
import { Choose, Line } from './field.tsx'
import { GroupFold } from './fold.tsx'
import { AddRow, RowEnd } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

/** Steps of the line, one line each: what enters there, what controls it. */
export function FlowGroup({ sheet }: { sheet: Sheet }) {
  const rows = rowsOf(sheet.answers, 'flow')
  const steps = rows.map((row) => sheet.answers[`flow.${row}.step`] ?? '').filter(Boolean)
  return (
    <GroupFold
      sheet={sheet}
      paths={['flow.']}
      id="flow"
      title="Steps of the line"
      empty="none given: what can still enter behind a point is then not known"
      holds={steps.join(' → ')}
    >
      {rows.length > 0 ? (
        <table class="rows">
          <caption class="unseen">Steps of the line, one line each</caption>
          <thead>
            <tr>
              <th scope="col">Step</th>
              <th scope="col">What can enter here, separated by commas</th>
              <th scope="col">Control in place</th>
              <th scope="col">Rework goes back from here</th>
              <th scope="col">
                <span class="unseen">Take out</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, at) => (
              <tr id={`flow.${row}`}>
                <td>
                  <Line sheet={sheet} path={`flow.${row}.step`} inTable />
                </td>
                <td>
                  <Line sheet={sheet} path={`flow.${row}.entersHere`} inTable />
                </td>
                <td>
                  <Line sheet={sheet} path={`flow.${row}.upstreamControl`} inTable />
                </td>
                <td>
                  <Choose sheet={sheet} path={`flow.${row}.rework`} empty="Not stated" inTable />
                </td>
                <td>
                  <RowEnd row={`flow.${row}`} words={`step ${at + 1}`} short />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
      <AddRow list="flow" words="Add a step" />
    </GroupFold>
  )
}
