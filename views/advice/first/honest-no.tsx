import type { Advice } from '../../../src/contract/advice.ts'
import { type Names, pieceWords } from '../../words/contaminant.ts'
import type { Citations } from '../reasons/citations.ts'
import { Cited } from '../reasons/cited.tsx'
import { findingOf, honestNo } from '../sizes/findings.ts'

/** What no machine finds here, said first, with where to turn instead. */
export function HonestNo({
  advice,
  names,
  citations,
}: {
  advice: Advice
  names: Names
  citations: Citations
}) {
  const lost = honestNo(advice)
  if (lost.length === 0) return null
  const helped = advice.points.some((point) => point.removals.some(({ unsuitable }) => unsuitable === ''))
  return (
    <section class="honest-no" aria-labelledby="honest-no">
      <h2 id="honest-no">What no machine here will find</h2>
      <ul>
        {lost.map((wanted) => {
          const notes = advice.points.flatMap((point) =>
            point.options.flatMap((option) => findingOf(option, wanted.contaminant)?.note ?? []),
          )
          return (
            <li>
              <strong>{pieceWords(wanted, names)}.</strong>{' '}
              {[...new Set(notes)]
                .filter((note) => note !== '')
                .slice(0, 2)
                .join(' ')}
              {advice.prevention
                .filter(({ contaminant }) => contaminant === wanted.contaminant)
                .map(({ text, sources }) => (
                  <p>
                    {text}
                    <Cited ids={sources} citations={citations} />
                  </p>
                ))}
            </li>
          )
        })}
      </ul>
      <p>
        These are kept out before the line or not at all: supplier control with evidence, sieving and sorting
        before packing, a policy for glass and brittle plastic, control of blades, needles and tools.
        {helped ? ' What may help upstream stands below.' : ''}
      </p>
    </section>
  )
}
