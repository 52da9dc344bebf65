import { describe, expect, it } from 'vitest'
import { combine as combineStanding } from '../../../src/advice/order/combine.ts'
import { standing } from '../../../src/advice/order/order.ts'
import { seenTwice } from '../../../src/advice/order/seen-twice.ts'
import { combinationWords } from '../../../src/advice/say/combination.ts'
import { independenceWords } from '../../../src/advice/say/independence.ts'
import { preventionOf } from '../../../src/advice/say/prevention.ts'
import { stillEnters } from '../../../src/advice/say/still-enters.ts'
import { advise } from '../../../src/advise.ts'
import type { Brief, Option } from '../../../src/contract/index.ts'
import { materials } from '../../../src/reference/index.ts'
import { demoBrief, QUICK } from '../demo.ts'
import { sampleBrief } from '../sample.ts'
import { finding, option } from './options-by-hand.ts'

const CONTAMINANTS = [
  { material: 'quartz', mustFindMm: 3, entersAt: 'field' },
  { material: 'ss316', mustFindMm: 3 },
]
const FLOW = [
  { step: 'field' },
  { step: 'belt' },
  { step: 'slicing', entersHere: ['ss316'] },
  { step: 'end of line' },
]
const line = (over: Record<string, unknown> = {}) =>
  sampleBrief({
    contaminants: CONTAMINANTS,
    points: [
      { name: 'belt', stage: 'loose', massG: null, packsPerMin: null, parts: [] },
      {
        name: 'end of line',
        stage: 'packed',
        heightMm: 50,
        widthMm: 180,
        lengthMm: 250,
        speedMPerMin: 30,
        parts: [{ material: 'pe', mm: 0.06, place: 'wrap' }],
      },
    ],
    ...over,
  })
const combine = (brief: Brief, points: { options: Option[] }[]) =>
  combinationWords({
    brief,
    combination: combineStanding(
      brief,
      points.map(({ options }) => ({ options: options.map(standing) })),
    ),
  })
const lost = (c: number) => finding(c, { expectedMm: 4, cautiousMm: 5 })

describe('the smallest set', () => {
  it('is one machine, and of two that do the same the later one', () => {
    const both = () => [option('a', 1, [finding(0), finding(1)])]
    const { uses, unmet } = combine(line(), [{ options: both() }, { options: both() }])
    expect(uses).toEqual([{ point: 'end of line', equipment: 'a', contaminants: [0, 1] }])
    expect(unmet).toEqual([])
  })
  it('is two where each meets what the other misses, each named with its job', () => {
    const first = option('a', 1, [finding(0), lost(1)])
    const last = option('b', 1, [lost(0), finding(1)], { family: 'coil' })
    const { uses, because } = combine(line(), [{ options: [first] }, { options: [last] }])
    expect(uses.map(({ equipment, contaminants }) => [equipment, contaminants])).toEqual([
      ['a', [0]],
      ['b', [1]],
    ])
    expect(because).toContain('2 machines together')
  })
  it('does not count an early machine for what enters behind it', () => {
    const early = option('a', 1, [finding(0), finding(1)])
    const late = option('b', 1, [lost(0), lost(1)])
    const { uses, unmet } = combine(line({ flow: FLOW }), [{ options: [early] }, { options: [late] }])
    expect(uses).toEqual([{ point: 'belt', equipment: 'a', contaminants: [0] }])
    expect(unmet).toEqual([1])
  })
})

describe('what can still enter behind a point', () => {
  it('is what the flow says, by name', () => {
    const [belt, end] = stillEnters(line({ flow: FLOW }))
    expect(belt).toMatchObject({ point: 'belt', contaminants: [1] })
    expect(belt?.text).toContain('stainless steel 316 sphere can still enter')
    expect(end).toMatchObject({ contaminants: [] })
  })
  it('is said to be unknown where the brief tells of no flow', () => {
    const [belt, end] = stillEnters(line())
    expect(belt?.contaminants).toBeNull()
    expect(belt?.text).toMatch(/Until the pack is closed.*brief does not say/)
    expect(end?.text).toMatch(/closed here: nothing more gets in/)
  })
  it('names what may enter anywhere for all the brief says', () => {
    const flow = FLOW.map(({ step }) => ({ step }))
    const [belt] = stillEnters(line({ flow }))
    expect(belt?.contaminants).toEqual([])
    expect(belt?.text).toContain('Where stainless steel 316 sphere may enter is not said')
  })
})

describe('whether misses may be multiplied', () => {
  const seen = [finding(0), finding(1)]
  const independenceOf = (uses: { point: number; option: Option }[]) =>
    independenceWords(line(), uses, seenTwice(uses.map((use) => use.option)))
  const words = (a: Parameters<typeof option>[3], b: typeof a, points = [0, 1]) =>
    independenceOf([
      { point: points[0]!, option: option('a', 1, seen, a ?? {}) },
      { point: points[1]!, option: option('b', 1, seen, b ?? {}) },
    ])
  it('is a matter of what two machines look at', () => {
    expect(words({ family: 'xray' }, { family: 'coil' })).toContain('look at different things')
    expect(words({ family: 'xray' }, { family: 'xray' })).toContain('a piece turns and moves')
    expect(words({}, {}, [1, 1])).toContain('in the same pack')
  })
  it('is no matter where nothing is looked for twice, or there is one machine', () => {
    const one = { point: 0, option: option('a', 1, [finding(0)]) }
    const other = { point: 1, option: option('b', 1, [finding(1)]) }
    expect(independenceOf([one, other])).toMatch(/No contaminant is looked for twice/)
    expect(independenceOf([one])).toBe('')
  })
})

describe('prevention', () => {
  it('has a sentence for every material a brief may name as a contaminant', () => {
    const kinds = ['glass', 'stone', 'bone', 'polymer', 'organic', 'metal', 'paper']
    for (const { id, kind } of [...materials.values()].filter((m) => kinds.includes(m.kind))) {
      const brief = sampleBrief({ contaminants: [{ material: id, mustFindMm: 3 }] })
      expect([id, kind, preventionOf(brief, [0]).length]).toEqual([id, kind, 1])
    }
  })
  it('stands in the advice for what nothing meets, and the summary says no first', async () => {
    const advice = await advise(demoBrief('beans'), QUICK)
    expect(advice.summary).toMatch(/^No machine compared here finds wood/)
    expect(advice.prevention.map(({ contaminant }) => contaminant)).toEqual(advice.combination.unmet)
  })
})
