import { describe, expect, it } from 'vitest'
import { belongsInTheFood } from '../../../src/advice/order/belongs.ts'
import { combine } from '../../../src/advice/order/combine.ts'
import { linesOf } from '../../../src/advice/order/lines.ts'
import { missedOf } from '../../../src/advice/order/missed.ts'
import { standing } from '../../../src/advice/order/order.ts'
import { placesMissed } from '../../../src/advice/order/places-missed.ts'
import { rowsOf } from '../../../src/advice/order/rows.ts'
import { seenTwice } from '../../../src/advice/order/seen-twice.ts'
import type { Finding, Option, Zone } from '../../../src/contract/index.ts'
import { sampleBrief } from '../sample.ts'
import { bag, finding, option } from './options-by-hand.ts'

const brief = sampleBrief({
  points: [
    { name: 'first', ...bag },
    { name: 'second', ...bag },
  ],
  contaminants: [
    { material: 'quartz', mustFindMm: 3 },
    { material: 'ss316', mustFindMm: 3 },
  ],
})
const lost = (expectedMm = 4, cautiousMm: number | null = 5) => finding(0, { expectedMm, cautiousMm })
const never = (c = 0) => finding(c, { bestMm: null, expectedMm: null, cautiousMm: null, meets: 'cannot' })
const reacts = finding(0, { expectedMm: null, cautiousMm: null, meets: 'open' })
const ruledOut = [{ type: 'excludes', contaminant: null } as never]
const askFor = { widthMm: 620, heightMm: 190 }

/** The row of the first contaminant over points with their options. */
function rowOf(...points: readonly (readonly Option[])[]) {
  const options = points.map((there) => there.map(standing))
  const line = { name: '', points: points.map((_, at) => at) }
  const [row] = rowsOf(brief, line, combine(brief, line, options), options)
  const { option: by, ...more } = row!
  return { equipment: by?.equipment ?? null, ...more }
}

