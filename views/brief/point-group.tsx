import { rowsOf } from '../../src/brief/form/form-index.ts'
import { Choose, Line, Measure } from './field.tsx'
import { Fold } from './fold.tsx'
import { PartRows } from './part-rows.tsx'
import { ProductFields } from './product-group.tsx'
import { AddRow, ListError, RowEnd } from './row-buttons.tsx'
import type { Sheet } from './sheet.ts'

const ASKED = [
  'heightMm',
  'widthMm',
  'lengthMm',
  'massG',
  'speedMPerMin',
  'packsPerMin',
  'falseRejectsPerPack',
]
const LESS_ASKED = [
  'filledMm',
  'kgPerHour',
  'lanes',
  'hoursPerDay',
  'checkIntervalMin',
  'reactMin',
  'apertureHeightMm',
  'apertureWidthMm',
  'largestHeightMm',
  'largestWidthMm',
  'fallHeightMm',
  'pipeDiameterMm',
]

const REJECT = ['distanceToRejectMm', 'cycleMs', 'positionErrorMm', 'shortestGapMm']

export function PointGroup({ sheet }: { sheet: Sheet }) {
  const rows = rowsOf(sheet.answers, 'points')
  return (
    <fieldset class="group" id="points">
      <legend>
        <h2>Inspection points</h2>
      </legend>
      <ListError sheet={sheet} list="points" />
      {rows.map((row, at) => (
        <Point sheet={sheet} row={row} number={at + 1} only={rows.length === 1} />
      ))}
      <AddRow list="points" words="Add an inspection point" />
    </fieldset>
  )
}

function Point({ sheet, row, number, only }: { sheet: Sheet; row: number; number: number; only: boolean }) {
  const at = (key: string) => `points.${row}.${key}`
  return (
    <fieldset class="row" id={`points.${row}`}>
      <legend>
        <h3>{`Point ${number}`}</h3>
      </legend>
      <div class="fields tight">
        <Line sheet={sheet} path={at('name')} />
        <Choose sheet={sheet} path={at('stage')} empty="In packs" />
        {ASKED.map((key) => (
          <Measure sheet={sheet} path={at(key)} />
        ))}
      </div>
      <PartRows sheet={sheet} point={row} />
      <Fold
        sheet={sheet}
        paths={[
          ...['outline', 'inserts', 'line', 'afterStep', 'reject.', 'product.', 'productSignal.'],
          ...LESS_ASKED,
        ].map(at)}
        summary="More: outline, inserts, hours, checks, opening, pipe, line, reject, what differs in the food here"
      >
        <Choose sheet={sheet} path={at('outline')} empty="Box" />
        <Line sheet={sheet} path={at('inserts')} />
        {LESS_ASKED.map((key) => (
          <Measure sheet={sheet} path={at(key)} />
        ))}
        <Line sheet={sheet} path={at('line')} />
        <Line sheet={sheet} path={at('afterStep')} />
        <Choose sheet={sheet} path={at('reject.type')} empty="Not stated" />
        {REJECT.map((key) => (
          <Measure sheet={sheet} path={at(`reject.${key}`)} />
        ))}
        <fieldset class="sub wide">
          <legend>Signal of the food, read at the metal detector</legend>
          <Measure sheet={sheet} path={at('productSignal.amplitudePct')} />
          <Measure sheet={sheet} path={at('productSignal.phaseDeg')} />
          <Line sheet={sheet} path={at('productSignal.readOn')} />
        </fieldset>
        <fieldset class="sub wide">
          <legend>What differs in the food at this point</legend>
          <ProductFields sheet={sheet} prefix={at('product')} empty="The same food" />
        </fieldset>
        {only ? null : (
          <div class="row-end">
            <RowEnd row={`points.${row}`} words={`Remove point ${number}`} />
          </div>
        )}
      </Fold>
      {only ? <input type="hidden" name={`points.${row}`} value="row" /> : null}
    </fieldset>
  )
}
