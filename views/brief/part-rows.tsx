import { rowsOf } from '../../src/brief/form/form-index.ts'
import { Choose, Measure } from './field.tsx'
import { Fold } from './fold.tsx'
import { AddRow, RowEnd } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

/** The packaging of one point, part by part. */
export function PartRows({ sheet, point }: { sheet: Sheet; point: number }) {
  const list = `points.${point}.parts`
  return (
    <Fold
      sheet={sheet}
      paths={[list, `${list}.`]}
      summary="Packaging"
      id={list}
      holds={heldParts(sheet, list)}
      stacked
    >
      {rowsOf(sheet.answers, list).map((row, at) => (
        <div class="fields part tight" id={`${list}.${row}`}>
          <Choose
            sheet={sheet}
            path={`${list}.${row}.material`}
            groups={sheet.packaging}
            empty="Choose a material"
          />
          <Measure sheet={sheet} path={`${list}.${row}.mm`} />
          <Choose sheet={sheet} path={`${list}.${row}.place`} empty="Choose a place" />
          <Measure sheet={sheet} path={`${list}.${row}.unevennessMm`} />
          <Measure sheet={sheet} path={`${list}.${row}.sheetOhmPerSquare`} />
          <div class="row-end">
            <RowEnd row={`${list}.${row}`} words={`Remove part ${at + 1}`} />
          </div>
        </div>
      ))}
      <AddRow list={list} words="Add a packaging part" />
    </Fold>
  )
}

/** "polyethylene (PE) 0.08 mm as wrap": each part in a few words. */
function heldParts(sheet: Sheet, list: string): string {
  const names = new Map(
    sheet.packaging.flatMap(({ options }) => options).map(({ value, words }) => [value, words]),
  )
  return rowsOf(sheet.answers, list)
    .map((row) => {
      const [material = '', mm = '', place = ''] = ['material', 'mm', 'place'].map(
        (key) => sheet.answers[`${list}.${row}.${key}`] ?? '',
      )
      return [names.get(material) ?? material, mm, place].filter(Boolean).join(' ')
    })
    .filter(Boolean)
    .join(', ')
}
