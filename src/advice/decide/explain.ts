import type { ConditionTrace, Fact, Truth } from '../../contract/index.ts'
import {
  type Condition,
  factOperand,
  isNumeric,
  type Leaf,
  type Operand,
  type Operator,
} from '../book/condition.ts'

/**
 * What the explainer needs to know of a fact or threshold. A value of null is one that is not known; `absent`
 * says that there is no such thing where the rule is asked.
 */
export type Known = Pick<Fact, 'value' | 'unit' | 'label' | 'calculation'> &
  Partial<Pick<Fact, 'origin'>> & { readonly absent?: true }
export type FactLookup = (id: string) => Known | undefined

/**
 * Walks a condition over the facts and says for every node whether it is true, false or unknown (Kleene's
 * strong three-valued logic: unknown where a missing value could still turn the node), with "not applicable"
 * in place of "unknown" where the value does not exist there. No short cuts: every
 * leaf is in the trace with its value, threshold and margin. Synchronous and without side effects.
 */
export function explain(condition: Condition, facts: FactLookup): ConditionTrace {
  if ('all' in condition) return group('all', condition.all, facts)
  if ('any' in condition) return group('any', condition.any, facts)
  if ('not' in condition) {
    const child = explain(condition.not, facts)
    return { kind: 'not', truth: inverse(child.truth), children: [child] }
  }
  return leaf(condition, facts)
}

/** Truth of a group: one false settles an "all", one true settles an "any", else what is missing wins. */
export function groupTruth(kind: 'all' | 'any', truths: readonly Truth[]): Truth {
  const settles = kind === 'all' ? 'false' : 'true'
  if (truths.includes(settles)) return settles
  if (truths.includes('not-applicable')) return 'not-applicable'
  return truths.includes('unknown') ? 'unknown' : inverse(settles)
}

export const inverse = (truth: Truth): Truth =>
  truth === 'true' ? 'false' : truth === 'false' ? 'true' : truth

function group(kind: 'all' | 'any', conditions: readonly Condition[], facts: FactLookup): ConditionTrace {
  const children = conditions.map((child) => explain(child, facts))
  return {
    kind,
    truth: groupTruth(
      kind,
      children.map((child) => child.truth),
    ),
    children,
  }
}

type Literal = Exclude<Operand, { readonly fact: string }> | null

/** What a comparison stands on: both sides and what comes of them. */
function compared(condition: Leaf, facts: FactLookup) {
  const fact = facts(condition.fact)
  const other = factOperand(condition.value)
  const right = other === null ? undefined : facts(other)
  const expected: Literal = other === null ? (condition.value as Literal) : (right?.value ?? null)
  const value = fact?.value ?? null
  const truth: Truth =
    fact?.absent || right?.absent
      ? 'not-applicable'
      : value === null || expected === null
        ? 'unknown'
        : compare(condition.operator, value, expected)
  return { fact, other, right, expected, value, truth }
}

/** The truth of a condition alone, as explain would say it. */
export function truthOf(condition: Condition, facts: FactLookup): Truth {
  if ('all' in condition) return truthOfGroup('all', condition.all, facts)
  if ('any' in condition) return truthOfGroup('any', condition.any, facts)
  if ('not' in condition) return inverse(truthOf(condition.not, facts))
  return compared(condition, facts).truth
}

/** One that settles the group makes the others superfluous. */
function truthOfGroup(kind: 'all' | 'any', conditions: readonly Condition[], facts: FactLookup): Truth {
  const settles = kind === 'all' ? 'false' : 'true'
  const truths: Truth[] = []
  for (const condition of conditions) {
    const truth = truthOf(condition, facts)
    if (truth === settles) return settles
    truths.push(truth)
  }
  return groupTruth(kind, truths)
}

function leaf(condition: Leaf, facts: FactLookup): ConditionTrace {
  const { fact, other, right, expected, value, truth } = compared(condition, facts)
  return {
    kind: 'leaf',
    truth,
    fact: condition.fact,
    value,
    operator: condition.operator,
    threshold: {
      id: other,
      value: Array.isArray(expected) ? [...expected] : (expected as Exclude<Literal, readonly unknown[]>),
      unit: right?.unit ?? (other === null ? (fact?.unit ?? '') : ''),
    },
    margin: margin(value, expected),
    ...(fact ? { label: fact.label, unit: fact.unit } : {}),
    ...(fact?.origin ? { origin: fact.origin } : {}),
    ...(fact?.calculation ? { calculation: fact.calculation } : {}),
  }
}

/** Same answers as the rules engine gives for typed values; a number is never compared with a word. */
function compare(
  operator: Operator,
  value: string | number | boolean,
  expected: NonNullable<Literal>,
): Truth {
  const said = (holds: boolean): Truth => (holds ? 'true' : 'false')
  if (isNumeric(operator)) {
    if (typeof value !== 'number' || typeof expected !== 'number') return 'false'
    if (operator === 'lessThan') return said(value < expected)
    if (operator === 'lessThanInclusive') return said(value <= expected)
    return said(operator === 'greaterThan' ? value > expected : value >= expected)
  }
  if (operator === 'equal') return said(value === expected)
  if (operator === 'notEqual') return said(value !== expected)
  const listed = Array.isArray(expected) && (expected as readonly unknown[]).includes(value)
  return said(operator === 'in' ? listed : Array.isArray(expected) && !listed)
}

/** Distance of a number from its threshold, signed (above is positive), and as a share of the threshold. */
function margin(value: unknown, expected: unknown): { absolute: number; relative: number | null } | null {
  if (typeof value !== 'number' || typeof expected !== 'number') return null
  const absolute = value - expected
  return { absolute, relative: expected === 0 ? null : absolute / Math.abs(expected) }
}
