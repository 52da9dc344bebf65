import { rowsOf } from '../../src/brief/form/form-index.ts'
import { Choose, Line, Measure } from './field.tsx'
import { GroupFold } from './fold.tsx'
import { AddRow, RowEnd } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

/** Sizes a supplier quoted, to be held against the computed ones. */
export function QuoteGroup({ sheet }: { sheet: Sheet }) {
  const machines = [{ words: '', options: [...sheet.quotedMachines, ...sheet.machines] }]
  const quoted = rowsOf(sheet.answers, 'quotes').length
  return (
    <GroupFold
      sheet={sheet}
      paths={['quotes.']}
      id="quotes"
      title="Sizes a supplier quoted"
      empty="none"
      holds={quoted > 0 ? `${quoted} quoted` : ''}
    >
      {rowsOf(sheet.answers, 'quotes').map((row, at) => (
        <fieldset class="row" id={`quotes.${row}`}>
          <legend>
            <h3>{`Quote ${at + 1}`}</h3>
          </legend>
          <div class="fields">
            <Choose
              sheet={sheet}
              path={`quotes.${row}.equipment`}
              groups={machines}
              empty="Choose a machine"
            />
            <Choose
              sheet={sheet}
              path={`quotes.${row}.material`}
              groups={sheet.contaminants}
              empty="Choose a material"
            />
            <Choose sheet={sheet} path={`quotes.${row}.shape`} empty="Not stated" />
            <Measure sheet={sheet} path={`quotes.${row}.sizeMm`} />
            <Choose sheet={sheet} path={`quotes.${row}.obtained`} empty="Not stated" />
            <Measure sheet={sheet} path={`quotes.${row}.runs`} />
            <Measure sheet={sheet} path={`quotes.${row}.falseRejectsPerPack`} />
            <Measure sheet={sheet} path={`quotes.${row}.lengthMm`} />
            <Measure sheet={sheet} path={`quotes.${row}.faceMm2`} />
            <Line sheet={sheet} path={`quotes.${row}.position`} />
          </div>
          <RowEnd row={`quotes.${row}`} words={`Remove quote ${at + 1}`} />
        </fieldset>
      ))}
      <AddRow list="quotes" words="Add a quoted size" />
    </GroupFold>
  )
}
