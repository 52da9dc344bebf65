import type { CheckPoint } from '../../src/contract/checks.ts'
import { Page } from '../page.tsx'
import { capital } from '../words/capital.ts'
import { type PackSize, Places } from './check-section.tsx'
import { lineWords } from './pieces-table.tsx'

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
    check.intervalMin === null ? 'Every ................ minutes' : `Every ${check.intervalMin} minutes`
  const alike = new Set(pieces.map(({ positions }) => JSON.stringify(positions))).size === 1
  const runs = pieces.reduce((sum, { positions }) => sum + positions.length, 0)
  return (
    <Page title={`Drill sheet: ${check.point}`} packed={packed} here="checks" print>
      <div class="line-sheet">
        <h1>Check at “{check.point}”</h1>
        <p class="line-head">
          {title}. {capital(check.label)}. {every}, at start and end of the run, at every change of product,
          pack or setting, after every repair and every stop of more than ........ minutes. Setting number:
          ................
        </p>
        <p class="line-safe">
          <strong>Keep safe.</strong> {check.careful.map(({ text }) => text).join(' ')}
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
            <h2>
              {runs < 2
                ? runs === 1
                  ? 'Piece: one run'
                  : 'No piece serves here'
                : `Pieces: ${runs} runs, one piece at a time`}
            </h2>
            <ul>
              {pieces.map((piece) => (
                <li>
                  {piece.routineMm} mm {lineWords(piece)}: {numbersWords(piece)}
                  {alike ? null : (
                    <>
                      <br />
                      <span class="small">{placesWords(piece)}</span>
                    </>
                  )}
                </li>
              ))}
            </ul>
            {alike && pieces.length > 0 ? <p>{placesWords(pieces[0]!)}.</p> : null}
            <Places check={{ ...check, pieces }} pack={pack} bare={alike} />
          </div>
        </div>
        <h2>A piece did not come out?</h2>
        <ol class="line-fails">
          {check.ifFails.map(({ about, text }) => (
            <li>
              {about === '' ? null : <strong>{about}. </strong>}
              {text}
            </li>
          ))}
        </ol>
        <p class="line-head">
          Line lead, day and night: ................................ Telephone: ................ Releases what
          was held: {releasedBy === '' ? '................................' : releasedBy}. Where anything on
          this sheet is left blank: do not start, ask the line lead.
        </p>
      </div>
    </Page>
  )
}

/** Blanks for the numbers of a piece: one pack for each place. */
const numbersWords = ({ positions }: CheckPoint['pieces'][number]): string =>
  positions.length === 1
    ? 'number ........'
    : `numbers ${positions.map((_, at) => `........ (place ${at + 1})`).join(', ')}`

const placesWords = ({ positions }: CheckPoint['pieces'][number]): string =>
  `${positions.length === 1 ? 'Place' : 'Each piece once at each place'}: ${positions.map(({ name }, at) => `${at + 1} ${name}`).join(', ')}`
