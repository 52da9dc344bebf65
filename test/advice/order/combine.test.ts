import { describe, expect, it } from 'vitest'
import { factsOfTogether } from '../../../src/advice/answer/facts-two.ts'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { explainAll } from '../../../src/advice/decide/rule-outcome.ts'
import { FactWriter } from '../../../src/advice/facts/fact-sheet.ts'
import { factsForBrief, factsForContaminant, factsForPoint } from '../../../src/advice/facts/facts.ts'
import { combine } from '../../../src/advice/order/combine.ts'
import { linesOf } from '../../../src/advice/order/lines.ts'
import { standing } from '../../../src/advice/order/order.ts'
import { rowsOf } from '../../../src/advice/order/rows.ts'
import { seenTwice } from '../../../src/advice/order/seen-twice.ts'
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
/** The recommendation for one line of all the points, with its rows. */
function recommend(brief: Brief, points: { options: Option[] }[]) {
  const options = points.map((point) => point.options.map(standing))
  const [first] = linesOf(brief)
  const combined = combine(brief, first!, options)
  const told = combined.uses.map(({ point, option: { equipment }, contaminants }) => [
    point,
    equipment,
    contaminants,
  ])
  return { ...combined, told, rows: rowsOf(brief, first!, combined, options) }
}
const lost = (c: number) => finding(c, { expectedMm: 4, cautiousMm: 5 })
const maybe = (c: number) => finding(c, { cautiousMm: 3.4 })
const none = (c: number) => finding(c, { bestMm: null, expectedMm: null, cautiousMm: null, meets: 'cannot' })

describe('the smallest set', () => {
  it('is one machine, and of two that do the same the later one', () => {
    const both = () => [option('a', 1, [finding(0), finding(1)])]
    expect(recommend(line(), [{ options: both() }, { options: both() }]).told).toEqual([[1, 'a', [0, 1]]])
  })
  it('is two where each meets what the other misses, each named with its job', () => {
    const first = option('a', 1, [finding(0), lost(1)])
    const last = option('b', 1, [lost(0), finding(1)], { family: 'coil' })
    expect(recommend(line(), [{ options: [first] }, { options: [last] }]).told).toEqual([
      [0, 'a', [0]],
      [1, 'b', [1]],
    ])
  })
  it('does not count an early machine for what enters behind it', () => {
    const early = option('a', 1, [finding(0), finding(1)])
    const late = option('b', 1, [lost(0), none(1)])
    const { told, rows } = recommend(line({ flow: FLOW }), [{ options: [early] }, { options: [late] }])
    expect(told).toEqual([[0, 'a', [0]]])
    expect(rows[1]).toMatchObject({ by: 'none', meets: 'cannot', metTooEarlyAt: 0 })
  })
  it('prefers a promise to places left out, and takes what is only expected where nothing promises', () => {
    const gaps = option('gaps', 1, [finding(0, { meets: 'partly' }), maybe(1)], { burden: 2 })
    const sure = option('sure', 2, [finding(0), none(1)], { burden: 2 })
    const { told } = recommend(line(), [{ options: [] }, { options: [gaps, sure] }])
    expect(told).toEqual([[1, 'gaps', [0, 1]]])
    const early = option('sure', 1, [finding(0), none(1)], { burden: 2 })
    const alone = option('gaps', 1, [finding(0, { meets: 'partly' }), none(1)], { burden: 2 })
    expect(recommend(line(), [{ options: [early] }, { options: [alone] }]).told).toEqual([[0, 'sure', [0]]])
  })
  it('adds a machine for a promise that one expected to do all cannot give', () => {
    const expected = option('a', 1, [finding(0), maybe(1)])
    const promise = option('b', 2, [none(0), finding(1)], { burden: 1 })
    expect(recommend(line(), [{ options: [] }, { options: [expected, promise] }]).told).toEqual([
      [1, 'a', [0]],
      [1, 'b', [1]],
    ])
  })
  it('is the first of its point where a machine does it alone, whatever another costs', () => {
    const first = option('a', 1, [finding(0), finding(1)], { burden: 4 })
    const second = option('b', 2, [finding(0), finding(1)], { burden: 2 })
    expect(recommend(line(), [{ options: [] }, { options: [second, first] }]).told).toEqual([
      [1, 'a', [0, 1]],
    ])
  })
  it('takes of two points the one without places left out, then the one of less burden', () => {
    const early = option('early', 1, [finding(0), finding(1)], { burden: 4 })
    const gaps = option('late', 1, [finding(0, { meets: 'partly' }), finding(1)], { burden: 2 })
    expect(recommend(line(), [{ options: [early] }, { options: [gaps] }]).told).toEqual([
      [0, 'early', [0, 1]],
    ])
    const light = option('early', 1, [finding(0), finding(1)], { burden: 2 })
    const heavy = option('late', 1, [finding(0), finding(1)], { burden: 3 })
    expect(recommend(line(), [{ options: [light] }, { options: [heavy] }]).told).toEqual([
      [0, 'early', [0, 1]],
    ])
  })
  it('is of the least burden among pairs that do the same', () => {
    const stones = option('a', 1, [finding(0), none(1)], { burden: 4 })
    const dear = option('b', 2, [none(0), finding(1)], { burden: 3 })
    const cheap = option('c', 3, [none(0), finding(1)], { burden: 1 })
    const { told } = recommend(line(), [{ options: [] }, { options: [stones, dear, cheap] }])
    expect(told).toEqual([
      [1, 'a', [0]],
      [1, 'c', [1]],
    ])
  })
  it('grows beyond three where every one of four is needed', () => {
    const brief = line({
      contaminants: ['quartz', 'ss316', 'steel', 'brass'].map((material) => ({ material, mustFindMm: 3 })),
    })
    const only = (at: number) =>
      option(
        `m${at}`,
        at + 1,
        [0, 1, 2, 3].map((c) => (c === at ? finding(c) : none(c))),
      )
    expect(recommend(brief, [{ options: [] }, { options: [0, 1, 2, 3].map(only) }]).told).toHaveLength(4)
  })
  it('never puts into use what is ruled out, an ideal, or a build that does not take the pack', () => {
    const all = () => [finding(0), finding(1)]
    const reason = { type: 'excludes', contaminant: null } as never
    const out = option('out', 1, all(), { reasons: [reason], verdict: 'not-suitable' })
    const small = option('small', 2, all(), {
      reasons: [reason],
      verdict: 'no-build',
      askFor: { widthMm: 620, heightMm: 190 },
    })
    const ideal = option('ideal', null, all())
    const { kind, rows } = recommend(line(), [{ options: [] }, { options: [out, small, ideal] }])
    expect(kind).toBe('nothing-met')
    expect(rows[0]).toMatchObject({
      by: 'build',
      wouldMeet: true,
      meets: 'no',
      option: { equipment: 'small' },
    })
  })
})

