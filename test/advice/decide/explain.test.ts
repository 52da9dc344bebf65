import { describe, expect, it } from 'vitest'
import type { Condition, Operator } from '../../../src/advice/book/condition.ts'
import { explain, type Known, truthOf } from '../../../src/advice/decide/explain.ts'
import type { Truth } from '../../../src/contract/index.ts'

const known: Record<string, Known> = {
  yes: { value: true, unit: '', label: 'yes' },
  no: { value: false, unit: '', label: 'no' },
  open: { value: null, unit: '', label: 'open' },
  height: { value: 60, unit: 'mm', label: 'height', origin: 'entered' },
  share: { value: 12, unit: '%', label: 'share', origin: 'computed', calculation: 'c1' },
  limit: { value: 50, unit: 'mm', label: 'limit' },
  zero: { value: 0, unit: 'mm', label: 'zero' },
  word: { value: 'bag', unit: '', label: 'word' },
  absent: { value: null, unit: 'mm', label: 'absent', absent: true },
  numeral: { value: '60', unit: '', label: 'numeral' },
}
/** The tree of a condition; its truth alone, as a search asks for it, is that of the tree. */
const tree = (condition: Condition) => {
  const trace = explain(condition, (id) => known[id])
  expect(truthOf(condition, (id) => known[id])).toBe(trace.truth)
  return trace
}
const is = (truth: Truth): Condition => ({
  fact: { true: 'yes', false: 'no', unknown: 'open', 'not-applicable': 'absent' }[truth],
  operator: 'equal',
  value: true,
})
const compare = (fact: string, operator: Operator, value: Condition | unknown) =>
  tree({ fact, operator, value } as Condition).truth

describe('three-valued truth tables', () => {
  const T = 'true'
  const F = 'false'
  const U = 'unknown'
  const N = 'not-applicable'
  it.each([
    [T, T, T, T],
    [T, F, F, T],
    [T, U, U, T],
    [F, F, F, F],
    [F, U, F, U],
    [U, U, U, U],
    [T, N, N, T],
    [F, N, F, N],
    [U, N, N, N],
    [N, N, N, N],
  ] as const)('%s with %s: all is %s, any is %s', (a, b, all, any) => {
    for (const [x, y] of [
      [a, b],
      [b, a],
    ] as const) {
      expect(tree({ all: [is(x), is(y)] }).truth).toBe(all)
      expect(tree({ any: [is(x), is(y)] }).truth).toBe(any)
    }
  })
  it.each([
    [T, F],
    [F, T],
    [U, U],
    [N, N],
  ] as const)('not %s is %s', (a, not) => {
    expect(tree({ not: is(a) }).truth).toBe(not)
  })
})

describe('comparisons', () => {
  it.each([
    ['height', 'greaterThan', { fact: 'limit' }, 'true'],
    ['limit', 'greaterThan', { fact: 'limit' }, 'false'],
    ['limit', 'greaterThanInclusive', { fact: 'limit' }, 'true'],
    ['limit', 'lessThan', { fact: 'limit' }, 'false'],
    ['limit', 'lessThanInclusive', { fact: 'limit' }, 'true'],
    ['height', 'lessThan', { fact: 'limit' }, 'false'],
    ['limit', 'lessThan', { fact: 'height' }, 'true'],
    ['limit', 'lessThanInclusive', { fact: 'height' }, 'true'],
    ['height', 'lessThanInclusive', { fact: 'limit' }, 'false'],
    ['limit', 'greaterThanInclusive', { fact: 'height' }, 'false'],
    ['limit', 'lessThan', { fact: 'numeral' }, 'false'],
    ['word', 'equal', 'bag', 'true'],
    ['word', 'notEqual', 'bag', 'false'],
    ['word', 'in', ['bag', 'box'], 'true'],
    ['word', 'notIn', ['bag', 'box'], 'false'],
    ['word', 'in', ['box'], 'false'],
    ['numeral', 'greaterThan', { fact: 'limit' }, 'false'],
    ['missing', 'equal', true, 'unknown'],
    ['open', 'notEqual', true, 'unknown'],
    ['open', 'notIn', ['bag'], 'unknown'],
    ['height', 'greaterThan', { fact: 'missing' }, 'unknown'],
    ['absent', 'greaterThan', { fact: 'limit' }, 'not-applicable'],
    ['height', 'greaterThan', { fact: 'absent' }, 'not-applicable'],
  ] as const)('%s %s %j is %s', (fact, operator, value, truth) => {
    expect(compare(fact, operator, value)).toBe(truth)
  })
})

describe('a leaf of the trace', () => {
  it('shows value, unit, origin, threshold and margin', () => {
    expect(tree({ fact: 'height', operator: 'greaterThan', value: { fact: 'limit' } })).toEqual({
      kind: 'leaf',
      truth: 'true',
      fact: 'height',
      label: 'height',
      value: 60,
      unit: 'mm',
      origin: 'entered',
      operator: 'greaterThan',
      threshold: { id: 'limit', value: 50, unit: 'mm' },
      margin: { absolute: 10, relative: 0.2 },
    })
  })
  it('has the unit of its fact where it is held to a bare value, and none where the other fact is not there', () => {
    const held = (fact: string, value: unknown) =>
      tree({ fact, operator: 'equal', value } as Condition).threshold
    expect(held('height', 60)).toEqual({ id: null, value: 60, unit: 'mm' })
    expect(held('missing', 60)).toEqual({ id: null, value: 60, unit: '' })
    expect(held('height', { fact: 'missing' })).toEqual({ id: 'missing', value: null, unit: '' })
    expect(tree({ fact: 'word', operator: 'in', value: ['bag', 'box'] }).threshold).toEqual({
      id: null,
      value: ['bag', 'box'],
      unit: '',
    })
  })
  it('links a computed fact to its calculation', () => {
    expect(tree({ fact: 'share', operator: 'lessThan', value: { fact: 'limit' } })).toMatchObject({
      origin: 'computed',
      calculation: 'c1',
    })
  })
  it('has a negative margin below the threshold and no share of a zero threshold', () => {
    const below = tree({ fact: 'zero', operator: 'greaterThan', value: { fact: 'limit' } })
    const above = tree({ fact: 'limit', operator: 'greaterThan', value: { fact: 'zero' } })
    expect(below.margin).toEqual({ absolute: -50, relative: -1 })
    expect(above.margin).toEqual({ absolute: 50, relative: null })
  })
  it('has no margin for words and for what is not known', () => {
    expect(tree({ fact: 'word', operator: 'equal', value: 'bag' }).margin).toBeNull()
    expect(tree({ fact: 'open', operator: 'greaterThan', value: { fact: 'limit' } }).margin).toBeNull()
  })
  it('is there even where another leaf has settled the group', () => {
    const trace = tree({
      all: [is('false'), { fact: 'height', operator: 'greaterThan', value: { fact: 'limit' } }],
    })
    expect(trace.children?.map((child) => child.truth)).toEqual(['false', 'true'])
  })
})
