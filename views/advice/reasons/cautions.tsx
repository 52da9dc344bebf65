import type { Advice, Caution } from '../../../src/contract/advice.ts'
import { midSentence } from '../../words/capital.ts'
import { grouped } from '../../words/grouped.ts'
import { ruleLink } from '../links.ts'
import type { Citations } from './citations.ts'
import { Cited } from './cited.tsx'

interface Props {
  readonly advice: Advice
  readonly citations: Citations
  readonly packed: string
}

/** Cautions where the work can hurt and what practice asks: those of the advice, and those all machines share. */
export function Cautions(props: Props) {
  return (
    <section class="cautions" aria-labelledby="cautions">
      <h2 id="cautions">Cautions</h2>
      <CautionList {...props} cautions={cautionsOf(props.advice)} />
      <p class="small">What holds for one machine only stands among its reasons.</p>
    </section>
  )
}

/** What law, guidance and standards of the market ask, by their own evidence. */
export function Law(props: Props) {
  const law = lawOf(props.advice)
  if (law.length === 0) return null
  return (
    <section class="cautions" aria-labelledby="law">
      <h2 id="law">Law, guidance and standards</h2>
      <CautionList {...props} cautions={law} />
    </section>
  )
}

/** The same in a sentence: what speaks here, by the titles of its rules. */
export function LawInShort({ advice, citations }: Props) {
  const titles = new Map(advice.trace.rules.map(({ id, title }) => [id, title]))
  const law = lawOf(advice)
  if (law.length === 0) return null
  return (
    <p>
      <strong>Law, guidance and standards that speak here:</strong>{' '}
      {law.map(({ id, sources }, at) => (
        <>
          {at > 0 ? '; ' : ''}
          {midSentence(titles.get(id) ?? id)}
          <Cited ids={sources} citations={citations} />
        </>
      ))}
      . What each asks stands in the print of everything.
    </p>
  )
}

function CautionList({
  citations,
  packed,
  cautions,
}: Omit<Props, 'advice'> & { cautions: readonly Caution[] }) {
  return (
    <ul>
      {cautions.map((caution) => (
        <li>
          {caution.text}
          <span class="small">
            {' '}
            Rule{' '}
            <a href={ruleLink(caution.id, packed)}>
              <code>{caution.id}</code>
            </a>
            .
          </span>
          <Cited ids={caution.sources} citations={citations} />
        </li>
      ))}
    </ul>
  )
}

/** Cautions that speak of law, guidance or a standard. */
export function lawOf(advice: Advice): Caution[] {
  const law = new Set(advice.register.law.map(({ rule }) => rule))
  return advice.cautions.filter(({ id }) => law.has(id))
}

/** The other cautions of the whole advice, then those that all machines share. */
export function cautionsOf(advice: Advice): Caution[] {
  const law = new Set(lawOf(advice))
  const ofMachines = advice.points.flatMap((point) => point.options.flatMap((option) => option.cautions))
  return [...advice.cautions.filter((caution) => !law.has(caution)), ...sharedCautions(ofMachines)]
}

/** A caution that speaks of one contaminant or one machine has another text each time; those stay there. */
function sharedCautions(cautions: readonly Caution[]): Caution[] {
  return [...grouped(cautions, (caution) => caution.id).values()].flatMap((same) => {
    const [first] = same
    return first && same.length > 1 && same.every(({ text }) => text === first.text) ? [first] : []
  })
}
