import type { Checks } from '../../src/contract/checks.ts'
import type { Register } from '../../src/contract/register.ts'
import { pieceWords } from '../checks/pieces-table.tsx'
import { type Ink, Sentences } from '../register/ink.tsx'
import { sizeWords } from '../words/size.ts'

/** Limits of the controls, each said once. */
export function ControlsInShort({ register, ink }: { register: Register; ink: Ink }) {
  const limits = register.hazards.flatMap(({ controls }) => controls.flatMap((one) => one.criticalLimit))
  const once = [...new Map(limits.map((one) => [one.text, one])).values()]
  if (once.length === 0) return null
  return (
    <section>
      <h2>Limits</h2>
      <Sentences ink={ink} sentences={once} />
    </section>
  )
}

/** Pieces and interval of each machine. */
export function PiecesInShort({ checks, ink: _ink }: { checks: Checks; ink: Ink }) {
  if (checks.points.length === 0) return null
  return (
    <section>
      <h2>Checks</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Machine</th>
            <th scope="col">Minutes between checks</th>
            <th scope="col">Piece: size to find, predicted, demonstrated, routine</th>
          </tr>
        </thead>
        <tbody>
          {checks.points.map((check) => (
            <tr>
              <th scope="row">
                {check.label}, {check.point}
              </th>
              <td>{check.intervalMin ?? 'not set'}</td>
              <td class="prose">
                {check.pieces
                  .map(
                    (piece) =>
                      `${pieceWords(piece)}: ${sizeWords(piece.sizeToFindMm)}, ${piece.predictedMm === null ? 'none' : sizeWords(piece.predictedMm)}, ${piece.demonstratedMm === null ? 'not yet' : sizeWords(piece.demonstratedMm)}, ${piece.routineMm ?? 'none serves'} mm`,
                  )
                  .join('; ')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
