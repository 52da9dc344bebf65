import type { Advice } from '../../../src/contract/advice.ts'
import { shortName } from '../../words/machine.ts'
import { askedWords } from '../../words/path.ts'
import { type Links, ratherLink, ruleLink } from '../links.ts'

interface Props {
  readonly advice: Advice
  readonly links: Links
}

const MOST_LINES = 3

/** What stands beside the answer: what to do before ordering, a close call, what would sharpen it, paper. */
export function Margin({ advice, links }: Props) {
  const { packed } = links
  return (
    <aside class="margin" aria-label="Before you order">
      <BeforeOrdering advice={advice} links={links} />
      <CloseCall advice={advice} links={links} />
      <Sharpens advice={advice} links={links} />
      <h2>Print</h2>
      <p>
        <a href={`/advice?b=${packed}&print=page`}>one page</a> ·{' '}
        <a href={`/advice?b=${packed}&print=short`}>in short</a> ·{' '}
        <a href={`/advice?b=${packed}&print=1`}>everything</a>
      </p>
    </aside>
  )
}

function BeforeOrdering({ advice, links }: Props) {
  const { ask, test } = advice.answer
  return (
    <>
      <h2>Before you order</h2>
      <ul>
        {[...ask.slice(0, 1), ...test.slice(0, 1)].map(({ text, rule }) => (
          <li>
            {text}{' '}
            <a href={ruleLink(rule, links.packed)}>
              why<span class="unseen">: {text}</span>
            </a>
          </li>
        ))}
        <li>
          <a href={`/compare?b=${links.packed}`}>All questions and tests, acceptance clause</a>
        </li>
      </ul>
    </>
  )
}

function CloseCall({ advice, links }: Props) {
  const at = advice.points.findIndex(({ closeCall }) => closeCall !== null)
  const close = advice.points[at]?.closeCall
  if (!close) return null
  const nameOf = (equipment: string) =>
    shortName(
      advice.points[at]!.options.find((one) => one.equipment === equipment) ?? {
        equipment,
        label: equipment,
      },
    )
  return (
    <>
      <h2>A close call</h2>
      <p>
        {nameOf(close.first)} or {nameOf(close.second)}: a test decides.{' '}
        <a href={ratherLink(links, at, close.first, close.second)}>What differs</a>
      </p>
    </>
  )
}

/** Only what could turn an answer or move a size by much. */
function Sharpens({ advice, links }: Props) {
  const missing = advice.missing.slice(0, MOST_LINES)
  if (missing.length === 0) return null
  return (
    <>
      <h2>Would sharpen the answer</h2>
      <ul>
        {missing.map(({ path }) => (
          <li>
            <a href={`/brief?b=${links.packed}#${path}`}>{askedWords(path, advice)}</a>
          </li>
        ))}
        <li>
          <a href={`/advice/part?b=${links.packed}&part=missing`}>How much each matters</a>
        </li>
      </ul>
    </>
  )
}
