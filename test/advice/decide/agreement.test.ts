import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { factOperand, leavesOf } from '../../../src/advice/book/condition.ts'
import { type RuleScope, scopesOf } from '../../../src/advice/book/rule-scope.ts'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { buildEngine, decide, runEngine } from '../../../src/advice/decide/decide.ts'
import { explain, truthOf } from '../../../src/advice/decide/explain.ts'
import { rulesIn } from '../../../src/advice/decide/rule-outcome.ts'
import { THRESHOLD } from '../../../src/advice/facts/list/fact-definition.ts'
import { factsIn } from '../../../src/advice/facts/list/fact-list.ts'
import type { Fact } from '../../../src/contract/index.ts'
import { knownFacts, lookUpIn, randomCondition, someFacts } from './random-conditions.ts'

describe('engine and explainer agree', () => {
  it('on random conditions with all facts known', async () => {
    await fc.assert(
      fc.asyncProperty(randomCondition, knownFacts, async (conditions, facts) => {
        const verdicts = await runEngine(buildEngine([{ id: 'it', conditions }]), facts, 1)
        expect(explain(conditions, lookUpIn(facts)).truth).toBe(String(verdicts.get('it')))
      }),
      { numRuns: 3000 },
    )
  })

  it('on random conditions that the known facts settle, whatever is missing', async () => {
    await fc.assert(
      fc.asyncProperty(randomCondition, someFacts, async (conditions, facts) => {
        const truth = explain(conditions, lookUpIn(facts)).truth
        expect(truthOf(conditions, lookUpIn(facts))).toBe(truth)
        fc.pre(truth !== 'unknown')
        const verdicts = await runEngine(buildEngine([{ id: 'it', conditions }]), facts, 1)
        expect(truth).toBe(String(verdicts.get('it')))
      }),
      { numRuns: 1000 },
    )
  })
})

describe('every rule of the book over synthetic facts', () => {
  const book = loadRulebook()
  const scopes = [...new Set(book.rules.flatMap((rule) => scopesOf(rule)))]

  /** Values that lie below, on and above every threshold a fact is compared with, and every word it is held to. */
  function interesting(scope: RuleScope, id: string): readonly (string | number | boolean)[] {
    const values = new Set<string | number | boolean>()
    for (const rule of rulesIn(book, scope)) {
      for (const leaf of leavesOf(rule.conditions)) {
        const other = factOperand(leaf.value)
        if (leaf.fact !== id && other !== id) continue
        const threshold = other?.startsWith(THRESHOLD)
          ? book.thresholds.get(other.slice(THRESHOLD.length))
          : null
        if (threshold) for (const d of [-1, 0, 1]) values.add(threshold.value + d)
        for (const word of other === null ? [leaf.value].flat() : [])
          if (typeof word === 'string' || typeof word === 'boolean') values.add(word)
      }
    }
    return [...values]
  }

  function syntheticFacts(scope: RuleScope): fc.Arbitrary<readonly Fact[]> {
    const facts = [...factsIn(scope).values()].map((definition): fc.Arbitrary<Fact | null> => {
      const marked = interesting(scope, definition.id)
      const plain: fc.Arbitrary<string | number | boolean> =
        definition.type === 'number'
          ? fc.integer({ min: -2, max: 120 })
          : definition.type === 'boolean'
            ? fc.boolean()
            : fc.constantFrom(...(definition.values ?? ['something']))
      const value = marked.length > 0 ? fc.oneof(plain, fc.constantFrom(...marked)) : plain
      return fc.option(
        fc.option(value, { freq: 12 }).map((given) => ({
          id: definition.id,
          scope: 'synthetic',
          label: definition.label,
          unit: definition.unit,
          origin: 'entered' as const,
          value: given,
        })),
        { freq: 12 },
      )
    })
    return fc.tuple(...facts).map((list) => list.filter((fact) => fact !== null))
  }

  it.each(scopes)('%s', async (scope) => {
    const seen = new Map<string, Set<string>>()
    await fc.assert(
      // decide throws when engine and explainer disagree or a rule is lost
      fc.asyncProperty(syntheticFacts(scope), async (facts) => {
        for (const { rule, outcome } of await decide(book, scope, facts))
          seen.set(rule, (seen.get(rule) ?? new Set()).add(outcome))
      }),
      { numRuns: 150 },
    )
    expect([...seen.keys()].sort()).toEqual(rulesIn(book, scope).map(({ id }) => id))
    for (const [rule, outcomes] of seen)
      expect([rule, [...outcomes]]).toEqual([rule, expect.arrayContaining(['not-fired'])])
  })
})
