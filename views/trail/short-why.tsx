import type { ConditionTrace, RuleTrace } from '../../src/contract/advice.ts'
import { Leaf } from './condition.tsx'
import { nodeAt } from './leaf-words.ts'

/** The shortest set of comparisons that settles a rule by itself. */
export const settling = (rule: RuleTrace): ConditionTrace[] =>
  rule.decisive.flatMap((path) => nodeAt(rule.conditions, path) ?? [])

/** The same for two comparisons that read alike. */
const keyOf = ({ fact, operator, threshold, value, truth }: ConditionTrace) =>
  `${fact} ${operator} ${threshold?.id} ${threshold?.value} ${value} ${truth}`

/** What settles several outcomes of one rule alike, and what is each one's own. */
export function sharedSettling(rules: readonly RuleTrace[]): {
  readonly shared: readonly ConditionTrace[]
  readonly own: (rule: RuleTrace | undefined) => readonly ConditionTrace[]
} {
  const [first, ...others] = rules
  if (first && others.length === 0) return { shared: settling(first), own: () => [] }
  const sets = others.map((rule) => new Set(settling(rule).map(keyOf)))
  const common = new Set(first ? settling(first).map(keyOf) : [])
  for (const key of common) if (!sets.every((set) => set.has(key))) common.delete(key)
  const isCommon = (leaf: ConditionTrace) => common.has(keyOf(leaf))
  return {
    shared: first ? settling(first).filter(isCommon) : [],
    own: (rule) => (rule ? settling(rule).filter((leaf) => !isCommon(leaf)) : []),
  }
}

/** Comparisons with their values, one a line. */
export function Leaves({ leaves, packed }: { leaves: readonly ConditionTrace[]; packed: string }) {
  if (leaves.length === 0) return null
  return (
    <ul class="short-why">
      {leaves.map((leaf) => (
        <li>
          <Leaf node={leaf} packed={packed} />
        </li>
      ))}
    </ul>
  )
}
