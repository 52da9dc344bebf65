import type { Advice } from '../../src/contract/advice.ts'
import { type Names, pieceWords } from '../words/contaminant.ts'
import { wantedOf } from './findings.ts'

/** The smallest set of machines over the points, each with its job, and what is left over. */
export function Combination({ advice, names }: { advice: Advice; names: Names }) {
  const { uses, unmet, because } = advice.combination
  if (uses.length === 0 && unmet.length === 0) return null
  const wanted = wantedOf(advice)
  const pieces = (contaminants: readonly number[]) =>
    contaminants.flatMap((at) => (wanted[at] ? [pieceWords(wanted[at], names)] : [])).join('; ')
  const label = (equipment: string) =>
    advice.points.flatMap((point) => point.options).find((option) => option.equipment === equipment)?.label ??
    equipment
  return (
    <section aria-labelledby="combination">
      <h2 id="combination">What to use where</h2>
      {uses.length > 0 ? (
        <dl class="uses">
          {uses.map((use) => (
            <>
              <dt>
                {use.point}: {label(use.equipment)}
              </dt>
              <dd>for {pieces(use.contaminants)}</dd>
            </>
          ))}
        </dl>
      ) : null}
      {unmet.length > 0 ? (
        <p>
          <strong>Not met anywhere:</strong> {pieces(unmet)}.
        </p>
      ) : null}
      <p>{because}</p>
    </section>
  )
}
