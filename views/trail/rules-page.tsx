import type { RuleTrace } from '../../src/contract/advice.ts'
import type { Links } from '../advice/links.ts'
import { Page } from '../page.tsx'
import { Condition } from './condition.tsx'

interface Props {
  readonly rules: readonly RuleTrace[]
  readonly links: Links
}

const OUTCOMES = [
  ['fired', 'Fired'],
  ['unknown', 'Not known, because a value is missing'],
  ['not-fired', 'Did not fire'],
  ['not-applicable', 'Not applicable here'],
] as const

/** Every rule tried on one machine at one point, as a part of the advice page. */
export function RulesPart({ rules, links }: Props) {
  if (rules.length === 0) return <p>No rule was tried on this machine.</p>
  return (
    <>
      {OUTCOMES.map(([outcome, words]) => {
        const some = rules.filter((rule) => rule.outcome === outcome)
        if (some.length === 0) return null
        return (
          <>
            <h4>
              {words} ({some.length})
            </h4>
            <ul class="rules">
              {some.map((rule) => (
                <li>
                  <details {...(outcome === 'fired' ? { open: true } : {})}>
                    <summary>{rule.id}</summary>
                    <p>
                      <Condition node={rule.conditions} links={links} />
                    </p>
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
export function RulesPage({ rules, links, label, point }: Props & { label: string; point: string }) {
  return (
    <Page title={`Rules tried: ${label}`} packed={links.packed} here="other">
      <p class="over-title">
        <a href={`/advice?b=${links.packed}#reasons`}>Advice</a>
      </p>
      <h1>{`Rules tried: ${label}, ${point}`}</h1>
      <RulesPart rules={rules} links={links} />
    </Page>
  )
}