describe('what becomes of a contaminant that nothing meets', () => {
  it('is the machine in use where that finds it at some size, else the nearest', () => {
    const used = option('used', 1, [finding(0), finding(1, { expectedMm: 5, cautiousMm: 6 })])
    const nearer = option('nearer', 2, [none(0), lost(1)])
    const { rows } = recommend(line(), [{ options: [] }, { options: [used, nearer] }])
    expect(rows[1]).toMatchObject({ by: 'nearest', meets: 'no', option: { equipment: 'used' } })
    const blind = option('used', 1, [finding(0), none(1)])
    expect(recommend(line(), [{ options: [] }, { options: [blind, nearer] }]).rows[1]).toMatchObject({
      by: 'nearest',
      finding: { cautiousMm: 5 },
      option: { equipment: 'nearer' },
    })
  })
  it('is a machine without sizes that reacts to it, and at last none', () => {
    const reacts = option('static', 1, [none(0), finding(1, { ...none(1), meets: 'open' })])
    const { rows } = recommend(line(), [{ options: [] }, { options: [reacts] }])
    expect(rows.map(({ by, meets }) => [by, meets])).toEqual([
      ['none', 'cannot'],
      ['reacts', 'open'],
    ])
  })
})

describe('lines beside each other', () => {
  const point = { stage: 'packed', heightMm: 50, widthMm: 180, lengthMm: 250, speedMPerMin: 30 }
  const lines = (...names: (string | undefined)[]) =>
    sampleBrief({ points: names.map((name, at) => ({ ...point, name: `point ${at}`, line: name })) })
  it('each have their own points, and a point without a line is on every one', () => {
    expect(linesOf(lines('jars', 'pouches'))).toEqual([
      { name: 'jars', points: [0] },
      { name: 'pouches', points: [1] },
    ])
    expect(linesOf(lines(undefined, 'b', 'a'))).toEqual([
      { name: 'b', points: [0, 1] },
      { name: 'a', points: [0, 2] },
    ])
  })
  it('are one without a name where none is named', () => {
    expect(linesOf(lines(undefined, undefined))).toEqual([{ name: '', points: [0, 1] }])
  })
})

