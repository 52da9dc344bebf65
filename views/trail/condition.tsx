import type { ConditionTrace } from '../../src/contract/advice.ts'
import { trailLink } from '../advice/links.ts'
import { valueWords } from '../words/size.ts'
import { TRUTH_WORDS } from '../words/verdict.ts'

const GROUP_WORDS = { all: 'all of', any: 'at least one of', not: 'not' } as const

const OPERATOR_WORDS: Readonly<Record<string, string>> = {
  equal: 'is',
  notEqual: 'is not',
  in: 'is one of',
  notIn: 'is none of',
  lessThan: 'is below',
  lessThanInclusive: 'is at most',
  greaterThan: 'is above',
  greaterThanInclusive: 'is at least',
}

/** An evaluated condition: every node with its truth, every leaf with value, threshold and margin. */
export function Condition({ node, packed }: { node: ConditionTrace; packed: string }) {
  if (node.kind === 'leaf') return <Leaf node={node} packed={packed} />
  return (
    <>
      <span class={`truth ${node.truth}`}>{TRUTH_WORDS[node.truth]}:</span> {GROUP_WORDS[node.kind]}
      <ul>
        {(node.children ?? []).map((child) => (
          <li>
            <Condition node={child} packed={packed} />
          </li>
        ))}
      </ul>
    </>
  )
}

function Leaf({ node, packed }: { node: ConditionTrace; packed: string }) {
  const { threshold, margin } = node
  const wanted = threshold
    ? Array.isArray(threshold.value)
      ? threshold.value.join(', ')
      : threshold.value
    : null
  return (
    <>
      <span class={`truth ${node.truth}`}>{TRUTH_WORDS[node.truth]}:</span> {node.label ?? node.fact}{' '}
      {OPERATOR_WORDS[node.operator ?? ''] ?? node.operator}{' '}
      {threshold ? `${valueWords(wanted)} ${threshold.unit}`.trim() : ''}; here{' '}
      {node.value === undefined || node.value === null ? (
        'not known'
      ) : (
        <strong>{`${valueWords(node.value)} ${node.unit ?? ''}`.trim()}</strong>
      )}
      <span class="small">
        {node.origin ? ` (${node.origin})` : ''}
        {margin ? `, margin ${`${valueWords(margin.absolute)} ${node.unit ?? ''}`.trim()}` : ''}
        {margin?.relative != null ? ` (${Math.round(margin.relative * 100)} %)` : ''}
      </span>
      {node.calculation ? (
        <>
          {' '}
          <a href={trailLink({ packed }, node.calculation)}>trail</a>
        </>
      ) : null}
    </>
  )
}
