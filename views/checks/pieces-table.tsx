import type { CheckPiece, CheckPoint } from '../../src/contract/checks.ts'
import { ByCalculation, type Ink } from '../register/ink.tsx'
import { chanceWords, sizeWords } from '../words/size.ts'

const mm = (value: number | null, none: string) => (value === null ? none : `${sizeWords(value)} mm`)

/** A piece in words: material, and the length or face that goes with its shape. */
export const pieceWords = ({ pieceMaterial, shape, lengthMm, faceMm2 }: CheckPiece): string =>
  shape === 'wire'
    ? `${pieceMaterial}, wire ${lengthMm} mm long`
    : shape === 'flake'
      ? `${pieceMaterial}, flake of ${faceMm2} mm²`
      : `${pieceMaterial}, ball`

/** The same for a person at the line: what was not said of the material is no matter there. */
export const lineWords = (piece: CheckPiece): string => pieceWords(piece).replace(', kind not known', '')

const yearly = (value: number | null) =>
  value === null ? '–' : value < 0.1 ? 'under 0.1' : String(Number(value.toPrecision(2)))

/** Three figures apart (predicted, demonstrated, routine) with the size to find, and what the piece costs in false failures. */
export function PiecesTable({ check, ink }: { check: CheckPoint; ink: Ink }) {
  return (
    <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
      <table class="stacks">
        <caption>Pieces of the check; three figures, never one</caption>
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col">Size to find</th>
            <th scope="col">Predicted, safe to promise</th>
            <th scope="col">Demonstrated</th>
            <th scope="col">Routine piece</th>
            <th scope="col">Chance of one run</th>
            <th scope="col">False failures a year</th>
          </tr>
        </thead>
        <tbody>
          {check.pieces.map((piece) => (
            <tr>
              <th scope="row">{pieceWords(piece)}</th>
              <td data-head="Size to find">{mm(piece.sizeToFindMm, '–')}</td>
              <td data-head="Predicted, safe to promise">{mm(piece.predictedMm, 'none')}</td>
              <td data-head="Demonstrated">{mm(piece.demonstratedMm, 'not yet')}</td>
              <td data-head="Routine piece">
                {piece.routineMm === null ? 'none serves' : `${piece.routineMm} mm`}
                <ByCalculation ink={ink} id={piece.calculation} />
              </td>
              <td data-head="Chance of one run">
                {chanceWords(piece.chance)}
                {piece.chance === null ? '' : `; by a logit ${chanceWords(piece.logit.chance)}`}
              </td>
              <td data-head="False failures a year">{yearly(piece.falseFailuresPerYear)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

const largerWords = (worseBy: number) => `${Math.round(100 * (worseBy - 1))} % larger: one check, a day`

/** What a check notices of a machine that got worse. */
export function Notices({ check, ink }: { check: CheckPoint; ink: Ink }) {
  const noticing = check.pieces.filter(({ notices }) => notices.length > 0)
  if (noticing.length === 0) return null
  return (
    <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
      <table class="stacks">
        <caption>
          Chance that a check notices that all sizes grew; slow drift shows in the trend of the signal
          {ink.paper ? <ByCalculation ink={ink} id={noticing[0]!.calculation} /> : null}
        </caption>
        <thead>
          <tr>
            <th scope="col">Routine piece</th>
            {noticing[0]!.notices.map(({ worseBy }) => (
              <th scope="col">{largerWords(worseBy)}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {noticing.map((piece) => (
            <tr>
              <th scope="row">
                {piece.routineMm} mm {pieceWords(piece)}
              </th>
              {piece.notices.map(({ worseBy, chance, inADay }) => (
                <td data-head={largerWords(worseBy)}>
                  {chanceWords(chance)}, {chanceWords(inADay)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
