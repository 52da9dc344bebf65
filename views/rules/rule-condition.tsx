import type { ConditionTrace } from '../../src/contract/advice.ts'
import { comparisonWords, GROUP_WORDS } from '../trail/leaf-words.ts'

/** A condition as the book states it, before anything is asked. */
export function RuleCondition({ node }: { node: ConditionTrace }) {
  if (node.kind === 'leaf') return <>{comparisonWords(node)}</>
  return (
    <>
      {GROUP_WORDS[node.kind]}
      <ul>
        {(node.children ?? []).map((child) => (
          <li>
            <RuleCondition node={child} />
          </li>
        ))}
      </ul>
    </>
  )
}
