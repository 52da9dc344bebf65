import type { Traced } from '../../../src/contract/answer.ts'
import { ruleLink } from '../links.ts'

/** A link to each rule that says something, once; nothing on paper, where nobody follows a link. */
export function WhyLinks({
  grounds,
  packed,
}: {
  grounds: readonly Traced[]
  /** null on paper. */
  packed: string | null
}) {
  if (packed === null) return null
  const rules = [...new Map(grounds.map((one) => [one.rule, one.text]))]
  return (
    <>
      {rules.map(([rule, text]) => (
        <>
          {' '}
          <a class="why-link" href={ruleLink(rule, packed)}>
            why<span class="unseen">: {text}</span>
          </a>
        </>
      ))}
    </>
  )
}

/** What a rule says as the link to it, where every word of the page counts; plain on paper and where no rule says it. */
export function ByRule({
  text,
  grounds,
  packed,
}: {
  text: string
  grounds: readonly Traced[]
  packed: string | null
}) {
  const [first] = grounds
  if (packed === null || !first) return <>{text}</>
  return <a href={ruleLink(first.rule, packed)}>{text}</a>
}
