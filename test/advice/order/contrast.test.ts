import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { orderAmong, standing } from '../../../src/advice/order/order.ts'
import { advise } from '../../../src/advise.ts'
import { rather } from '../../../src/compare/rather.ts'
import type { Option, RuleTrace } from '../../../src/contract/index.ts'
import { demoBrief, QUICK } from '../demo.ts'
import { sampleBrief } from '../sample.ts'
import { finding, option } from './options-by-hand.ts'

const brief = sampleBrief({
  contaminants: [
    { material: 'quartz', mustFindMm: 3, severity: 5 },
    { material: 'ss316', mustFindMm: 3, severity: 2 },
  ],
})
const book = loadRulebook()
const part = (a: Option, b: Option) =>
  orderAmong(brief.contaminants, [a, b].map(standing)).part(standing(a), standing(b))
const lost = (c: number) => finding(c, { expectedMm: 4, cautiousMm: 5 })

describe('where two options part', () => {
  it.each([
    ['unmet', 'the gravest first', [lost(0), finding(1)], [finding(0), lost(1)], 5],
    ['verdict', 'then the others', [finding(0), lost(1)], [finding(0), finding(1)], 2],
  ] as const)('%s: %s', (step, _, worse, better, severity) => {
    const parting = part(option('a', 1, [...worse]), option('b', 2, [...better]))
    expect(parting).toMatchObject({ step, severity })
    expect(parting.sign).toBeGreaterThan(0)
  })
  it('burden, where both meet everything', () => {
    const light = option('a', 1, [finding(0)], { burden: 2 })
    const heavy = option('b', 2, [finding(0, { cautiousMm: 2.1 })], { burden: 4 })
    expect(part(light, heavy)).toEqual({ step: 'burden', severity: null, sign: -2 })
  })
  it('ratio, where both miss as many', () => {
    const far = option('a', 1, [lost(0)])
    const near = option('b', 2, [finding(0, { expectedMm: 3.1, cautiousMm: 3.2 })], { burden: 5 })
    expect(part(far, near).step).toBe('ratio')
  })
  it('nothing, where nothing differs', () => {
    const one = option('a', 1, [finding(0)])
    expect(part(one, { ...one, equipment: 'b' }).step).toBe('nothing')
  })
})

const trace = (id: string, equipment: string, outcome: RuleTrace['outcome']): RuleTrace => ({
  key: `p0.${equipment}.${id}`,
  id,
  title: id,
  type: 'weakens',
  book: 'trial',
  equipment,
  point: 'there',
  contaminant: null,
  outcome,
  conditions: { kind: 'all', truth: 'true', children: [] },
  decisive: [],
})

describe('A rather than B', () => {
  const a = option('a', 1, [finding(0), finding(1)], { burden: 2 })
  const b = option('b', 2, [finding(0, { expectedMm: 2.01, cautiousMm: 2.81 }), lost(1)], { burden: 2 })
  const rules = [
    trace('both', 'a', 'fired'),
    trace('both', 'b', 'fired'),
    trace('one', 'a', 'fired'),
    trace('one', 'b', 'not-fired'),
    trace('quiet', 'a', 'not-fired'),
    trace('quiet', 'b', 'not-applicable'),
  ]
  const contrast = rather(
    book,
    brief,
    { trace: { rules }, points: [{ name: 'there', options: [a, b] }] },
    0,
    a,
    b,
  )

  it('shows only what differs: no equal burden, no size within 2 %, no rule that came out alike', () => {
    expect(contrast.burden).toBeNull()
    expect(contrast.sizes.map(({ contaminant }) => contaminant)).toEqual([1])
    expect(contrast.rules.map(({ rule, outcomes }) => [rule, outcomes])).toEqual([
      ['one', ['fired', 'not-fired']],
    ])
  })
  it('says what puts one before the other', () => {
    expect(contrast.because).toMatch(
      /severity 2, machine a leaves none .* machine b leaves stainless steel 316/,
    )
  })
  it('turned round says the same and turns every pair', () => {
    const back = rather(
      book,
      brief,
      { trace: { rules }, points: [{ name: 'there', options: [a, b] }] },
      0,
      b,
      a,
    )
    expect(back.because).toBe(contrast.because)
    expect(back.rules[0]?.outcomes).toEqual(['not-fired', 'fired'])
    expect(back.sizes[0]?.meets).toEqual([...contrast.sizes[0]!.meets].reverse())
  })
  it('stands in the advice for the first machine against each other one, in the order of the machines', async () => {
    const advice = await advise(demoBrief('beans'), QUICK)
    const [point] = advice.points
    const ranked = point!.options.filter(({ rank }) => rank !== null)
    expect(point!.contrasts.map(({ first, second }) => [first, second])).toEqual(
      ranked.slice(1).map(({ equipment }) => [ranked[0]!.equipment, equipment]),
    )
  })
})
