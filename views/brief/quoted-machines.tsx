import { rowsOf } from '../../src/brief/form/form-index.ts'
import { Choose, Line, Measure } from './field.tsx'
import { Fold } from './fold.tsx'
import { AddRow, RowEnd } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

const TUBE = ['lowestKV', 'highestKV', 'maxMA', 'maxPowerW', 'filterAlMm']
const DETECTOR = ['pixelMm', 'sourceToDetectorMm', 'magnification', 'maxLinesPerSecond', 'beltMm']
const COIL = ['mostAtOnce', 'apertureHeightMm', 'apertureWidthMm']
const SPACE = ['maxWidthMm', 'maxHeightMm', 'burden']

/** Machines as suppliers quote them: the nearest kind, and the figures the quote gives in place of the kind's. */
export function QuotedMachines({ sheet }: { sheet: Sheet }) {
  const rows = rowsOf(sheet.answers, 'quoted')
  return (
    <>
      {rows.map((row, at) => (
        <QuotedMachine sheet={sheet} row={row} number={at + 1} />
      ))}
      <AddRow list="quoted" words="Add a machine from a quote" />
    </>
  )
}

function QuotedMachine({ sheet, row, number }: { sheet: Sheet; row: number; number: number }) {
  const at = (key: string) => `quoted.${row}.${key}`
  const base = sheet.answers[at('base')] ?? ''
  const kinds = [{ words: '', options: sheet.detectors }]
  const measures = (keys: readonly string[]) => keys.map((key) => <Measure sheet={sheet} path={at(key)} />)
  return (
    <fieldset class="row" id={`quoted.${row}`}>
      <legend>
        <h3>{`Quoted machine ${number}`}</h3>
      </legend>
      <div class="fields">
        <Choose
          sheet={sheet}
          path={at('kind')}
          groups={kinds}
          empty={base === '' ? 'Choose the nearest kind' : 'None: as described'}
        />
        <Line sheet={sheet} path={at('label')} />
      </div>
      {base === '' ? null : <input type="hidden" name={at('base')} value={base} />}
      <Fold
        sheet={sheet}
        paths={[...TUBE, ...DETECTOR].map(at)}
        summary="Of an x-ray machine: tube and detector"
      >
        {measures([...TUBE, ...DETECTOR])}
      </Fold>
      <Fold
        sheet={sheet}
        paths={['frequenciesKHz', ...COIL].map(at)}
        summary="Of a metal detector: frequencies and opening"
      >
        <Line sheet={sheet} path={at('frequenciesKHz')} />
        {measures(COIL)}
      </Fold>
      <Fold sheet={sheet} paths={SPACE.map(at)} summary="Of either: packs it takes, burden">
        {measures(SPACE)}
      </Fold>
      <RowEnd row={`quoted.${row}`} words={`Remove quoted machine ${number}`} />
    </fieldset>
  )
}
