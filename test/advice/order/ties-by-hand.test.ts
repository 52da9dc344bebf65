import { describe, expect, it } from 'vitest'
import { closeCallOf } from '../../../src/advice/order/close-call.ts'
import { combine } from '../../../src/advice/order/combine.ts'
import { type Asked, contrastOf, differ } from '../../../src/advice/order/contrast.ts'
import { orderAmong } from '../../../src/advice/order/order.ts'
import type { Standing } from '../../../src/advice/stages.ts'
import type { Finding } from '../../../src/contract/index.ts'
import { sampleBrief } from '../sample.ts'
import { bag, finding, option } from './options-by-hand.ts'

const briefOf = (materials: readonly string[]) =>
  sampleBrief({
    points: [
      { name: 'first', ...bag },
      { name: 'second', ...bag },
    ],
    contaminants: materials.map((material) => ({ material, mustFindMm: 3 })),
  })
const brief = briefOf(['quartz', 'ss316', 'wood', 'steel', 'brass', 'pe'])
const line = { name: '', points: [0, 1] }
const never = (c: number) => finding(c, { bestMm: null, expectedMm: null, cautiousMm: null, meets: 'cannot' })
const lost = (c: number) => finding(c, { expectedMm: 4, cautiousMm: 5 })
const maybe = (c: number) => finding(c, { cautiousMm: 3.4 })
const placed = (name: string, findings: readonly Finding[], over: Partial<Standing> = {}): Standing => ({
  ...option(name, 1, [...findings]),
  excluded: false,
  ...over,
})
/** A machine that promises these of six pieces and finds no other. */
const finds = (name: string, wanted: readonly number[], over: Partial<Standing> = {}) =>
  placed(
    name,
    [0, 1, 2, 3, 4, 5].map((c) => (wanted.includes(c) ? finding(c) : never(c))),
    over,
  )
const uses = (first: Standing[], second: Standing[] = [], asked = brief) =>
  combine(asked, line, [first, second]).uses.map(({ point, option: { equipment }, contaminants }) => [
    point,
    equipment,
    contaminants,
  ])

describe('a set of several machines', () => {
  it('of two that do the same beside a third takes the better rank, then the later point', () => {
    const stones = finds('stones', [0])
    const [worse, better] = [finds('worse', [1], { rank: 3 }), finds('better', [1], { rank: 2 })]
    expect(uses([], [stones, worse, better])).toEqual([
      [1, 'stones', [0]],
      [1, 'better', [1]],
    ])
    const alike = (name: string) => finds(name, [1], { rank: 2 })
    expect(uses([stones, alike('early')], [alike('late')])).toEqual([
      [0, 'stones', [0]],
      [1, 'late', [1]],
    ])
  })
  it('leaves what two of them meet as well to the later one', () => {
    expect(uses([finds('a', [0, 1])], [finds('b', [0, 2])])).toEqual([
      [0, 'a', [1]],
      [1, 'b', [0, 2]],
    ])
  })
  it('is looked for whole up to three: the best pair need not be part of it', () => {
    const triple = [finds('b', [0, 1]), finds('c', [2, 3], { rank: 2 }), finds('d', [4, 5], { rank: 3 })]
    const tempting = finds('tempting', [0, 2, 4], { burden: 1, rank: 4 })
    expect(uses([], [...triple, tempting]).map(([, name]) => name)).toEqual(['b', 'c', 'd'])
  })
  it('grows beyond three one by one, and stands in the order of the flow', () => {
    const late = [0, 1, 2, 3].map((c) => finds(`m${c}`, [c], { rank: c + 1 }))
    const early = finds('dear', [4], { burden: 5 })
    const five = briefOf(['quartz', 'ss316', 'wood', 'steel', 'brass'])
    expect(uses([early], late, five).map(([point, name]) => `${point} ${name}`)).toEqual([
      '0 dear',
      '1 m0',
      '1 m1',
      '1 m2',
      '1 m3',
    ])
  })
  it('says whether something is met, and what more than one of them finds', () => {
    expect(combine(brief, line, [[finds('a', [0])], []])).toMatchObject({ kind: 'met', seenTwice: [] })
    expect(combine(brief, line, [[finds('a', [])], []])).toEqual({
      kind: 'nothing-met',
      uses: [],
      seenTwice: [],
    })
    expect(combine(brief, line, [[finds('a', [0, 1])], [finds('b', [0, 2])]]).seenTwice).toEqual([0])
  })
})

