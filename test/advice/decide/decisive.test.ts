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
