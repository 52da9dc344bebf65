import { Page } from '../page.tsx'
import { capital } from '../words/capital.ts'
import type { SheetProps } from './drill-page.tsx'
import { lineWords } from './pieces-table.tsx'

const LINES = 18

/** The record sheet: one line a check, by exception. */
export function RecordPage({ check, title, packed }: SheetProps) {
  const pieces = check.pieces.filter(({ routineMm }) => routineMm !== null)
  const before = check.records.filter(({ about }) => about !== 'Pieces')
  const at = check.records.findIndex(({ about }) => about === 'Pieces')
  const heads = [
    ...before.slice(0, Math.max(0, at)).map(({ about }) => about),
    ...pieces.map((_, piece) => `Piece ${piece + 1} in the bin`),
    ...before.slice(Math.max(0, at)).map(({ about }) => about),
  ]
  return (
    <Page title={`Record sheet: ${check.point}`} packed={packed} here="checks" print>
      <div class="line-sheet">
        <h1>Record of checks at “{check.point}”</h1>
        <p class="line-head">
          {title}. {capital(check.label)}. Month and sheet: ................ One line for each check, written
          at the time. A piece not in the bin: stop, and follow the drill sheet.
        </p>
        <p class="line-head">
          {pieces.map((piece, n) => `Piece ${n + 1}: ${piece.routineMm} mm ${lineWords(piece)}`).join('. ')}
        </p>
        <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
          <table class="record-sheet">
            <thead>
              <tr>
                {heads.map((head) => (
                  <th scope="col">{head}</th>
                ))}
              </tr>
            </thead>
            <tbody>
              {Array.from({ length: LINES }, () => (
                <tr>
                  {heads.map(() => (
                    <td> </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        <p class="line-head">Reviewed by ................................ on ................</p>
      </div>
    </Page>
  )
}