describe('a close call', () => {
  const sure = placed('sure', [finding(0), finding(1)], { burden: 4, verdict: 'best-fit' })
  const second = (...options: Standing[]) => closeCallOf(brief, options)?.second.equipment ?? null
  it('is none between two that are alike, nor for one that finds a piece at no size', () => {
    expect(second(sure, { ...sure, equipment: 'twin' })).toBeNull()
    expect(second(sure, placed('light', [finding(0), never(1)], { burden: 1 }))).toBeNull()
  })
  it('goes to the one whose sizes come within reach first: without a promise that is late', () => {
    const unsure = placed('unsure', [finding(0), finding(1, { expectedMm: 2.9, cautiousMm: null })], {
      burden: 1,
    })
    const nearly = placed('nearly', [finding(0), finding(1, { cautiousMm: 3.2 })], { burden: 2 })
    expect(second(sure, unsure, nearly)).toBe('nearly')
    expect(second(sure, unsure)).toBe('unsure')
  })
  it('holds places left out against the first all the way', () => {
    const holes = placed('holes', [finding(0, { meets: 'partly' })], { verdict: 'best-fit' })
    expect(closeCallOf(brief, [holes, placed('fine', [maybe(0)])])).toMatchObject({
      second: { equipment: 'fine' },
      contaminants: [0],
      turned: true,
    })
  })
  it('that hangs on sizes alone names the worst of the second only', () => {
    const narrow = placed('narrow', [finding(0, { expectedMm: 3.1, cautiousMm: 3.3 }), finding(1)], {
      verdict: 'conditional',
    })
    const wide = placed('wide', [finding(0, { expectedMm: 2.2, cautiousMm: 4.4 }), finding(1)], { burden: 2 })
    expect(closeCallOf(brief, [narrow, wide])).toMatchObject({
      second: { equipment: 'wide' },
      contaminants: [0],
      turned: false,
    })
  })
})

describe('two side by side', () => {
  const a = placed('a', [finding(0)])
  const b = placed('b', [finding(0)], { burden: 4 })
  const asked = (rule: string, equipment: string, over: Partial<Asked> = {}): Asked => ({
    rule,
    equipment,
    title: rule,
    type: 'weakens',
    contaminant: null,
    outcome: 'fired',
    ...over,
  })
  const shown = (...rules: Asked[]) =>
    contrastOf(brief.contaminants, rules, [a, b], a, b).rules.map(({ rule }) => rule)
  it('leaves out what was asked of one and stayed quiet, and what only asks something of one', () => {
    expect(shown(asked('lone', 'a', { outcome: 'not-fired' }))).toEqual([])
    expect(shown(asked('asks', 'a', { type: 'requires' }))).toEqual([])
    expect(shown(asked('asks', 'b', { type: 'requires' }))).toEqual([])
    const both = [
      asked('asks', 'a', { type: 'requires' }),
      asked('asks', 'b', { type: 'requires', outcome: 'not-fired' }),
    ]
    expect(shown(...both)).toEqual(['asks'])
  })
  it('sizes exactly 2 % apart are the same', () => {
    expect([differ(98, 100), differ(97.9, 100)]).toEqual([false, true])
  })
})

describe('an option held back by an open question', () => {
  const part = (x: Standing, y: Standing) => orderAmong(brief.contaminants, [x, y]).part(x, y)
  it('is held back whatever else it was not asked for', () => {
    const capped = placed('capped', [finding(0), finding(1, { mustFindMm: null })], {
      verdict: 'conditional',
      burden: 1,
    })
    expect(part(placed('free', [finding(0)]), capped)).toMatchObject({ step: 'verdict' })
    expect(part(placed('free', [finding(0)]), capped).sign).toBeLessThan(0)
  })
  it('comes before one of its class that misses a size, whatever it costs', () => {
    const capped = placed('capped', [finding(0), finding(1)], { verdict: 'conditional', burden: 5 })
    const some = placed('some', [finding(0), lost(1)], { verdict: 'conditional', burden: 1 })
    expect(part(capped, some)).toMatchObject({ step: 'unmet' })
    expect(part(capped, some).sign).toBeLessThan(0)
    expect(part(some, capped)).toMatchObject({ step: 'unmet' })
  })
})
