import type { PlanItem } from '../../src/contract/checks.ts'
import { ByRule, type Ink } from '../register/ink.tsx'

/** Steps in their order, or points without one; each begins with what it is about. */
export function Items({ items, ink, ordered }: { items: readonly PlanItem[]; ink: Ink; ordered?: boolean }) {
  const rows = items.map(({ about, text, rule }, at) => (
    <li>
      {about === '' ? null : <strong>{about}: </strong>}
      {text}
      {at === 0 || items[at - 1]!.rule !== rule ? <ByRule ink={ink} rule={rule} /> : null}
    </li>
  ))
  return ordered ? <ol>{rows}</ol> : <ul>{rows}</ul>
}
