import type { Missing } from '../../../src/contract/reasoning.ts'
import { valueWords } from '../../words/size.ts'

interface Props {
  readonly missing: readonly Missing[]
  /** What a field is called, with its place. */
  readonly wordsOf: (path: string) => string
  /** Address of a field, e.g. its place in the form; null where it has none. */
  readonly hrefOf: (path: string) => string | null
}

/** What to enter next: values not given, by how much they could change the answer. */
export function MissingInputs({ missing, wordsOf, hrefOf }: Props) {
  if (missing.length === 0)
    return <p>Nothing that is not given could change this answer much within its stated range.</p>
  return (
    <ol class="missing">
      {missing.map(({ path, score, effect }) => {
        const href = hrefOf(path)
        const words = wordsOf(path)
        return (
          <li>
            <strong>{href ? <a href={href}>{words}</a> : words}</strong>{' '}
            <span class="small">(score {valueWords(score)})</span>: {effect}
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
      <h2 id="missing">What to find out next</h2>
      <MissingInputs {...props} />
      {props.missing.length > 0 ? (
        <p class="small">
          Each assumed value was moved over its stated range on the leading machines and the closest sizes.
          The score is the number of answers it turns, plus the mean move of the sizes (natural logarithm),
          plus a small share for each rule that starts or stops to speak.
        </p>
      ) : null}
    </section>
  )
}
