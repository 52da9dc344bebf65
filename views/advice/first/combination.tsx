import type { Advice } from '../../../src/contract/advice.ts'
import { type Names, pieceWords } from '../../words/contaminant.ts'
import type { Citations } from '../reasons/citations.ts'
import { Cited } from '../reasons/cited.tsx'
import { honestNo, wantedOf } from '../sizes/findings.ts'

/** The smallest set of machines over the points, each with its job, and what is left over. */
export function Combination({
  advice,
  names,
  citations,
}: {
  advice: Advice
  names: Names
  citations: Citations
}) {
  const { uses, unmet, because, independence, stillEnters } = advice.combination
  if (uses.length === 0 && unmet.length === 0) return null
  const lost = new Set(honestNo(advice).map(({ contaminant }) => contaminant))
  const prevention = advice.prevention.filter((one) => !lost.has(one.contaminant))
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
          <strong>Not met at the size asked:</strong>{' '}
          {pieces([...new Set(unmet.map(({ contaminant }) => contaminant))])}.
        </p>
      ) : null}
      <p>{because}</p>
      {independence ? <p>{independence}</p> : null}
      {prevention.length > 0 ? (
        <>
          <p>What no machine here meets at the size asked is kept out before it:</p>
          <ul>
            {prevention.map(({ contaminant, text, sources }) => (
              <li>
                <strong>{pieces([contaminant])}.</strong> {text}
                <Cited ids={sources} citations={citations} />
              </li>
            ))}
          </ul>
        </>
      ) : null}
      <h3>What can still enter behind each point</h3>
      <ul>
        {stillEnters.map(({ point, text }) => (
          <li>
            <strong>{point}:</strong> {text}
          </li>
        ))}
      </ul>
    </section>
  )
}