describe('what becomes of a contaminant that nothing in use takes care of', () => {
  it('the nearest is the one with the smallest size to promise, then to expect, then the better rank', () => {
    const near = (a: Finding, b: Finding) => rowOf([option('a', 1, [a]), option('b', 2, [b])]).equipment
    expect(near(lost(4, 5), lost(4.5, 4.8))).toBe('b')
    expect(near(lost(4, null), lost(4.5, 9))).toBe('b')
    expect(near(lost(4, 5), lost(3.9, 5))).toBe('b')
    expect(near(lost(4, null), lost(3.9, null))).toBe('b')
    expect(near(lost(4, 5), lost(4, 5))).toBe('a')
    expect(rowOf([option('b', 2, [lost()]), option('a', 1, [lost()])]).equipment).toBe('a')
  })
  it('of two points alike it is the later one', () => {
    expect(rowOf([option('a', 1, [lost()])], [option('a', 1, [lost()])])).toMatchObject({
      by: 'nearest',
      point: 1,
    })
  })
  it('one of the recommendation comes before a nearer one that is not in use', () => {
    const used = option('used', 1, [lost(), finding(1)])
    const nearer = option('nearer', 2, [lost(3.2, 3.3), never(1)])
    expect(rowOf([used, nearer])).toMatchObject({
      by: 'nearest',
      equipment: 'used',
      meets: 'no',
      wouldMeet: false,
    })
  })
  it('a machine ruled out, or an ideal, never answers', () => {
    const out = option('out', 1, [lost()], { reasons: ruledOut })
    const ideal = option('ideal', null, [lost()])
    expect(rowOf([out, ideal])).toMatchObject({
      by: 'none',
      equipment: null,
      point: null,
      meets: 'cannot',
      places: [],
    })
  })
  it('a larger build that would meet it comes before a nearest that does not; its size is not met yet', () => {
    const build = option('build', 2, [finding(0)], { reasons: ruledOut, askFor })
    expect(rowOf([option('a', 1, [lost()]), build])).toMatchObject({
      by: 'build',
      equipment: 'build',
      wouldMeet: true,
      meets: 'no',
    })
    const expected = option('build', 2, [finding(0, { cautiousMm: 3.4 })], { reasons: ruledOut, askFor })
    expect(rowOf([option('a', 1, [lost()]), expected])).toMatchObject({ by: 'build', wouldMeet: true })
    const short = option('build', 2, [lost()], { reasons: ruledOut, askFor })
    expect(rowOf([option('a', 1, [lost(5, 6)]), short])).toMatchObject({ by: 'nearest', equipment: 'a' })
    expect(rowOf([short])).toMatchObject({ by: 'build', equipment: 'build', wouldMeet: false, meets: 'no' })
  })
  it('of builds that would meet it the later point, then the better rank', () => {
    const build = (name: string, rank: number) =>
      option(name, rank, [finding(0)], { reasons: ruledOut, askFor })
    expect(rowOf([build('early', 1)], [build('late', 1)])).toMatchObject({ equipment: 'late', point: 1 })
    expect(rowOf([build('b', 2), build('a', 1)]).equipment).toBe('a')
  })
  it('a build without a size asked leaves it open', () => {
    const unasked = finding(0, { mustFindMm: null })
    const build = option('build', 1, [unasked], { reasons: ruledOut, askFor })
    expect(rowOf([build])).toMatchObject({ by: 'build', meets: 'open' })
  })
  it('a machine without sizes that reacts to it answers last of all, if it takes the pack', () => {
    const still = (over = {}) => option('still', 2, [reacts], over)
    expect(rowOf([option('a', 1, [never()]), still()])).toMatchObject({
      by: 'reacts',
      equipment: 'still',
      meets: 'open',
    })
    expect(rowOf([option('a', 1, [lost()]), still()])).toMatchObject({ by: 'nearest' })
    expect(rowOf([still({ askFor, reasons: ruledOut })])).toMatchObject({ by: 'none' })
  })
})

describe('a size met too early', () => {
  const flow = [{ step: 'belt' }, { step: 'slicing', entersHere: ['quartz'] }, { step: 'end' }]
  const points = [
    { name: 'belt', stage: 'loose', massG: null, packsPerMin: null, parts: [] },
    { name: 'end', ...bag },
  ]
  const sliced = sampleBrief({ points, flow, contaminants: [{ material: 'quartz', mustFindMm: 3 }] })
  const line = { name: '', points: [0, 1] }
  const row = (early: Option, late: Option) => {
    const options = [[standing(early)], [standing(late)]]
    return rowsOf(sliced, line, combine(sliced, line, options), options)[0]!
  }
  it('says where, whatever comes nearest behind it, and only if it is met there by what may be used', () => {
    const late = option('late', 1, [lost()])
    expect(row(option('early', 1, [finding(0)]), late)).toMatchObject({
      by: 'nearest',
      point: 1,
      metTooEarlyAt: 0,
    })
    expect(row(option('early', 1, [lost()]), late).metTooEarlyAt).toBeNull()
    expect(row(option('early', 1, [finding(0)], { reasons: ruledOut }), late).metTooEarlyAt).toBeNull()
    expect(row(option('early', 1, [finding(0)]), option('late', 1, [finding(0)]))).toMatchObject({
      by: 'use',
      point: 1,
      meets: 'yes',
      metTooEarlyAt: 0,
    })
  })
})

describe('places left out', () => {
  const zone = (name: string, cautiousMm: number, canLieThere = true): Zone => ({
    name,
    state: 'degraded',
    share: null,
    pathMm: null,
    sizes: { bestMm: 1, expectedMm: 2, cautiousMm },
    canLieThere,
    settlesThere: false,
    why: '',
  })
  it('are those where the piece can lie and the size asked is not promised, each once, of what is partly met', () => {
    const zones = [
      zone('body', 2.8),
      zone('heel', 3.4),
      zone('heel', 3.5),
      zone('seam', 9, false),
      zone('rim', 3),
    ]
    expect(placesMissed(finding(0, { zones, meets: 'partly' }))).toEqual(['heel'])
    expect(placesMissed(finding(0, { zones, meets: 'yes' }))).toEqual([])
  })
})

