import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Condition } from '../../../src/advice/book/condition.ts'
import { allLeaves, decisiveLeaves, truthKnowing } from '../../../src/advice/decide/decisive.ts'
import { explain } from '../../../src/advice/decide/explain.ts'
import { lookUpIn, type RandomFacts, randomCondition, someFacts } from './random-conditions.ts'

const flag = (fact: string): Condition => ({ fact, operator: 'equal', value: true })
const decisive = (condition: Condition, facts: RandomFacts) =>
  decisiveLeaves(explain(condition, lookUpIn(facts)))

describe('the shortest sufficient set', () => {
  it('is every leaf of an "all" that holds', () => {
    expect(decisive({ all: [flag('a'), flag('b')] }, { a: true, b: true })).toEqual(['0', '1'])
  })
  it('is one false leaf of an "all" that fails', () => {
    expect(decisive({ all: [flag('a'), flag('b'), flag('c')] }, { a: true, b: false, c: false })).toEqual([
      '1',
    ])
  })
  it('takes the shorter of two branches that both hold', () => {
    const condition = { any: [{ all: [flag('a'), flag('b')] }, flag('c')] }
    expect(decisive(condition, { a: true, b: true, c: true })).toEqual(['1'])
  })
  it('looks through "not"', () => {
    expect(decisive({ not: { any: [flag('a'), flag('b')] } }, { a: false, b: false })).toEqual(['0.0', '0.1'])
  })
  it('sees that one comparison used twice settles both branches', () => {
    const condition = { all: [{ any: [flag('a'), flag('b')] }, { any: [flag('b'), flag('c')] }] }
    expect(decisive(condition, { a: true, b: true, c: true })).toEqual(['0.1'])
  })
  it('is searched for among up to 14 comparisons; of more it is one from which nothing can go', () => {
    const shared: Condition[] = [{ any: [flag('a'), flag('x')] }, { any: [flag('b'), flag('x')] }]
    const beside = (count: number) => Array.from({ length: count }, (_, i) => flag(`d${i}`))
    const of = (count: number) => {
      const names = ['a', 'b', 'x', ...beside(count).map((_, i) => `d${i}`)]
      const facts = Object.fromEntries(names.map((name) => [name, true]))
      return decisive({ all: [...shared, ...beside(count)] }, facts).filter((path) => /^[01]\./.test(path))
    }
    expect(of(11)).toEqual(['0.1'])
    expect(of(12)).toEqual(['0.0', '1.0'])
    const many = { all: [...shared, { any: [flag('b'), flag('c')] }, ...beside(13)] }
    const facts = Object.fromEntries(
      ['a', 'b', 'c', ...beside(13).map((_, i) => `d${i}`)].map((n) => [n, true]),
    )
    expect(decisive(many, { ...facts, x: false }).slice(0, 3)).toEqual(['0.0', '1.0', '3'])
  })
  it('of many comparisons drops what another one of them settles too', () => {
    const beside = Array.from({ length: 14 }, (_, i) => `d${i}`)
    const facts = Object.fromEntries(['a', 'b', ...beside].map((name) => [name, true]))
    const condition = { all: [{ any: [flag('a'), flag('b')] }, flag('b'), ...beside.map(flag)] }
    expect(decisive(condition, facts).slice(0, 3)).toEqual(['0.1', '2', '3'])
  })
  it('of an unknown condition names a missing comparison at every place where it stands', () => {
    const condition = { all: [flag('a'), { any: [flag('a'), flag('b')] }] }
    expect(decisive(condition, { a: null, b: false })).toEqual(['0', '1.0'])
  })
  it('knows a part of a tree by what is known of its leaves, "not" among them', () => {
    const trace = explain({ not: { any: [flag('a'), flag('b')] } }, lookUpIn({ a: true, b: false }))
    const [a, b] = allLeaves(trace).map(({ key }) => key)
    expect(truthKnowing(trace, new Set([a!]))).toBe('false')
    expect(truthKnowing(trace, new Set([b!]))).toBe('unknown')
    expect(truthKnowing(trace, new Set())).toBe('unknown')
  })
  it('takes one comparison of the same fact with another value or threshold for another one', () => {
    const above = (id: string): Condition => ({ fact: 'n', operator: 'greaterThan', value: { fact: id } })
    const facts = { n: 5, low: 1, high: 2 }
    expect(decisive({ all: [above('low'), above('high')] }, facts)).toEqual(['0', '1'])
    const is = (value: string): Condition => ({ fact: 'w', operator: 'notEqual', value })
    expect(decisive({ all: [is('bag'), is('box')] }, { w: 'can' })).toEqual(['0', '1'])
    const alike: Condition = { fact: 'w', operator: 'notEqual', value: 'bag' }
    expect(
      decisive({ all: [alike, { ...alike, operator: 'equal', value: 'can' }, alike] }, { w: 'can' }),
    ).toEqual(['0', '1'])
  })
  it('of an unknown condition is what is missing', () => {
    expect(decisive({ all: [flag('a'), flag('b')] }, { a: true, b: null })).toEqual(['1'])
  })
})

describe('of a condition that does not apply', () => {
  it('is the values that do not exist there, not those nobody knows', () => {
    const known = {
      a: { value: null, unit: '', label: 'a', absent: true as const },
      b: { value: null, unit: '', label: 'b' },
      c: { value: true, unit: '', label: 'c' },
    }
    const trace = explain({ all: [flag('b'), flag('a'), flag('c')] }, (id) => known[id as 'a'])
    expect([trace.truth, decisiveLeaves(trace)]).toEqual(['not-applicable', ['1']])
  })
})

describe('over random conditions', () => {
  it('settles the root by itself, and no smaller set does', () => {
    fc.assert(
      fc.property(randomCondition, someFacts, (condition, facts) => {
        const trace = explain(condition, lookUpIn(facts))
        fc.pre(trace.truth !== 'unknown')
        const leaves = allLeaves(trace)
        const keys = [...new Set(leaves.map((leaf) => leaf.key))]
        fc.pre(keys.length <= 9)
        const chosen = new Set(
          decisiveLeaves(trace).map((path) => leaves.find((leaf) => leaf.path === path)!.key),
        )
        expect(truthKnowing(trace, chosen)).toBe(trace.truth)
        for (let mask = 0; mask < 2 ** keys.length; mask++) {
          const some = new Set(keys.filter((_, i) => mask & (1 << i)))
          if (some.size < chosen.size) expect(truthKnowing(trace, some)).not.toBe(trace.truth)
        }
      }),
      { numRuns: 400 },
    )
  })
})
