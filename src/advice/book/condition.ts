import { quoted } from '../../contract/quoted.ts'

/** The grammar of conditions: that of json-rules-engine without paths, priorities, references and decorators. */
export const NUMERIC_OPERATORS = [
  'lessThan',
  'lessThanInclusive',
  'greaterThan',
  'greaterThanInclusive',
] as const
export const OPERATORS = ['equal', 'notEqual', 'in', 'notIn', ...NUMERIC_OPERATORS] as const
export type Operator = (typeof OPERATORS)[number]

/** Right-hand side: another fact or threshold, a yes/no, a word, or a list of words. */
export type Operand = { readonly fact: string } | string | number | boolean | readonly (string | number)[]

export interface Leaf {
  readonly fact: string
  readonly operator: Operator
  readonly value: Operand
}
export type Condition =
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition }
  | Leaf

/** Name of a fact on the right-hand side, or null for a literal. */
export const factOperand = (value: Operand): string | null =>
  typeof value === 'object' && 'fact' in value ? value.fact : null

export const isNumeric = (operator: Operator): boolean =>
  (NUMERIC_OPERATORS as readonly string[]).includes(operator)

/** Every leaf of a condition, in reading order. */
export function leavesOf(condition: Condition): readonly Leaf[] {
  if ('all' in condition) return condition.all.flatMap(leavesOf)
  if ('any' in condition) return condition.any.flatMap(leavesOf)
  if ('not' in condition) return leavesOf(condition.not)
  return [condition]
}

/** One spelling for conditions that mean the same whatever the order of their groups. */
export function canonical(condition: Condition): string {
  const group = (word: string, list: readonly Condition[]) =>
    `${word}(${list.map(canonical).sort().join(',')})`
  if ('all' in condition) return group('all', condition.all)
  if ('any' in condition) return group('any', condition.any)
  if ('not' in condition) return `not(${canonical(condition.not)})`
  return JSON.stringify([condition.fact, condition.operator, condition.value])
}

interface Found {
  readonly path: readonly (string | number)[]
  readonly message: string
}

/** What is wrong with the shape of a condition; an empty list makes it a Condition. */
export function conditionProblems(value: unknown, path: readonly (string | number)[] = []): Found[] {
  const say = (message: string, ...more: (string | number)[]): Found[] => [
    { path: [...path, ...more], message },
  ]
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return say('a condition is an object: {"all": […]}, {"any": […]}, {"not": …} or a comparison')
  }
  const keys = Object.keys(value)
  const group = keys.find((key) => key === 'all' || key === 'any' || key === 'not')
  if (group === undefined) return leafProblems(value as Record<string, unknown>, path)
  if (keys.length > 1) return say(`"${group}" stands alone; found also ${others(keys, group)}`)
  const inside = (value as Record<string, unknown>)[group]
  if (group === 'not') return conditionProblems(inside, [...path, 'not'])
  if (!Array.isArray(inside)) return say(`"${group}" takes a list of conditions`, group)
  if (inside.length === 0) return say(`"${group}" is an empty group; it needs at least one condition`, group)
  return inside.flatMap((child, i) => conditionProblems(child, [...path, group, i]))
}

function leafProblems(leaf: Record<string, unknown>, path: readonly (string | number)[]): Found[] {
  const problems: Found[] = []
  const say = (key: string, message: string) => problems.push({ path: [...path, key], message })
  const extra = Object.keys(leaf).filter((key) => !['fact', 'operator', 'value'].includes(key))
  for (const key of extra)
    say(key, `a comparison has fact, operator and value, nothing else; ${quoted(key)} was given`)
  if (typeof leaf.fact !== 'string') say('fact', 'name the fact to compare')
  if (!(OPERATORS as readonly unknown[]).includes(leaf.operator))
    say('operator', `unknown operator ${quoted(leaf.operator)}; known: ${OPERATORS.join(', ')}`)
  if (!isOperand(leaf.value))
    say('value', 'a value is {"fact": "…"}, true, false, a word, or a list of words that is not empty')
  return problems
}

function isOperand(value: unknown): value is Operand {
  if (['string', 'number', 'boolean'].includes(typeof value)) return true
  if (Array.isArray(value)) return value.length > 0 && value.every((word) => typeof word === 'string')
  if (typeof value !== 'object' || value === null) return false
  return Object.keys(value).join() === 'fact' && typeof (value as { fact: unknown }).fact === 'string'
}

const others = (keys: readonly string[], but: string) =>
  keys
    .filter((key) => key !== but)
    .map((key) => `"${key}"`)
    .join(', ')
