import type { Option, Reason } from '../../src/contract/advice.ts'
import { grouped } from '../words/grouped.ts'
import type { Citations } from './citations.ts'
import { Cited } from './cited.tsx'

const HEADINGS: readonly (readonly [string, readonly Reason['type'][]])[] = [
  ['Speaks for it', ['favours', 'places']],
  ['Speaks against it', ['excludes', 'weakens']],
  ['Only if', ['requires', 'tests']],
  ['Mind', ['warns']],
]

/** The rules that fired for one machine: what decides first, each rule once with all it says. */
export function ReasonLists({ option, citations }: { option: Option; citations: Citations }) {
  return (
    <>
      {HEADINGS.map(([heading, types]) => {
        const rules = byRule(
          option.reasons.filter((one) => types.includes(one.type) && one.truth !== 'false'),
        )
        if (rules.length === 0) return null
        return (
          <>
            <h4>{heading}</h4>
            <ul class="reasons">
              {rules.map((reasons) => (
                <RuleReason reasons={reasons} citations={citations} />
              ))}
            </ul>
          </>
        )
      })}
    </>
  )
}

function byRule(reasons: readonly Reason[]): Reason[][] {
  const rules = grouped(reasons, (reason) => reason.rule)
  const decides = (same: Reason[]) => same.some((reason) => reason.decisive)
  return [...rules.values()].sort((a, b) => Number(decides(b)) - Number(decides(a)))
}

function RuleReason({ reasons, citations }: { reasons: readonly Reason[]; citations: Citations }) {
  const [first] = reasons
  if (!first) return null
  const { title, because, exception, rule, evidence, book, sources } = first
  return (
    <li>
      <strong>{title || rule}.</strong>
      {reasons.some((reason) => reason.decisive) ? (
        <span class="decides"> This decides the verdict.</span>
      ) : null}
      {reasons.length === 1 ? (
        <> {sentenceOf(first)}</>
      ) : (
        <ul>
          {reasons.map((reason) => (
            <li>{sentenceOf(reason)}</li>
          ))}
        </ul>
      )}
      <p class="small">
        {because}
        {exception === '' ? '' : ` But: ${exception}`} Rule <code>{rule}</code>, {evidence}
        {book === '' ? '' : `, from the ${book} book`}.
        <Cited ids={sources} citations={citations} />
      </p>
    </li>
  )
}

const sentenceOf = ({ text, truth }: Reason) =>
  truth === 'unknown' ? `${text} Whether it holds is not known.` : text
