import type { Missing } from '../../../src/contract/reasoning.ts'
import { WhyLinks } from './why-links.tsx'

interface Props {
  readonly missing: readonly Missing[]
  /** What a field is called, with its place. */
  readonly wordsOf: (path: string) => string
  /** Address of a field, e.g. its place in the form; null where it has none. */
  readonly hrefOf: (path: string) => string | null
  /** The brief in the links to the rules that say it; null on paper. */
  readonly packed: string | null
}

/** What to enter next: values not given, by how much they could change the answer. */
export function MissingInputs({ missing, wordsOf, hrefOf, packed }: Props) {
  if (missing.length === 0)
    return <p>Nothing that is not given could change this answer much within its stated range.</p>
  return (
    <ol class="missing">
      {missing.map(({ path, effect, grounds }) => {
        const href = hrefOf(path)
        const words = wordsOf(path)
        return (
          <li>
            <strong>{href ? <a href={href}>{words}</a> : words}</strong>: {effect}
            <WhyLinks grounds={grounds} packed={packed} />
          </li>
        )
      })}
    </ol>
  )
}

/** The same as a section of the advice. */
export function MissingSection(props: Props) {
  return (
    <section aria-labelledby="missing">
      <h2 id="missing">What to find out</h2>
      <MissingInputs {...props} />
      {props.missing.length > 0 ? (
        <p class="small">
          Each assumed value was moved over its stated range on the leading machines and the closest sizes.
          First stands what turns most answers, then what moves the sizes most.
        </p>
      ) : null}
    </section>
  )
}
