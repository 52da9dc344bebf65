import { rowsOf } from '../../src/brief/form/form-index.ts'
import { Choose, Line, Measure } from './field.tsx'
import { Fold, GroupFold } from './fold.tsx'
import { AddRow, ListError, RowEnd } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

const FIND_MEASURES = ['contaminant', 'packs', 'found', 'events', 'lengthMm', 'widthMm', 'thicknessMm']
const FIND_WORDS = ['point', 'date', 'confirmedBy']

/** What was found on the line, and what people answered to the register and the check plan. */
export function RecordGroup({ sheet }: { sheet: Sheet }) {
  const logged = rowsOf(sheet.answers, 'finds').length
  return (
    <GroupFold
      sheet={sheet}
      paths={['finds.', 'answers.', 'confirmed.', 'demonstrated.', 'measured.']}
      id="finds"
      title="Pieces found"
      empty="none logged"
      holds={logged > 0 ? `${logged} in the log` : ''}
    >
      <ListError sheet={sheet} list="finds" />
      {rowsOf(sheet.answers, 'finds').map((row, at) => (
        <fieldset class="row" id={`finds.${row}`}>
          <legend>
            <h3>{`Find ${at + 1}`}</h3>
          </legend>
          <div class="fields">
            {FIND_MEASURES.map((key) => (
              <Measure sheet={sheet} path={`finds.${row}.${key}`} />
            ))}
            <Choose sheet={sheet} path={`finds.${row}.by`} empty="Not stated" />
            {FIND_WORDS.map((key) => (
              <Line sheet={sheet} path={`finds.${row}.${key}`} />
            ))}
          </div>
          <RowEnd row={`finds.${row}`} words={`Remove find ${at + 1}`} />
        </fieldset>
      ))}
      <AddRow list="finds" words="Add a find" />
      <Kept sheet={sheet} list="answers" keys={['question', 'answer', 'because']} one="answer" />
      <Kept sheet={sheet} list="confirmed" keys={['what', 'by', 'date']} one="confirmation" />
      <Kept
        sheet={sheet}
        list="demonstrated"
        keys={[
          'point',
          'equipment',
          'contaminant',
          'sizeMm',
          'basis',
          'packs',
          'position',
          'setting',
          'serial',
          'date',
          'ranOn',
        ]}
        one="size shown"
        from="trials"
      />
      <Kept
        sheet={sheet}
        list="measured"
        keys={[
          'point',
          'equipment',
          'contaminant',
          'cleanRun.packs',
          'cleanRun.rejects',
          'productSignal',
          'productSignalMm',
          'constants.sizeFactor',
          'constants.sizeSpread',
          'constants.steepness',
          'setting',
          'serial',
          'date',
          'ranOn',
        ]}
        one="machine measured"
        from="trials"
      />
      <AddRow list="measured" words="Add a clean run of a machine" />
    </GroupFold>
  )
}

/** Rows that are written on the pages of the register, and kept with the brief; none are added here. */
function Kept(props: { sheet: Sheet; list: string; keys: readonly string[]; one: string; from?: string }) {
  const { sheet, list, keys, one, from = 'the register' } = props
  const rows = rowsOf(sheet.answers, list)
  if (rows.length === 0) return null
  return (
    <Fold
      sheet={sheet}
      paths={[`${list}.`]}
      summary={`Kept from ${from}: ${rows.length} ${one}(s)`}
      id={list}
    >
      {rows.map((row, at) => (
        <div class="fields part" id={`${list}.${row}`}>
          {keys.map((key) => (
            <Line sheet={sheet} path={`${list}.${row}.${key}`} />
          ))}
          <div class="row-end">
            <RowEnd row={`${list}.${row}`} words={`Remove ${one} ${at + 1}`} />
          </div>
        </div>
      ))}
    </Fold>
  )
}
