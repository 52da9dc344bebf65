import type { CheckPoint } from '../../src/contract/checks.ts'
import { Page } from '../page.tsx'
import { type PackSize, Places } from './check-section.tsx'
import { pieceWords } from './pieces-table.tsx'

export interface SheetProps {
  readonly check: CheckPoint
  readonly pack: PackSize
  readonly title: string
  readonly packed: string
  readonly releasedBy: string
}

/** One page for the line: the check in plain words and pictures, and what to do when a piece does not come out. */
export function DrillPage({ check, pack, title, packed, releasedBy }: SheetProps) {
  const pieces = check.pieces.filter(({ routineMm }) => routineMm !== null)
  const every =
    check.intervalMin === null
      ? 'Time between checks: ................ min'
      : `Every ${check.intervalMin} minutes`
  return (
    <Page title={`Drill sheet: ${check.point}`} packed={packed} here="checks" print>
      <div class="line-sheet">
        <h1>Check at “{check.point}”</h1>
        <p class="line-head">
          {title}. {check.label}. {every}, and at start, end, change, stop and repair. Setting number:
          ................
        </p>
        <div class="line-columns">
          <ol class="line-steps">
            {check.drill.map(({ about, text }) => (
              <li>
                <strong>{about}.</strong> {text}
              </li>
            ))}
          </ol>
          <div>
            <h2>Pieces</h2>
            <ul>
              {pieces.map((piece) => (
                <li>
                  {piece.routineMm} mm {pieceWords(piece)}: number ........
                  <br />
                  <span class="small">
                    {piece.positions.length === 1 ? 'Place: ' : 'One run at each place: '}
                    {piece.positions.map(({ name }, at) => `${at + 1} ${name}`).join(', ')}
                  </span>
                </li>
              ))}
            </ul>
            <Places check={{ ...check, pieces }} pack={pack} />
          </div>
        </div>
        <h2>A piece is not in the bin?</h2>
        <ol class="line-fails">
          {check.ifFails.map(({ about, text }) => (
            <li>
              {about === '' ? null : <strong>{about}. </strong>}
              {text}
            </li>
          ))}
        </ol>
        <p class="line-head">
          Call: {releasedBy === '' ? '................................' : releasedBy}. Telephone:
          ................ Keep hands out of the machine and the reject; only trained people open guards.
          {check.family === 'xray' ? ' Never reach into the x-ray cabinet; never bridge a switch.' : ''}
        </p>
      </div>
    </Page>
  )
}
