import { Engine } from 'json-rules-engine'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { decide } from '../../../src/advice/decide/decide.ts'
import { explainAll } from '../../../src/advice/decide/rule-outcome.ts'
import type { Fact } from '../../../src/contract/index.ts'
import { RULE, ruleFolder, THRESHOLD } from '../book/rule-folder.ts'

const fact = (id: string, value: Fact['value'], unit = ''): Fact => ({
  id,
  scope: 'p0',
  label: id,
  unit,
  origin: 'computed',
  value,
})
const event = (type: string, more: object = {}) => ({ type, params: { text: 'The food is high.', ...more } })
const items = [{ about: 'first', text: 'The food is {point.heightMm} high.' }, { text: 'Then look again.' }]
const high = { fact: 'point.heightMm', operator: 'greaterThan', value: { fact: 'threshold.high' } }
const uses = { fact: 'line.useCount', operator: 'greaterThan', value: { fact: 'threshold.few' } }
const meets = { fact: 'row.meets', operator: 'equal', value: 'yes' }
const book = loadRulebook(
  [],
  ruleFolder({
    thresholds: [THRESHOLD, { ...THRESHOLD, id: 'few', unit: '', value: 1 }],
    rules: [
      RULE,
      { ...RULE, id: 'asks-the-buyer', conditions: { any: [high] }, event: event('requires') },
      {
        ...RULE,
        id: 'asks-the-supplier',
        conditions: { all: [high, high] },
        event: event('requires', { open: true, answeredBy: 'supplier' }),
      },
      {
        ...RULE,
        id: 'is-the-drill',
        appliesTo: ['check'],
        event: event('records', { slot: 'drill', about: 'height', items }),
      },
      {
        ...RULE,
        id: 'words-the-answer',
        appliesTo: ['line'],
        conditions: { all: [uses] },
        event: event('headline', { part: 'misses' }),
      },
      {
        ...RULE,
        id: 'leaves-a-test',
        appliesTo: ['line'],
        each: 'contaminant',
        conditions: { all: [meets] },
        event: event('leaves', { left: 'test' }),
      },
    ],
  }),
)
const tall = [fact('point.heightMm', 60, 'mm')]
const of = (scope: Parameters<typeof explainAll>[1], facts: Fact[], id: string) =>
  explainAll(book, scope, facts).find(({ rule }) => rule === id)

describe('what a rule says of itself stands in its outcome', () => {
  it('the part of the answer, or the kind of what is left; of others neither', () => {
    expect(of('line', [fact('line.useCount', 2)], 'words-the-answer')).toMatchObject({
      part: 'misses',
      left: null,
      open: false,
      answeredBy: null,
      slot: null,
      about: '',
      items: [],
    })
    expect(of('line:contaminant', [fact('row.meets', 'yes')], 'leaves-a-test')).toMatchObject({
      part: null,
      left: 'test',
    })
  })
  it('who answers for what is asked, the buyer unless it says so, and whether a verdict waits for it', () => {
    expect(of('point', tall, 'asks-the-buyer')).toMatchObject({ answeredBy: 'buyer', open: false })
    expect(of('point', tall, 'asks-the-supplier')).toMatchObject({ answeredBy: 'supplier', open: true })
    expect(of('point', tall, 'tall-food')).toMatchObject({ answeredBy: null, open: false })
  })
  it('its place in the record, and its steps in order with their values filled in', () => {
    expect(of('check', tall, 'is-the-drill')).toMatchObject({
      slot: 'drill',
      about: 'height',
      items: [
        { about: 'first', text: 'The food is 60 mm high.' },
        { about: '', text: 'Then look again.' },
      ],
    })
    expect(of('check', [fact('point.heightMm', 6, 'mm')], 'is-the-drill')).toMatchObject({
      outcome: 'not-fired',
      text: '',
      items: [],
    })
  })
})

describe('a book on trial', () => {
  afterEach(() => vi.restoreAllMocks())
  const trial = { ...book, trial: true }
  it('says the same without the tree and without what settled it', () => {
    const plain = explainAll(book, 'point', tall)
    expect(explainAll(trial, 'point', tall)).toEqual(
      plain.map((one) => ({
        ...one,
        conditions: { kind: 'all', truth: one.truth, children: [] },
        decisive: [],
      })),
    )
    expect(plain[0]!.decisive).toEqual(['0'])
  })
  it('is not asked of the engine, which every other book is', async () => {
    const run = vi.spyOn(Engine.prototype, 'run')
    expect(await decide(trial, 'point', tall)).toEqual(explainAll(trial, 'point', tall))
    expect(run).not.toHaveBeenCalled()
    await decide(book, 'point', tall)
    expect(run).toHaveBeenCalledTimes(1)
  })
})
