import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { buildEngine, decide, holdTogether, runEngine } from '../../../src/advice/decide/decide.ts'
import { explainAll } from '../../../src/advice/decide/rule-outcome.ts'
import type { Fact } from '../../../src/contract/index.ts'
import { RULE, ruleFolder, SOURCE, THRESHOLD } from '../book/rule-folder.ts'

const height = (value: Fact['value']): Fact => ({
  id: 'point.heightMm',
  scope: 'p0',
  label: 'height of the food',
  unit: 'mm',
  origin: 'entered',
  value,
})
const gap = (value: Fact['value']): Fact => ({
  ...height(value),
  id: 'flow.gapMm',
  label: 'gap between packs',
})
const leaf = (fact: string) => ({ fact, operator: 'greaterThan', value: { fact: 'threshold.high' } })
const book = loadRulebook(
  [],
  ruleFolder({
    rules: [
      RULE,
      { ...RULE, id: 'tall-and-spaced', conditions: { all: [leaf('point.heightMm'), leaf('flow.gapMm')] } },
      { ...RULE, id: 'neither', conditions: { not: { any: [leaf('point.heightMm'), leaf('flow.gapMm')] } } },
    ],
  }),
)
const outcomes = async (...facts: Fact[]) =>
  Object.fromEntries((await decide(book, 'point', facts)).map(({ rule, outcome }) => [rule, outcome]))

describe('decide', () => {
  it('gives every rule its outcome, by id', async () => {
    const decided = await decide(book, 'point', [height(60), gap(20)])
    expect(decided.map(({ rule, outcome }) => [rule, outcome])).toEqual([
      ['neither', 'not-fired'],
      ['tall-and-spaced', 'not-fired'],
      ['tall-food', 'fired'],
    ])
  })
  it('fills the text of a fired rule and names the book', async () => {
    const fired = (await decide(book, 'point', [height(60), gap(20)])).find(
      ({ rule }) => rule === 'tall-food',
    )
    expect(fired).toMatchObject({ text: 'The food is 60 mm high.', book: 'trial book', truth: 'true' })
    expect(fired?.conditions.children?.[0]).toMatchObject({
      margin: { absolute: 10, relative: 0.2 },
      threshold: { id: 'threshold.high', value: 50, unit: 'mm' },
    })
  })
  it('names the sources of the rule and of its thresholds, each once', async () => {
    const bySource = loadRulebook(
      [],
      ruleFolder({
        thresholds: [{ ...THRESHOLD, source: 'another-source' }],
        sources: [SOURCE, { ...SOURCE, id: 'another-source' }],
      }),
    )
    expect((await decide(bySource, 'point', [height(60)]))[0]?.sources).toEqual([
      'a-source',
      'another-source',
    ])
    expect((await decide(book, 'point', [height(60)]))[0]?.sources).toEqual(['a-source'])
  })
  it('says nothing of a rule that did not fire', async () => {
    const quiet = (await decide(book, 'point', [height(6), gap(20)])).filter(
      ({ outcome }) => outcome !== 'fired',
    )
    expect(quiet.map(({ text }) => text)).toEqual(['', ''])
  })
  it('keeps a rule that hangs on an unknown value out of the verdict', async () => {
    expect(await outcomes(height(60), gap(null))).toEqual({
      neither: 'not-fired',
      'tall-and-spaced': 'unknown',
      'tall-food': 'fired',
    })
  })
  it('never lets an unknown value make a "not" come true', async () => {
    expect((await outcomes(height(6), gap(null))).neither).toBe('unknown')
  })
  it('calls a rule not applicable where there is no such fact at all', async () => {
    expect(await outcomes(height(60))).toMatchObject({ 'tall-and-spaced': 'not-applicable' })
    expect(await outcomes(height(6))).toMatchObject({ 'tall-and-spaced': 'not-fired' })
  })
  it('gives the same outcomes as the explainer alone', async () => {
    const facts = [height(60), gap(80)]
    expect(await decide(book, 'point', facts)).toEqual(explainAll(book, 'point', facts))
  })
  it('has nothing to say where no rule applies', async () => {
    expect(await decide(book, 'xray', [])).toEqual([])
  })
  it('takes many runs at once without losing a rule', async () => {
    const runs = Array.from({ length: 60 }, async (_, i) => {
      for (let wait = 0; wait < i % 7; wait++) await null
      return decide(book, 'point', [height(i), gap(20)])
    })
    const all = await Promise.all(runs)
    expect(all.map((decided) => decided.at(-1)?.outcome)).toEqual(
      Array.from({ length: 60 }, (_, i) => (i > 50 ? 'fired' : 'not-fired')),
    )
  })
})

describe('decide refuses facts that are not what the list says', () => {
  it.each([
    ['a number as text', height('60'), /"point\.heightMm" must be a finite number or null; 60 was given/],
    ['not a number', height(Number.NaN), /must be a finite number or null; NaN/],
    ['a fact nobody listed', { ...height(1), id: 'point.hight' }, /"point\.hight" is not in the fact list/],
  ] as const)('%s', async (_, fact, said) => {
    await expect(decide(book, 'point', [fact])).rejects.toThrow(said)
  })
  it('a fact given twice', async () => {
    await expect(decide(book, 'point', [height(1), height(2)])).rejects.toThrow(/given twice/)
  })
})

describe('a run of the engine', () => {
  const conditions = { all: [{ fact: 'a', operator: 'equal', value: true }] } as const
  it('is an error when a rule got lost', async () => {
    const engine = buildEngine([{ id: 'one', conditions }])
    await expect(runEngine(engine, { a: true }, 2)).rejects.toThrow(/answered 1 of 2 rules/)
  })
  it('does not hold up the next run when it fails', async () => {
    const engine = buildEngine([{ id: 'one', conditions }])
    const failing = runEngine(engine, { a: true }, 2)
    const next = runEngine(engine, { a: true }, 1)
    await expect(failing).rejects.toThrow()
    expect((await next).get('one')).toBe(true)
  })
})

describe('engine and explainer', () => {
  const verdicts = new Map([['one', true]])
  it('may not disagree', () => {
    expect(() => holdTogether([{ rule: 'one', truth: 'false' }], verdicts)).toThrow(
      'rule "one": the engine says true, the explainer says false',
    )
  })
  it('may not leave a settled rule without a verdict', () => {
    expect(() => holdTogether([{ rule: 'two', truth: 'true' }], verdicts)).toThrow(/engine says undefined/)
  })
  it('need not agree where a value is missing', () => {
    expect(() => holdTogether([{ rule: 'one', truth: 'unknown' }], verdicts)).not.toThrow()
  })
})
