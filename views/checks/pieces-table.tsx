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

const yearly = (value: number | null) =>
  value === null ? '–' : value < 0.1 ? 'under 0.1' : String(Number(value.toPrecision(2)))

/** Three figures apart (predicted, demonstrated, routine) with the size to find, and what the piece costs in false failures. */
export function PiecesTable({ check, ink }: { check: CheckPoint; ink: Ink }) {
  return (
    <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
      <table>
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
              <td>{mm(piece.sizeToFindMm, '–')}</td>
              <td>{mm(piece.predictedMm, 'none')}</td>
              <td>{mm(piece.demonstratedMm, 'not yet')}</td>
              <td>
                {piece.routineMm === null ? 'none serves' : `${piece.routineMm} mm`}
                <ByCalculation ink={ink} id={piece.calculation} />
              </td>
              <td>
                {chanceWords(piece.chance)}
                {piece.chance === null ? '' : `; by a logit ${chanceWords(piece.logit.chance)}`}
              </td>
              <td>{yearly(piece.falseFailuresPerYear)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

/** What each piece can and cannot verify. */
export function PieceWords({ check }: { check: CheckPoint }) {
  return (
    <ul>
      {check.pieces.map((piece) => (
        <li>
          <strong>{pieceWords(piece)}:</strong> {verdict(piece)}
          {otherCurve(piece)}
        </li>
      ))}
    </ul>
  )
}

/** What the other curve through the same two sizes would choose; empty where it chooses the same. */
function otherCurve({ routineMm, logit }: CheckPiece): string {
  if (routineMm === null || logit.routineMm === routineMm) return ''
  return ` By a logit through the same two sizes it would be ${logit.routineMm === null ? 'no piece of the series' : `${logit.routineMm} mm`}: no trial of 60 pieces can tell the two curves apart, so watch how often this check fails by itself.`
}

function verdict(piece: CheckPiece): string {
  const { routineMm, sizeToFindMm, basis } = piece
  const curve =
    basis === 'demonstrated' ? 'on the demonstrated curve' : 'on the cautious curve, nothing demonstrated yet'
  if (routineMm === null)
    return 'no piece up to twice the size to find comes out of a healthy machine nearly every time, so this size cannot be verified with a piece.'
  if (sizeToFindMm !== null && routineMm > sizeToFindMm)
    return `the smallest piece that does not fail by itself is ${routineMm} mm (${curve}). The size to find, ${sizeWords(sizeToFindMm)} mm, can be validated but not verified piece by piece; the ${routineMm} mm piece shows that the unit is on, set and rejecting.`
  return `${routineMm} mm comes out of a healthy machine nearly every time (${curve}) and is no larger than the size to find.`
}

/** What a check notices of a machine that got worse. */
export function Notices({ check }: { check: CheckPoint }) {
  const noticing = check.pieces.filter(({ notices }) => notices.length > 0)
  if (noticing.length === 0) return null
  return (
    <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
      <table>
        <caption>
          Chance that a check notices that all sizes grew; slow drift shows in the trend of the signal
        </caption>
        <thead>
          <tr>
            <th scope="col">Routine piece</th>
            {noticing[0]!.notices.map(({ worseBy }) => (
              <th scope="col">{`${Math.round(100 * (worseBy - 1))} % larger: one check, a day`}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {noticing.map((piece) => (
            <tr>
              <th scope="row">
                {piece.routineMm} mm {pieceWords(piece)}
              </th>
              {piece.notices.map(({ chance, inADay }) => (
                <td>
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
