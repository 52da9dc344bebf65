import { describe, expect, it } from 'vitest'
import { mergeBrief, runExamples } from '../../../src/advice/book/rule-examples.ts'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import type { Advice } from '../../../src/contract/index.ts'
import { RULE, ruleFolder } from './rule-folder.ts'

describe('laying an example over the base brief', () => {
  it('merges objects, merges lists item by item, takes null away', () => {
    const base = {
      market: 'EU',
      product: { food: 'almond', packing: 0.5 },
      points: [{ heightMm: 50, massG: 9 }],
    }
    expect(
      mergeBrief(base, {
        product: { packing: null, grainMm: 12 },
        points: [{ heightMm: 90 }, { name: 'b' }],
      }),
    ).toEqual({
      market: 'EU',
      product: { food: 'almond', grainMm: 12 },
      points: [{ heightMm: 90, massG: 9 }, { name: 'b' }],
    })
  })
  it('takes the length of the list that lies on top', () => {
    expect(mergeBrief({ list: [1, 2, 3] }, { list: [4] })).toEqual({ list: [4] })
    expect(mergeBrief({ list: [{ a: 1 }] }, { list: [] })).toEqual({ list: [] })
  })
  it('leaves the base as it was', () => {
    const base = { points: [{ heightMm: 50 }] }
    mergeBrief(base, { points: [{ heightMm: 90 }] })
    expect(base).toEqual({ points: [{ heightMm: 50 }] })
  })
})

const trace = (outcome: string, more: Record<string, unknown> = {}) => ({
  id: 'tall-food',
  equipment: '',
  point: 'p',
  outcome,
  conditions: { kind: 'all', truth: 'true' },
  ...more,
})
const book = loadRulebook([], ruleFolder({ raw: { 'base-brief.json': '{"points":[{"heightMm":10}]}' } }))
const runWith = (rules: (heightMm: number) => unknown[]) =>
  runExamples(book, (brief) => {
    const { points } = brief as { points: { heightMm: number }[] }
    return { trace: { rules: rules(points[0]!.heightMm) } } as Advice
  })

describe('running the examples of a book', () => {
  it('passes where the advice answers as the example says', async () => {
    const report = await runWith((height) => [trace(height > 50 ? 'fired' : 'not-fired')])
    expect(report.failures).toEqual([])
    expect(report.results.map(({ passed }) => passed)).toEqual([true, true])
    expect([report.neverFired, report.alwaysFired]).toEqual([[], []])
  })
  it('fails both ways and says what happened', async () => {
    const report = await runWith((height) => [trace(height > 50 ? 'not-fired' : 'fired')])
    expect(report.failures.map(({ rule, example, message }) => [rule, example, message])).toEqual([
      ['tall-food', 0, 'expected to fire; it was not-fired'],
      ['tall-food', 1, 'expected not to fire; it fired'],
    ])
  })
  it('does not take unknown or silence for an answer', async () => {
    const unknown = await runWith((height) => [trace(height > 50 ? 'fired' : 'unknown')])
    expect(unknown.failures[0]?.message).toBe('expected not to fire; it was unknown')
    const silent = await runWith(() => [])
    expect(silent.failures.map(({ message }) => message)).toEqual([
      'the rule was not asked anywhere the example names',
      'the rule was not asked anywhere the example names',
    ])
  })
  it('reports rules that fire everywhere or nowhere', async () => {
    expect((await runWith(() => [trace('fired')])).alwaysFired).toEqual(['tall-food'])
    expect((await runWith(() => [trace('not-fired')])).neverFired).toEqual(['tall-food'])
  })
  it('says why a brief gave no advice', async () => {
    const report = await runExamples(book, () => {
      throw new Error('height must be a number')
    })
    expect(report.failures[0]?.message).toBe("the example's brief gave no advice: height must be a number")
  })
  it('looks only where the example points', async () => {
    const aimed = loadRulebook(
      [],
      ruleFolder({
        rules: [
          {
            ...RULE,
            examples: [
              { brief: {}, equipment: 'a', contaminant: 1, fires: true },
              { brief: {}, equipment: 'b', fires: false },
            ],
          },
        ],
      }),
    )
    const rules = [
      trace('fired', { equipment: 'a', contaminant: 1 }),
      trace('not-fired', { equipment: 'a', contaminant: 0 }),
      trace('not-fired', { equipment: 'b', contaminant: 1 }),
    ]
    const report = await runExamples(aimed, () => ({ trace: { rules } }) as unknown as Advice)
    expect(report.failures).toEqual([])
  })
})
