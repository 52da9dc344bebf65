import type { RuleTrace } from '../../src/contract/advice.ts'
import { ruleAnchor, ruleLink } from '../advice/links.ts'
import { Page } from '../page.tsx'
import { grouped } from '../words/grouped.ts'
import { Condition } from './condition.tsx'

interface Props {
  readonly rules: readonly RuleTrace[]
  readonly packed: string
  /** The contaminants of the brief in words, by their place in it. */
  readonly pieces: readonly string[]
}

const OUTCOMES = [
  ['fired', 'Applies'],
  ['unknown', 'Not known, because a value is missing'],
  ['not-fired', 'Does not apply'],
  ['not-applicable', 'Does not concern it'],
] as const

/** Every rule tried on one machine at one point, as a part of the advice page. */
export function RulesPart({ rules, packed, pieces }: Props) {
  if (rules.length === 0) return <p>No rule was tried on this machine.</p>
  return (
    <>
      {OUTCOMES.map(([outcome, words]) => {
        const byId = grouped(
          rules.filter((rule) => rule.outcome === outcome),
          (rule) => rule.id,
        )
        if (byId.size === 0) return null
        return (
          <>
            <h4>
              {words} ({byId.size})
            </h4>
            <ul class="rules">
              {[...byId].map(([id, same]) => (
                <li>
                  <details {...(outcome === 'fired' ? { open: true } : {})}>
                    <summary>
                      {same[0]?.title ?? id} <code>{id}</code>
                    </summary>
                    <p class="small">
                      <a class="target" href={ruleLink(id, packed)}>
                        In the rule book<span class="unseen">: {same[0]?.title ?? id}</span>
                      </a>
                    </p>
                    <ul>
                      {same.map((rule) => (
                        <li id={ruleAnchor(rule.key)}>
                          {rule.contaminant === null ? '' : `${pieces[rule.contaminant] ?? ''}: `}
                          <Condition node={rule.conditions} packed={packed} decisive={rule.decisive} />
                        </li>
                      ))}
                    </ul>
                  </details>
                </li>
              ))}
            </ul>
          </>
        )
      })}
    </>
  )
}

/** The same as a page of its own. */
export function RulesPage(props: Props & { label: string; point: string }) {
  const { packed, label, point } = props
  return (
    <Page title={`Rules tried: ${label}`} packed={packed} here="other">
      <p class="over-title">
        <a href={`/advice?b=${packed}#reasons`}>Advice</a>
      </p>
      <h1>{`Rules tried: ${label}, ${point}`}</h1>
      <RulesPart {...props} />
    </Page>
  )
}
