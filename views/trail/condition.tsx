import type { ConditionTrace } from '../../src/contract/advice.ts'
import { trailLink } from '../advice/links.ts'
import { TRUTH_WORDS } from '../words/verdict.ts'
import {
  childPath,
  comparisonWords,
  GROUP_WORDS,
  hereWords,
  settlesWords,
  standingWords,
} from './leaf-words.ts'

interface Props {
  readonly node: ConditionTrace
  readonly packed: string
  /** Paths of the leaves that settle the whole; they are marked. */
  readonly decisive?: readonly string[]
  readonly path?: string
}

/** An evaluated condition: every node with its truth, every leaf with value, threshold and margin. */
export function Condition({ node, packed, decisive = [], path = '' }: Props) {
  if (node.kind === 'leaf') return <Leaf node={node} packed={packed} settles={decisive.includes(path)} />
  return (
    <>
      <span class={`truth ${node.truth}`}>{TRUTH_WORDS[node.truth]}:</span> {GROUP_WORDS[node.kind]}
      <ul>
        {(node.children ?? []).map((child, at) => (
          <li>
            <Condition node={child} packed={packed} decisive={decisive} path={childPath(path, at)} />
          </li>
        ))}
      </ul>
    </>
  )
}

/** One comparison with its truth, its value, where that is from, and its margin. */
export function Leaf({
  node,
  packed,
  settles = false,
}: {
  node: ConditionTrace
  packed: string
  settles?: boolean
}) {
  const here = hereWords(node)
  const standing = standingWords(node)
  const known = node.value !== undefined && node.value !== null
  return (
    <>
      <span class={`truth ${node.truth}`}>{TRUTH_WORDS[node.truth]}:</span> {comparisonWords(node)}; here{' '}
      {known ? <strong>{here}</strong> : here}
      {standing ? <span class="small">{` (${standing})`}</span> : null}
      {node.calculation ? (
        <>
          {' '}
          <a href={trailLink({ packed }, node.calculation)}>
            trail<span class="unseen"> of {node.label ?? node.fact}</span>
          </a>
        </>
      ) : null}
      {settles ? <span class="settles"> {settlesWords(node)}</span> : null}
    </>
  )
}
