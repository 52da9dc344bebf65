import type { Option, Reason, RuleTrace } from '../../../src/contract/advice.ts'
import { Condition } from '../../trail/condition.tsx'
import { Leaves, sharedSettling } from '../../trail/short-why.tsx'
import { EVIDENCE_WORDS } from '../../words/evidence.ts'
import { grouped } from '../../words/grouped.ts'
import { ruleLink } from '../links.ts'
import type { Citations } from './citations.ts'
import { Cited } from './cited.tsx'

const HEADINGS: readonly (readonly [string, readonly Reason['type'][]])[] = [
  ['Speaks for it', ['favours', 'places']],
  ['Speaks against it', ['excludes', 'weakens']],
  ['Conditions', ['requires', 'tests']],
  ['Cautions', ['warns']],
]

interface Shown {
  readonly citations: Citations
  /** The rules tried, by key. */
  readonly rules: ReadonlyMap<string, RuleTrace>
  readonly packed: string
  readonly print: boolean
}

/** The rules that fired for one machine: what decides first, each rule once with all it says. */
export function ReasonLists({ option, ...shown }: Shown & { option: Pick<Option, 'reasons'> }) {
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
                <RuleReason reasons={reasons} {...shown} />
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

function RuleReason({ reasons, citations, rules, packed, print }: Shown & { reasons: readonly Reason[] }) {
  const [first] = reasons
  if (!first) return null
  const traces = reasons.flatMap((reason) => rules.get(reason.trace) ?? [])
  const { shared, own } = sharedSettling(traces)
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
            <li>
              {sentenceOf(reason)}
              <Leaves leaves={own(rules.get(reason.trace))} packed={packed} />
            </li>
          ))}
        </ul>
      )}
      <Leaves leaves={shared} packed={packed} />
      {print && traces[0] && reasons.some((reason) => reason.decisive) ? (
        <div class="small">
          <Condition node={traces[0].conditions} packed={packed} decisive={traces[0].decisive} />
        </div>
      ) : null}
      <p class="small">
        {because}
        {exception === '' ? '' : ` Exception: ${exception}`} Rule{' '}
        <a href={ruleLink(rule, packed)}>
          <code>{rule}</code>
        </a>
        , {EVIDENCE_WORDS[evidence]}
        {book === '' ? '' : `, from the ${book} book`}.
        <Cited ids={sources} citations={citations} />
      </p>
    </li>
  )
}

const sentenceOf = ({ text, truth }: Reason) =>
  truth === 'unknown' ? `${text} Whether it holds is not known.` : text