describe('what can still enter behind a point', () => {
  const book = loadRulebook()
  /** What the rules of a point say of a brief, in the words of the advice. */
  const entering = (brief: Brief) =>
    stillEnters(
      brief,
      brief.points.flatMap((_, pointIndex) =>
        explainAll(book, 'point', [
          ...factsForBrief(brief, materials).facts,
          ...factsForPoint(brief, pointIndex, materials).facts,
        ]).map((outcome) => ({ ...outcome, pointIndex, equipment: null, contaminant: null })),
      ),
    )
  it('is what the flow says, by name', () => {
    const [belt, end] = entering(line({ flow: FLOW }))
    expect(belt).toMatchObject({ point: 'belt', contaminants: [1] })
    expect(belt?.text).toContain('Stainless steel 316 can still enter')
    expect(end).toMatchObject({ contaminants: [] })
  })
  it('is said to be unknown where the brief tells of no flow', () => {
    const [belt, end] = entering(line())
    expect(belt?.contaminants).toBeNull()
    expect(belt?.text).toMatch(/Until the pack is closed.*brief does not say/)
    expect(end?.text).toMatch(/closed here: nothing more gets in/)
  })
  it('names what may enter anywhere for all the brief says', () => {
    const flow = FLOW.map(({ step }) => ({ step }))
    const [belt] = entering(line({ flow }))
    expect(belt?.contaminants).toEqual([])
    expect(belt?.text).toContain('Where stainless steel 316 may enter is not said')
  })
})

describe('whether misses may be multiplied', () => {
  const book = loadRulebook()
  const seen = [finding(0), finding(1)]
  const said = (...asked: Parameters<typeof explainAll>) =>
    explainAll(...asked)
      .filter(({ outcome, type }) => outcome === 'fired' && type === 'multiplies')
      .map(({ text }) => text)
      .join(' ')
  const words = (a: Parameters<typeof option>[3], b: typeof a, points = [0, 1]) => {
    const [one, other] = [option('a', 1, seen, a ?? {}), option('b', 1, seen, b ?? {})]
    const at = (which: 0 | 1, placed: Option) => ({ point: points[which]!, option: placed })
    return said(book, 'together', factsOfTogether(line(), at(0, one), at(1, other)).facts)
  }
  it('is a matter of what two machines look at', () => {
    expect(words({ family: 'xray' }, { family: 'coil' })).toContain('look at different things')
    expect(words({ family: 'xray' }, { family: 'xray' })).toContain('a piece turns and moves')
    expect(words({}, {}, [1, 1])).toContain('in the same pack')
  })
  it('is said of what is looked for twice only', () => {
    const of = (findings: readonly (typeof seen)[]) => {
      const twice = seenTwice(findings.map((its) => ({ findings: its })))
      const write = new FactWriter('l0', line())
      write.computed('line.lookedTwice', twice.length)
      write.computed('line.lookedTwiceNames', `${twice.length} of them`)
      return said(book, 'line', write.sheet().facts)
    }
    expect(of([[finding(0)], [finding(1)]])).toBe('')
    expect(of([seen, seen])).toMatch(/^Looked for more than once: 2 of them/)
    expect(of([seen])).toBe('')
  })
})

describe('prevention', () => {
  const book = loadRulebook()
  it('has a sentence for every material a brief may name as a contaminant', () => {
    const kinds = ['glass', 'stone', 'bone', 'polymer', 'organic', 'metal', 'paper']
    for (const { id, kind } of [...materials.values()].filter((m) => kinds.includes(m.kind))) {
      const brief = sampleBrief({ contaminants: [{ material: id, mustFindMm: 3 }] })
      const facts = [
        ...factsForBrief(brief, materials).facts,
        ...factsForContaminant(brief, 0, materials).facts,
      ]
      const said = explainAll(book, 'brief:contaminant', facts).filter(
        (o) => o.type === 'prevents' && o.outcome === 'fired',
      )
      expect([id, kind, said.length > 0]).toEqual([id, kind, true])
    }
  })
  it('stands in the advice for what nothing meets, and the summary says no first', async () => {
    const advice = await advise(demoBrief('beans'), QUICK)
    expect(advice.summary).toMatch(/No machine compared here finds wood/)
    expect(advice.prevention.map(({ contaminant }) => contaminant)).toEqual(
      advice.combination.unmet.map(({ contaminant }) => contaminant),
    )
  })
})
