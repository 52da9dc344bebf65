import type { ConditionTrace } from '../../src/contract/advice.ts'
import { valueWords } from '../words/size.ts'

export const GROUP_WORDS = { all: 'all of', any: 'at least one of', not: 'not' } as const

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

const withUnit = (value: Parameters<typeof valueWords>[0], unit: string) =>
  `${valueWords(value)} ${unit}`.trim()

/** A leaf as a question: "grain size is above 5 mm". */
export function comparisonWords(node: ConditionTrace): string {
  const { threshold } = node
  const wanted = threshold
    ? Array.isArray(threshold.value)
      ? threshold.value.join(', ')
      : threshold.value
    : null
  const what = node.label ?? node.fact ?? ''
  const operator = OPERATOR_WORDS[node.operator ?? ''] ?? node.operator ?? ''
  return [what, operator, threshold ? withUnit(wanted, threshold.unit) : ''].filter((w) => w !== '').join(' ')
}

/** The value a leaf met: "13 mm"; what it is where there is none. */
export function hereWords(node: ConditionTrace): string {
  if (node.truth === 'not-applicable') return 'there is no such value here'
  return node.value === undefined || node.value === null ? 'not known' : withUnit(node.value, node.unit ?? '')
}

/** Where the value is from and how far it lies from the threshold: "assumed, margin 8 mm (160 %)". */
export function standingWords(node: ConditionTrace): string {
  const { margin } = node
  const share = margin?.relative != null ? ` (${Math.round(margin.relative * 100)} %)` : ''
  const parts = [
    node.origin ?? '',
    !margin
      ? ''
      : margin.absolute === 0
        ? 'just at it'
        : `margin ${withUnit(margin.absolute, node.unit ?? '')}${share}`,
  ]
  return parts.filter((part) => part !== '').join(', ')
}

/** The node at a path of child numbers; the root for "". */
export function nodeAt(root: ConditionTrace, path: string): ConditionTrace | undefined {
  if (path === '') return root
  return path
    .split('.')
    .reduce<ConditionTrace | undefined>((node, step) => node?.children?.[Number(step)], root)
}

export const childPath = (path: string, child: number): string =>
  path === '' ? `${child}` : `${path}.${child}`

/** What a decisive leaf does: settles the whole, or keeps it open because its value is missing. */
export const settlesWords = (node: ConditionTrace): string =>
  node.truth === 'true' || node.truth === 'false' ? 'settles it' : 'is what is missing'
