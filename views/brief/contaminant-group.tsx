import { rowsOf } from '../../src/brief/form/form-index.ts'
import { Choose, Line, Measure } from './field.tsx'
import { Fold } from './fold.tsx'
import { AddRow, ListError, RowEnd } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

export function ContaminantGroup({ sheet }: { sheet: Sheet }) {
  return (
    <fieldset class="group" id="contaminants">
      <legend>
        <h2>Contaminants</h2>
      </legend>
      <p class="lead-in">
        One row for each thing that must not reach the eater. Of a wire give its length, of a flake its face.
      </p>
      <ListError sheet={sheet} list="contaminants" />
      {rowsOf(sheet.answers, 'contaminants').map((row, at) => (
        <ContaminantRow sheet={sheet} row={row} number={at + 1} />
      ))}
      <AddRow list="contaminants" words="Add a contaminant" />
    </fieldset>
  )
}

function ContaminantRow({ sheet, row, number }: { sheet: Sheet; row: number; number: number }) {
  const at = (key: string) => `contaminants.${row}.${key}`
  const materials = [
    { words: 'Not in the list', options: [{ value: 'custom', words: 'Own material' }] },
    ...sheet.contaminants,
  ]
  return (
    <fieldset class="row" id={`contaminants.${row}`}>
      <legend>
        <h3>{`Contaminant ${number}`}</h3>
      </legend>
      <div class="fields">
        <Choose sheet={sheet} path={at('material')} groups={materials} empty="Choose a material" />
        <Choose sheet={sheet} path={at('shape')} empty="Not said" />
        <Measure sheet={sheet} path={at('mustFindMm')} />
        <Choose sheet={sheet} path={at('basis')} empty="Not said" />
        <Choose sheet={sheet} path={at('severity')} empty="Not said" />
        <Choose sheet={sheet} path={at('likelihood')} empty="Not said" />
      </div>
      <Fold
        sheet={sheet}
        paths={['ownName', 'kind', 'densityGPerCm3', 'elements'].map(at)}
        summary="Own material: kind, density, elements"
      >
        <Line sheet={sheet} path={at('ownName')} />
        <Choose sheet={sheet} path={at('kind')} empty="Not said" />
        <Measure sheet={sheet} path={at('densityGPerCm3')} />
        <Line sheet={sheet} path={at('elements')} />
      </Fold>
      <Fold
        sheet={sheet}
        paths={['lengthMm', 'faceMm2', 'placement', 'foundPerMillionPacks', 'entersAt'].map(at)}
        summary="Wire length, flake face, where it lies, how often it was found"
      >
        <Measure sheet={sheet} path={at('lengthMm')} />
        <Measure sheet={sheet} path={at('faceMm2')} />
        <Choose sheet={sheet} path={at('placement')} empty="Not said" />
        <Measure sheet={sheet} path={at('foundPerMillionPacks')} />
        <Line sheet={sheet} path={at('entersAt')} />
      </Fold>
      <EntryRows sheet={sheet} contaminant={row} />
      <RowEnd row={`contaminants.${row}`} words={`Remove contaminant ${number}`} />
    </fieldset>
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
