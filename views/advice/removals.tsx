import type { Advice } from '../../src/contract/advice.ts'
import { type Names, pieceWords } from '../words/contaminant.ts'
import { wantedOf } from './findings.ts'

const percent = (share: number) => `${Math.round(share * 100)}`

/** What takes a share out before a detector sees it; never ranked against one. */
export function Removals({ advice, names }: { advice: Advice; names: Names }) {
  const wanted = wantedOf(advice)
  const points = advice.points.filter((point) => point.removals.length > 0)
  if (points.length === 0) return null
  return (
    <section aria-labelledby="removals">
      <h2 id="removals">Upstream removal</h2>
      <p>
        These take out a share per run, not a size; however large the piece, no more than the ceiling leaves.
      </p>
      {points.map((point, at) => (
        <section class="scroll" tabindex={0} aria-labelledby={`removals-${at}`}>
          <table>
            <caption id={`removals-${at}`}>{point.name}</caption>
            <thead>
              <tr>
                <th scope="col">Equipment</th>
                <th scope="col">Contaminant</th>
                <th scope="col" class="n">
                  Share removed, %
                </th>
                <th scope="col" class="n">
                  Ceiling, %
                </th>
                <th scope="col">Condition</th>
                <th scope="col">Never removes</th>
              </tr>
            </thead>
            <tbody>
              {point.removals.map((removal) => {
                const piece = wanted[removal.contaminant]
                return (
                  <tr>
                    <th scope="row">{removal.label}</th>
                    <td>{piece ? pieceWords(piece, names) : ''}</td>
                    <td class="n">
                      {percent(removal.shareRemoved[0])} to {percent(removal.shareRemoved[1])}
                    </td>
                    <td class="n">{percent(removal.ceiling)}</td>
                    <td class="prose">{removal.condition}</td>
                    <td class="prose">{removal.neverRemoves}</td>
                  </tr>
                )
              })}
            </tbody>
          </table>
        </section>
      ))}
    </section>
  )
}
