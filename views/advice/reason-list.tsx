import type { Option, Reason, RuleTrace } from '../../src/contract/advice.ts'
import { Condition } from '../trail/condition.tsx'
import { ShortWhy } from '../trail/short-why.tsx'
import { grouped } from '../words/grouped.ts'
import type { Citations } from './citations.ts'
import { Cited } from './cited.tsx'
import { ruleLink } from './links.ts'

const HEADINGS: readonly (readonly [string, readonly Reason['type'][]])[] = [
  ['Speaks for it', ['favours', 'places']],
  ['Speaks against it', ['excludes', 'weakens']],
  ['Only if', ['requires', 'tests']],
  ['Mind', ['warns']],
]

interface Shown {
  readonly citations: Citations
  /** The rules tried, by key. */
  readonly rules: ReadonlyMap<string, RuleTrace>
  readonly packed: string
  readonly print: boolean
}

/** The rules that fired for one machine: what decides first, each rule once with all it says. */
export function ReasonLists({ option, ...shown }: Shown & { option: Option }) {
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
  const { title, because, exception, rule, evidence, book, sources } = first
  return (
    <li>
      <strong>{title || rule}.</strong>
      {reasons.some((reason) => reason.decisive) ? (
        <span class="decides"> This decides the verdict.</span>
      ) : null}
      {reasons.length === 1 ? (
        <>
          {' '}
          {sentenceOf(first)}
          <Because reason={first} {...{ rules, packed, print }} />
        </>
      ) : (
        <ul>
          {reasons.map((reason) => (
            <li>
              {sentenceOf(reason)}
              <Because reason={reason} {...{ rules, packed, print }} />
            </li>
          ))}
        </ul>
      )}
      <p class="small">
        {because}
        {exception === '' ? '' : ` But: ${exception}`} Rule{' '}
        <a href={ruleLink(rule, packed)}>
          <code>{rule}</code>
        </a>
        , {evidence}
        {book === '' ? '' : `, from the ${book} book`}.
        <Cited ids={sources} citations={citations} />
      </p>
    </li>
  )
}

/** Why the rule fired: the shortest sufficient set; on paper, where it decides, the whole tree too. */
function Because({ reason, rules, packed, print }: Omit<Shown, 'citations'> & { reason: Reason }) {
  const rule = rules.get(reason.trace)
  if (!rule) return null
  return (
    <>
      <ShortWhy rule={rule} packed={packed} />
      {print && reason.decisive ? (
        <div class="small">
          <Condition node={rule.conditions} packed={packed} decisive={rule.decisive} />
        </div>
      ) : null}
    </>
  )
}

const sentenceOf = ({ text, truth }: Reason) =>
  truth === 'unknown' ? `${text} Whether it holds is not known.` : text
