import { rowsOf } from '../../src/brief/form/form-index.ts'
import { Choose, Line } from './field.tsx'
import { AddRow, RowEnd } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

/** Steps of the line and what enters at each. */
export function FlowGroup({ sheet }: { sheet: Sheet }) {
  const rows = rowsOf(sheet.answers, 'flow')
  return (
    <fieldset class="group" id="flow">
      <legend>
        <h2>Steps of the line (optional)</h2>
      </legend>
      {rows.map((row, at) => (
        <fieldset class="row" id={`flow.${row}`}>
          <legend>
            <h3>{`Step ${at + 1}`}</h3>
          </legend>
          <div class="fields">
            <Line sheet={sheet} path={`flow.${row}.step`} />
            <Line sheet={sheet} path={`flow.${row}.entersHere`} />
            <Line sheet={sheet} path={`flow.${row}.upstreamControl`} />
            <Choose sheet={sheet} path={`flow.${row}.rework`} empty="Not said" />
          </div>
          <RowEnd row={`flow.${row}`} words={`Remove step ${at + 1}`} />
        </fieldset>
      ))}
      <AddRow list="flow" words="Add a step" />
    </fieldset>
  )
}
