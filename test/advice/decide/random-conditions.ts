import fc from 'fast-check'
import type { Condition } from '../../../src/advice/book/condition.ts'
import type { Known } from '../../../src/advice/decide/explain.ts'

/** Facts of a random run: two of each type, and for the three-valued case some that are not known. */
const NUMBERS = ['n1', 'n2', 'n3'] as const
const FLAGS = ['b1', 'b2'] as const
const WORDS = ['w1', 'w2'] as const
const word = fc.constantFrom('bag', 'jar', 'can')
const number = fc.integer({ min: -3, max: 3 })

const numericLeaf: fc.Arbitrary<Condition> = fc.record({
  fact: fc.constantFrom(...NUMBERS),
  operator: fc.constantFrom(
    'lessThan',
    'lessThanInclusive',
    'greaterThan',
    'greaterThanInclusive',
    'equal',
    'notEqual',
  ),
  value: fc.oneof(
    number,
    fc.constantFrom(...NUMBERS).map((fact) => ({ fact })),
  ),
})
const flagLeaf: fc.Arbitrary<Condition> = fc.record({
  fact: fc.constantFrom(...FLAGS),
  operator: fc.constantFrom('equal', 'notEqual'),
  value: fc.oneof(
    fc.boolean(),
    fc.constantFrom(...FLAGS).map((fact) => ({ fact })),
  ),
})
const wordLeaf: fc.Arbitrary<Condition> = fc.oneof(
  fc.record({
    fact: fc.constantFrom(...WORDS),
    operator: fc.constantFrom('equal', 'notEqual'),
    value: word,
  }),
  fc.record({
    fact: fc.constantFrom(...WORDS),
    operator: fc.constantFrom('in', 'notIn'),
    value: fc.array(word, { minLength: 1, maxLength: 3 }),
  }),
)

const { condition } = fc.letrec<{ condition: Condition; group: Condition }>((tie) => ({
  condition: fc.oneof({ maxDepth: 3 }, numericLeaf, flagLeaf, wordLeaf, tie('group')),
  group: fc.oneof(
    fc.record({ all: fc.array(tie('condition'), { minLength: 1, maxLength: 3 }) }),
    fc.record({ any: fc.array(tie('condition'), { minLength: 1, maxLength: 3 }) }),
    fc.record({ not: tie('condition') }),
  ),
}))

/** A random condition whose root is a group, as rules have it. */
export const randomCondition: fc.Arbitrary<Condition> = fc.oneof(
  fc.record({ all: fc.array(condition, { minLength: 1, maxLength: 4 }) }),
  fc.record({ any: fc.array(condition, { minLength: 1, maxLength: 4 }) }),
  fc.record({ not: condition }),
)

const valuesOf = (maybe: <T>(value: fc.Arbitrary<T>) => fc.Arbitrary<T | null>) =>
  fc.record({
    n1: maybe(number),
    n2: maybe(number),
    n3: maybe(number),
    b1: maybe(fc.boolean()),
    b2: maybe(fc.boolean()),
    w1: maybe(word),
    w2: maybe(word),
  })

export type RandomFacts = Record<string, string | number | boolean | null>
/** Random facts, all of them known. */
export const knownFacts: fc.Arbitrary<RandomFacts> = valuesOf((value) => value)
/** Random facts, some of them not known. */
export const someFacts: fc.Arbitrary<RandomFacts> = valuesOf((value) => fc.option(value, { freq: 3 }))

export const lookUpIn =
  (facts: RandomFacts) =>
  (id: string): Known | undefined =>
    id in facts ? { value: facts[id] ?? null, unit: '', label: id } : undefined