describe('lines', () => {
  const named = (...names: string[]) => linesOf({ points: names.map((line) => ({ line })) } as never)
  it('are one without a name, else each name as it first comes, a point without a name on all of them', () => {
    expect(named('', '')).toEqual([{ name: '', points: [0, 1] }])
    expect(named('', 'B', 'A', 'B')).toEqual([
      { name: 'B', points: [0, 1, 3] },
      { name: 'A', points: [0, 2] },
    ])
  })
})

describe('contaminants that several machines find', () => {
  it('are those with an expected size in more than one, in their order, whatever a machine finds twice', () => {
    const both = { findings: [finding(2), finding(1), finding(0)] }
    const some = { findings: [finding(2), never(1), finding(0)] }
    expect(seenTwice([both, some])).toEqual([0, 2])
    expect(seenTwice([both, some, both])).toEqual([0, 1, 2])
    expect(seenTwice([{ findings: [finding(0), finding(0)] }])).toEqual([])
  })
})

describe('bone that belongs in the food', () => {
  const of = (material: string, boneIn: boolean, by: 'none' | 'nearest' = 'none') =>
    belongsInTheFood(
      sampleBrief({
        product: { food: 'chicken_breast', boneIn },
        contaminants: [{ material, mustFindMm: 3 }],
      }),
      { points: [0] },
      { contaminant: 0, by } as never,
    )
  it('is bone, of food that keeps its bones, and found by nothing', () => {
    expect([
      of('bone_poultry', true),
      of('bone_poultry', false),
      of('steel', true),
      of('bone_poultry', true, 'nearest'),
    ]).toEqual([true, false, false, false])
  })
  it('at every point of the line', () => {
    const points = [
      { name: 'birds', product: { boneIn: true } },
      { name: 'fillets', product: { boneIn: false } },
    ]
    const parted = { points, contaminants: [{ material: 'bone_poultry' }] } as never
    const row = { contaminant: 0, by: 'none' } as never
    expect(belongsInTheFood(parted, { points: [0, 1] }, row)).toBe(false)
    expect(belongsInTheFood(parted, { points: [0] }, row)).toBe(true)
  })
})

describe('sizes missed', () => {
  const told = (findings: readonly Finding[]) =>
    missedOf(findings).map(({ kind, finding: f, others, gapMm }) => [
      kind,
      f.contaminant,
      others,
      gapMm === null ? null : Number(gapMm.toFixed(6)),
    ])
  it('with their gap to the size asked: 4 and 3.4 against 3', () => {
    expect(told([finding(0), lost(4, 5)])).toEqual([['above', 0, [], 1]])
    expect(told([finding(1, { cautiousMm: 3.4 })])).toEqual([['promised-above', 1, [], 0.4]])
    expect(told([finding(1, { cautiousMm: null })])).toEqual([['unpromised', 1, [], null]])
  })
  it('at every size together where the reason is the same, and none that is met but for places or not asked', () => {
    const note = (c: number, words: string) => ({ ...never(c), note: words })
    expect(told([note(0, 'foil'), finding(1), note(2, 'foil'), note(3, 'lid')])).toEqual([
      ['none', 0, [2], null],
      ['none', 3, [], null],
    ])
    const dark = finding(0, { expectedMm: null, cautiousMm: null, meets: 'no' })
    expect(told([dark, finding(1, { mustFindMm: null })])).toEqual([['none', 0, [], null]])
    expect(told([finding(0, { meets: 'partly' }), finding(1, { mustFindMm: null })])).toEqual([])
  })
})
