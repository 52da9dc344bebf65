import type { Advice, Caution } from '../../../src/contract/advice.ts'
import { grouped } from '../../words/grouped.ts'
import { ruleLink } from '../links.ts'
import type { Citations } from './citations.ts'
import { Cited } from './cited.tsx'

/** Cautions where the work can hurt: those of the advice, and those all machines share. */
export function Cautions({
  advice,
  citations,
  packed,
}: {
  advice: Advice
  citations: Citations
  packed: string
}) {
  const rules = new Set(advice.trace.rules.map(({ id }) => id))
  const all = allCautions(advice)
  return (
    <section class="cautions" aria-labelledby="cautions">
      <h2 id="cautions">Cautions</h2>
      <ul>
        {all.map((caution) => (
          <li>
            {caution.text}
            {rules.has(caution.id) ? (
              <span class="small">
                {' '}
                Rule{' '}
                <a href={ruleLink(caution.id, packed)}>
                  <code>{caution.id}</code>
                </a>
                .
              </span>
            ) : null}
            <Cited ids={caution.sources} citations={citations} />
          </li>
        ))}
      </ul>
      <p class="small">What holds for one machine only stands among its reasons.</p>
    </section>
  )
}

/** Cautions of the whole advice, then those that all machines share. */
export function allCautions(advice: Advice): Caution[] {
  const ofMachines = advice.points.flatMap((point) => point.options.flatMap((option) => option.cautions))
  return [...advice.cautions, ...sharedCautions(ofMachines)]
}

/** A caution that speaks of one contaminant or one machine has another text each time; those stay there. */
function sharedCautions(cautions: readonly Caution[]): Caution[] {
  return [...grouped(cautions, (caution) => caution.id).values()].flatMap((same) => {
    const [first] = same
    return first && same.length > 1 && same.every(({ text }) => text === first.text) ? [first] : []
  })
}
