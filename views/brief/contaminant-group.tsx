import { rowsOf } from '../../src/brief/form/form-index.ts'
import { Choose, Line, Measure } from './field.tsx'
import { Fold } from './fold.tsx'
import { NoteLine } from './note-line.tsx'
import { AddRow, ListError, RowEnd } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

export function ContaminantGroup({ sheet }: { sheet: Sheet }) {
  const rows = rowsOf(sheet.answers, 'contaminants')
  return (
    <fieldset class="group" id="contaminants">
      <legend>
        <h2>Contaminants</h2>
      </legend>
      <ListError sheet={sheet} list="contaminants" />
      <table class="rows">
        <caption class="unseen">What must not reach the eater, one line each</caption>
        <thead>
          <tr>
            <th scope="col">Material</th>
            <th scope="col">Shape</th>
            <th scope="col">Size you must find</th>
            <th scope="col">More</th>
          </tr>
        </thead>
        {rows.map((row, at) => (
          <ContaminantRow sheet={sheet} row={row} number={at + 1} />
        ))}
      </table>
      <NoteLine path="contaminants" note={sheet.notes.get('contaminants')} />
      <AddRow list="contaminants" words="Add a contaminant" />
    </fieldset>
  )
}

const OWN = ['ownName', 'kind', 'densityGPerCm3', 'elements']
const CHOSEN = ['basis', 'severity', 'likelihood']
const DETAILS = ['lengthMm', 'faceMm2', 'placement', 'foundPerMillionPacks', 'entersAt']

function ContaminantRow({ sheet, row, number }: { sheet: Sheet; row: number; number: number }) {
  const at = (key: string) => `contaminants.${row}.${key}`
  const materials = [
    { words: 'Not in the list', options: [{ value: 'custom', words: 'Own material' }] },
    ...sheet.contaminants,
  ]
  const isOwn = sheet.answers[at('material')] === 'custom'
  return (
    <tbody id={`contaminants.${row}`}>
      <tr>
        <td>
          <Choose sheet={sheet} path={at('material')} groups={materials} empty="Choose a material" inTable />
        </td>
        <td>
          <Choose sheet={sheet} path={at('shape')} empty="Sphere" inTable />
        </td>
        <td>
          <Measure sheet={sheet} path={at('mustFindMm')} inTable />
        </td>
        <td class="details">
          <Fold
            sheet={sheet}
            paths={[...DETAILS, ...CHOSEN, ...OWN].map(at).concat(at('entries.'))}
            summary={`Details ${number}`}
          >
            {CHOSEN.map((key) => (
              <Choose sheet={sheet} path={at(key)} empty="Not stated" />
            ))}
            {DETAILS.map((key) =>
              key === 'placement' ? (
                <Choose sheet={sheet} path={at(key)} empty="Not stated" />
              ) : key === 'entersAt' ? (
                <Line sheet={sheet} path={at(key)} />
              ) : (
                <Measure sheet={sheet} path={at(key)} />
              ),
            )}
            <fieldset class="sub">
              <legend>{isOwn ? 'Your own material' : 'Only where the material is your own'}</legend>
              <Line sheet={sheet} path={at('ownName')} />
              <Choose sheet={sheet} path={at('kind')} empty="Not stated" />
              <Measure sheet={sheet} path={at('densityGPerCm3')} />
              <Line sheet={sheet} path={at('elements')} />
            </fieldset>
            <EntryRows sheet={sheet} contaminant={row} />
            <div class="row-end">
              <RowEnd row={`contaminants.${row}`} words={`Remove contaminant ${number}`} />
            </div>
          </Fold>
        </td>
      </tr>
    </tbody>
  )
}

/** The steps at which one contaminant enters. */
function EntryRows({ sheet, contaminant }: { sheet: Sheet; contaminant: number }) {
  const list = `contaminants.${contaminant}.entries`
  return (
    <Fold sheet={sheet} paths={[`${list}.`]} summary="Steps where it enters, with shares" id={list}>
      {rowsOf(sheet.answers, list).map((row, at) => (
        <div class="fields part" id={`${list}.${row}`}>
          <Line sheet={sheet} path={`${list}.${row}.step`} />
          <Measure sheet={sheet} path={`${list}.${row}.share`} />
          <div class="row-end">
            <RowEnd row={`${list}.${row}`} words={`Remove step ${at + 1}`} />
          </div>
        </div>
      ))}
      <AddRow list={list} words="Add a step where it enters" />
    </Fold>
  )
}
