import type { RuleTrace } from '../../src/contract/advice.ts'
import { Leaf } from './condition.tsx'
import { nodeAt } from './leaf-words.ts'

/** The shortest set of comparisons that settles a rule by itself. */
export function ShortWhy({ rule, packed }: { rule: RuleTrace; packed: string }) {
  const leaves = rule.decisive.flatMap((path) => nodeAt(rule.conditions, path) ?? [])
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
