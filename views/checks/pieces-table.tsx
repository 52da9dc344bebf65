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

/** What the pieces can and cannot verify, each said once for all it holds for. */
export function PieceWords({ check, ink }: { check: CheckPoint; ink: Ink }) {
  return (
    <ul>
      {(['demonstrated', 'predicted'] as const)
        .flatMap((basis) => {
          const pieces = check.pieces.filter(
            (piece) => (piece.basis === 'demonstrated') === (basis === 'demonstrated'),
          )
          return [...verdicts(pieces, basis), ...otherCurve(pieces)]
        })
        .map(({ about, says }) => (
          <li>
            <strong>{about}:</strong> {says}
            {ink.paper ? <ByCalculation ink={ink} id={check.pieces[0]!.calculation} /> : null}
          </li>
        ))}
    </ul>
  )
}

interface Said {
  readonly about: string
  readonly says: string
}

const listed = (pieces: readonly CheckPiece[], words: (piece: CheckPiece) => string): string =>
  pieces.map((piece) => `${pieceWords(piece)}, ${words(piece)}`).join('; ')

/** Pieces that verify the size to find, those that only show that the unit works, and sizes no piece verifies. */
function verdicts(pieces: readonly CheckPiece[], basis: 'demonstrated' | 'predicted'): Said[] {
  const curve =
    basis === 'demonstrated' ? 'on the demonstrated curve' : 'on the cautious curve, nothing demonstrated yet'
  const larger = ({ routineMm, sizeToFindMm }: CheckPiece) =>
    sizeToFindMm !== null && routineMm !== null && routineMm > sizeToFindMm
  const verify = pieces.filter((piece) => piece.routineMm !== null && !larger(piece))
  const show = pieces.filter(larger)
  const none = pieces.filter(({ routineMm }) => routineMm === null)
  const all: readonly (readonly [readonly CheckPiece[], string, string])[] = [
    [
      verify,
      listed(verify, ({ routineMm }) => `${routineMm} mm`),
      `comes out of a healthy machine nearly every time (${curve}) and is no larger than the size to find.`,
    ],
    [
      show,
      listed(
        show,
        ({ routineMm, sizeToFindMm }) =>
          `${routineMm} mm for a size to find of ${sizeWords(sizeToFindMm!)} mm`,
      ),
      `the smallest piece that does not fail by itself is larger than the size to find (${curve}). That size can be validated but not verified piece by piece; the piece shows that the unit is on, set and rejecting.`,
    ],
    [
      none,
      none.map(pieceWords).join('; '),
      'no piece up to twice the size to find comes out of a healthy machine nearly every time, so this size cannot be verified with a piece.',
    ],
  ]
  return all.flatMap(([some, about, says]) => (some.length === 0 ? [] : [{ about, says }]))
}

/** What the other curve through the same two sizes would choose; nothing where it chooses the same. */
function otherCurve(pieces: readonly CheckPiece[]): Said[] {
  const other = pieces.filter(({ routineMm, logit }) => routineMm !== null && logit.routineMm !== routineMm)
  if (other.length === 0) return []
  const chosen = listed(other, ({ logit }) =>
    logit.routineMm === null ? 'no piece of the series' : `${logit.routineMm} mm`,
  )
  return [
    {
      about: 'By a logit through the same two sizes',
      says: `${chosen}. No trial of 60 pieces can tell the two curves apart, so watch how often these checks fail by themselves.`,
    },
  ]
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
