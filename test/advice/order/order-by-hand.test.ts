import { describe, expect, it } from 'vitest'
import { closeCallOf } from '../../../src/advice/order/close-call.ts'
import { combine } from '../../../src/advice/order/combine.ts'
import { type Asked, contrastOf, contrastsAt, differ } from '../../../src/advice/order/contrast.ts'
import {
  isShown,
  isTriedOnly,
  orderAmong,
  sizeRatio,
  standing,
  tellingApart,
  trialStanding,
} from '../../../src/advice/order/order.ts'
import type { Standing } from '../../../src/advice/stages.ts'
import type { Finding } from '../../../src/contract/index.ts'
import { sampleBrief } from '../sample.ts'
import { bag, finding, option } from './options-by-hand.ts'

const brief = sampleBrief({
  points: [
    { name: 'first', ...bag },
    { name: 'second', ...bag },
  ],
  contaminants: [
    { material: 'quartz', mustFindMm: 3, severity: 5 },
    { material: 'ss316', mustFindMm: 3, severity: 3 },
    { material: 'wood', mustFindMm: 3, severity: 1 },
  ],
})
const lost = (c: number, over: Partial<Finding> = {}) => finding(c, { expectedMm: 4, cautiousMm: 5, ...over })
const maybe = (c: number) => finding(c, { cautiousMm: 3.4 })
const gaps = (c: number) => finding(c, { meets: 'partly' })
const never = (c: number) => finding(c, { bestMm: null, expectedMm: null, cautiousMm: null, meets: 'cannot' })
const placed = (name: string, findings: readonly Finding[], over: Partial<Standing> = {}): Standing => ({
  ...option(name, 1, [...findings]),
  excluded: false,
  ...over,
})
const trial = (sizeMm: number): Finding['demonstrated'] => ({
  point: 'first',
  equipment: 'any',
  contaminant: 0,
  sizeMm,
  basis: 'exact',
  packs: 29,
})
const part = (a: Standing, b: Standing, ...others: Standing[]) =>
  orderAmong(brief.contaminants, [a, b, ...others]).part(a, b)

describe('an option as the order sees it', () => {
  const reason = (over: object) => ({ type: 'excludes', contaminant: null, ...over }) as never
  it('is ruled out by a rule that speaks of the machine, not of one piece, of its build, or against it', () => {
    const of = (over: object, more = {}) =>
      standing(option('a', 1, [], { reasons: [reason(over)], ...more })).excluded
    expect(of({})).toBe(true)
    expect(of({ contaminant: 0 })).toBe(false)
    expect(of({ type: 'weakens' })).toBe(false)
    expect(of({}, { askFor: { widthMm: 1, heightMm: 1 } })).toBe(false)
  })
})

describe('trials', () => {
  it('show a size where it is no larger than asked, and count as tried otherwise', () => {
    expect(isShown(finding(0, { demonstrated: trial(3) }))).toBe(true)
    expect(isShown(finding(0, { demonstrated: trial(3.01) }))).toBe(false)
    expect(isShown(finding(0, { demonstrated: trial(3), mustFindMm: null }))).toBe(false)
    expect(isShown(finding(0))).toBe(false)
    expect(isTriedOnly(finding(0, { demonstrated: trial(3.01) }))).toBe(true)
    expect(isTriedOnly(finding(0, { measured: true }))).toBe(true)
    expect(isTriedOnly(finding(0, { measured: true, mustFindMm: null }))).toBe(false)
    expect(isTriedOnly(finding(0, { demonstrated: trial(3), measured: true }))).toBe(false)
    expect(isTriedOnly(finding(0))).toBe(false)
    const shown = finding(0, { demonstrated: trial(2) })
    expect(trialStanding([shown, shown, finding(1, { measured: true })])).toBe(-1)
  })
})

describe('what tells options apart', () => {
  const telling = (...options: Standing[]) => [...tellingApart(options)].sort()
  it('is what one that is not ruled out meets; where none meets anything, what is not impossible', () => {
    expect(telling(placed('a', [finding(0), lost(1)]), placed('b', [lost(0), maybe(1), never(2)]))).toEqual([
      0, 1,
    ])
    expect(
      telling(placed('a', [finding(0)]), placed('b', [lost(0), finding(1)], { excluded: true })),
    ).toEqual([0])
    expect(telling(placed('a', [lost(0), never(1)]))).toEqual([0])
    expect(telling(placed('a', [finding(0, { mustFindMm: null })]))).toEqual([])
  })
})

describe('where two part, step by step', () => {
  it('ruled out comes last, whatever it would meet', () => {
    const out = placed('out', [finding(0)], { excluded: true, burden: 1 })
    expect(part(placed('a', [lost(0)]), out)).toMatchObject({ step: 'excluded', sign: expect.any(Number) })
    expect(part(placed('a', [lost(0)]), out).sign).toBeLessThan(0)
  })
  it('by verdict: all promised, all expected, some, a build, none', () => {
    const ladder = [
      placed('promised', [finding(0), finding(1)]),
      placed('expected', [finding(0), maybe(1)]),
      placed('some', [finding(0), lost(1)], { verdict: 'conditional' }),
      placed('build', [finding(0), finding(1)], { verdict: 'no-build' }),
      placed('none', [lost(0), lost(1)], { verdict: 'not-suitable' }),
    ]
    const { compare } = orderAmong(brief.contaminants, ladder)
    expect(
      [...ladder]
        .reverse()
        .sort(compare)
        .map(({ equipment }) => equipment),
    ).toEqual(ladder.map(({ equipment }) => equipment))
    for (const [at, one] of ladder.entries())
      for (const other of ladder.slice(at + 1)) expect(part(one, other, ...ladder).step).toBe('verdict')
  })
  it('a verdict that follows from sizes names the gravest severity at which they part; one against them names none', () => {
    expect(part(placed('a', [finding(0), lost(1)]), placed('b', [finding(0), finding(1)]))).toMatchObject({
      step: 'verdict',
      severity: 3,
    })
    const capped = placed('capped', [finding(0), finding(1)], { verdict: 'conditional' })
    expect(part(placed('b', [finding(0), finding(1)]), capped)).toMatchObject({
      step: 'verdict',
      severity: null,
    })
    expect(part(placed('b', [maybe(0), finding(1)]), capped)).toMatchObject({
      step: 'verdict',
      severity: null,
    })
  })
  it('a machine capped by an open question stands behind one expected to do it, before one that does nothing', () => {
    const capped = placed('capped', [finding(0)], { verdict: 'conditional', burden: 1 })
    expect(part(placed('expected', [maybe(0)]), capped).sign).toBeLessThan(0)
    expect(part(capped, placed('none', [lost(0)], { verdict: 'not-suitable' })).sign).toBeLessThan(0)
  })
  it('of one class: unmet by severity, then trials, then the worst ratio, then burden, then places', () => {
    const some = { verdict: 'conditional' } as const
    const meets2 = placed('c', [finding(2)])
    const grave = placed('grave', [finding(0), lost(1), lost(2)], some)
    const light = placed('light', [lost(0), finding(1), finding(2)], some)
    expect(part(grave, light, meets2)).toMatchObject({ step: 'unmet', severity: 5 })
    expect(part(grave, light, meets2).sign).toBeLessThan(0)
    const tried = placed('tried', [finding(0), lost(1, { measured: true })], some)
    const ratio = placed('ratio', [finding(0), lost(1, { cautiousMm: 9 })], some)
    const other = placed('other', [lost(0), finding(1)], some)
    expect(part(tried, ratio, other)).toMatchObject({ step: 'trial', sign: 1 })
    expect(part(placed('near', [finding(0), lost(1)], some), ratio, other).step).toBe('ratio')
    const dear = placed('dear', [finding(0), lost(1)], { ...some, burden: 5 })
    expect(part(placed('near', [finding(0), lost(1)], some), dear, other)).toMatchObject({
      step: 'burden',
      sign: -2,
    })
    const holes = placed('holes', [gaps(0), lost(1)], some)
    expect(part(placed('near', [finding(0), lost(1)], some), holes, other)).toMatchObject({
      step: 'partly',
      sign: -1,
    })
  })
  it('with nothing unmet: trials, burden, places, and only then the ratio', () => {
    const plain = placed('plain', [finding(0)])
    expect(
      part(placed('shown', [finding(0, { demonstrated: trial(3) })], { burden: 5 }), plain),
    ).toMatchObject({
      step: 'trial',
      sign: -1,
    })
    expect(part(placed('dear', [finding(0, { cautiousMm: 2.1 })], { burden: 4 }), plain).step).toBe('burden')
    expect(part(placed('holes', [gaps(0)]), placed('fine', [finding(0, { cautiousMm: 2.9 })])).step).toBe(
      'partly',
    )
    expect(part(placed('smaller', [finding(0, { cautiousMm: 2.1 })]), plain)).toMatchObject({ step: 'ratio' })
    expect(part(plain, placed('same', [finding(0)]))).toEqual({ step: 'nothing', severity: null, sign: 0 })
  })
  it('a ratio that reads the same to two figures decides nothing', () => {
    const at = (cautiousMm: number) => placed('x', [finding(0, { cautiousMm })])
    expect(part(at(2.8), at(2.801)).step).toBe('nothing')
    expect(part(at(2.8), at(2.86)).step).toBe('ratio')
  })
  it('the worst ratio is the largest of what tells apart, 0 where nothing does', () => {
    const order = orderAmong(brief.contaminants, [placed('a', [finding(0), finding(1)])])
    expect(order.worstRatio({ findings: [finding(0), lost(1), never(2)] })).toBeCloseTo(5 / 3, 12)
    expect(order.worstRatio({ findings: [never(2)] })).toBe(0)
    expect(order.worstRatio({ findings: [never(0)] })).toBe(Number.POSITIVE_INFINITY)
    expect(order.unmet({ findings: [lost(0), maybe(1), lost(2)] })).toEqual([0, 1])
    expect(order.unmet({ findings: [lost(0), maybe(1)] }, 3)).toEqual([1])
    expect(sizeRatio(finding(0, { cautiousMm: 1.5 }))).toBe(0.5)
  })
})

describe('sizes told apart', () => {
  it('by more than 2 % of the larger', () => {
    expect([
      differ(2, 2.04),
      differ(2, 2.05),
      differ(2.05, 2),
      differ(null, null),
      differ(null, 2),
      differ(2, null),
    ]).toEqual([false, true, true, false, true, true])
  })
})

describe('two side by side', () => {
  const asked = (rule: string, equipment: string, over: Partial<Asked> = {}): Asked => ({
    rule,
    equipment,
    title: rule,
    type: 'weakens',
    contaminant: null,
    outcome: 'fired',
    ...over,
  })
  const a = placed('a', [finding(0), finding(1)], { burden: 2 })
  const b = placed('b', [finding(0, { expectedMm: 2.5 }), finding(1)], { burden: 3, rank: 2 })
  const rulesOf = (...rules: Asked[]) =>
    contrastOf(brief.contaminants, rules, [a, b], a, b).rules.map(({ rule, outcomes }) => [rule, outcomes])
  it('shows what one says and the other does not; an argument of one alone, and nothing quiet', () => {
    expect(
      rulesOf(
        asked('said', 'a'),
        asked('said', 'b', { outcome: 'not-fired' }),
        asked('open', 'a', { outcome: 'unknown' }),
        asked('open', 'b', { outcome: 'not-fired' }),
        asked('alike', 'a'),
        asked('alike', 'b'),
        asked('quiet', 'a', { outcome: 'not-fired' }),
        asked('quiet', 'b', { outcome: 'not-applicable' }),
        asked('argues', 'b'),
        asked('warns', 'b', { type: 'warns' }),
        asked('elsewhere', 'c'),
      ),
    ).toEqual([
      ['argues', [null, 'fired']],
      ['open', ['unknown', 'not-fired']],
      ['said', ['fired', 'not-fired']],
    ])
  })
  it('keeps apart what is asked of each contaminant, and leaves out what stands with sizes and changes', () => {
    expect(
      rulesOf(
        asked('piece', 'a', { contaminant: 0 }),
        asked('piece', 'b', { contaminant: 1 }),
        ...(['notes', 'alters', 'parts', 'misses', 'judges'] as const).map((type) =>
          asked(type, 'a', { type }),
        ),
      ),
    ).toEqual([
      ['piece', ['fired', null]],
      ['piece', [null, 'fired']],
    ])
  })
  it('shows verdict, burden and sizes only where they differ', () => {
    const contrast = contrastOf(brief.contaminants, [], [a, b], a, b)
    expect(contrast).toMatchObject({ first: 'a', second: 'b', verdict: null, burden: [2, 3] })
    expect(contrast.sizes).toEqual([
      { contaminant: 0, meets: ['yes', 'yes'], expectedMm: [2, 2.5], cautiousMm: [2.8, 2.8] },
    ])
    const holes = placed('h', [gaps(0)], { burden: 2, verdict: 'conditional' })
    expect(contrastOf(brief.contaminants, [], [a, holes], a, holes)).toMatchObject({
      verdict: ['worth-a-test', 'conditional'],
      burden: null,
      sizes: [{ contaminant: 0, meets: ['yes', 'partly'] }],
    })
  })
  it('nothing parts two that are both out, nor one in the order and an ideal; one that is out parts from one that is not', () => {
    const parting = (x: Standing, y: Standing) => contrastOf(brief.contaminants, [], [x, y], x, y).parting
    const out = placed('out', [finding(0)], { excluded: true })
    const none = placed('none', [lost(0)], { verdict: 'not-suitable' })
    expect(parting(out, none)).toBeNull()
    expect(parting(a, placed('ideal', [finding(0)], { rank: null }))).toBeNull()
    expect(parting(a, out)).toMatchObject({ step: 'excluded' })
    expect(parting(placed('i', [], { rank: null }), placed('j', [], { rank: null }))).not.toBeNull()
  })
  it('with what each leaves unmet, was shown, tried, and its worst size', () => {
    const shown = placed('shown', [finding(0, { demonstrated: trial(3) }), lost(1)])
    const tried = placed('tried', [lost(0, { measured: true }), finding(1)])
    expect(contrastOf(brief.contaminants, [], [shown, tried], shown, tried).parting).toMatchObject({
      step: 'unmet',
      severity: 5,
      unmet: [[], [0]],
      shown: [[0], []],
      tried: [[], [0]],
      worst: [
        { ratio: 5 / 3, contaminant: 1 },
        { ratio: 5 / 3, contaminant: 0 },
      ],
    })
  })
  it('is the one in use, else the first, against every other ranked one; none where that one is out', () => {
    const ideal = placed('ideal', [finding(0)], { rank: null })
    const pairs = (options: Standing[], inUse: string[] = []) =>
      contrastsAt(brief.contaminants, [], options, inUse).map(({ first, second }) => [first, second])
    expect(pairs([a, ideal, b])).toEqual([['a', 'b']])
    expect(pairs([a, b], ['b'])).toEqual([['b', 'a']])
    expect(pairs([placed('out', [lost(0)], { verdict: 'not-suitable' }), b])).toEqual([])
    expect(pairs([placed('out', [finding(0)], { excluded: true }), b])).toEqual([])
    expect(pairs([ideal])).toEqual([])
  })
})

describe('the smallest set, by its costs one after the other', () => {
  const line = { name: '', points: [0, 1] }
  const uses = (first: Standing[], second: Standing[] = []) =>
    combine(brief, line, [first, second]).uses.map(({ point, option: { equipment }, contaminants }) => [
      point,
      equipment,
      contaminants,
    ])
  it('nothing asked, nothing met', () => {
    const unasked = sampleBrief({ contaminants: [{ material: 'quartz', mustFindMm: null }] })
    expect(combine(unasked, { name: '', points: [0] }, [[placed('a', [finding(0)])]])).toEqual({
      kind: 'nothing-asked',
      uses: [],
      seenTwice: [],
    })
    expect(combine(brief, line, [[placed('a', [lost(0)])], []])).toMatchObject({
      kind: 'nothing-met',
      uses: [],
    })
  })
  it('a promise comes before an expectation, a graver one before a lighter one', () => {
    const expected = placed('expected', [maybe(0), maybe(1)], { burden: 1 })
    const promised = placed('promised', [finding(0), finding(1)], { burden: 5, rank: 2 })
    expect(uses([expected, promised])).toEqual([[0, 'promised', [0, 1]]])
  })
  it('trials before places left out, places before burden, burden before rank, rank before the later point', () => {
    const shown = finding(0, { demonstrated: trial(3), meets: 'partly' })
    expect(
      uses([placed('shown', [shown], { burden: 5 })], [placed('plain', [finding(0)], { burden: 1 })]),
    ).toEqual([[0, 'shown', [0]]])
    expect(
      uses([placed('fine', [finding(0)], { burden: 5 })], [placed('holes', [gaps(0)], { burden: 1 })]),
    ).toEqual([[0, 'fine', [0]]])
    expect(
      uses([placed('light', [finding(0)], { burden: 2, rank: 3 })], [placed('heavy', [finding(0)])]),
    ).toEqual([[0, 'light', [0]]])
    expect(uses([placed('first', [finding(0)])], [placed('third', [finding(0)], { rank: 3 })])).toEqual([
      [0, 'first', [0]],
    ])
    expect(uses([placed('early', [finding(0)])], [placed('late', [finding(0)])])).toEqual([[1, 'late', [0]]])
  })
  it('each is there for what it meets best; of two alike the later one does it', () => {
    const both = placed('both', [finding(0), gaps(1), never(2)])
    const later = placed('later', [never(0), finding(1), finding(2)], { rank: 2 })
    expect(uses([both], [later])).toEqual([
      [0, 'both', [0]],
      [1, 'later', [1, 2]],
    ])
  })
})

describe('a close call', () => {
  const sure = placed('sure', [finding(0), finding(1)], { burden: 4, verdict: 'best-fit' })
  it('is looked for from cautious down to expected, and names what turns', () => {
    const light = placed('light', [finding(0), maybe(1)], { burden: 2, rank: 2 })
    expect(closeCallOf(brief, [sure, light])).toMatchObject({
      first: { equipment: 'sure' },
      second: { equipment: 'light' },
      contaminants: [1],
      turned: true,
    })
  })
  it('is none for one option, one that is out, too small or not suitable', () => {
    const light = (over: Partial<Standing>) =>
      placed('light', [finding(0), maybe(1)], { burden: 2, rank: 2, ...over })
    expect(closeCallOf(brief, [sure])).toBeNull()
    expect(closeCallOf(brief, [])).toBeNull()
    for (const over of [
      { excluded: true },
      { rank: null },
      { askFor: { widthMm: 1, heightMm: 1 } },
      { verdict: 'not-suitable' },
    ] as const)
      expect(closeCallOf(brief, [sure, light(over)])).toBeNull()
  })
  it('without a promise takes one and a half times the expected: 2.1 would be promised at 3.15, and comes to 3 on the way', () => {
    const light = placed('light', [finding(0), finding(1, { expectedMm: 2.1, cautiousMm: null })], {
      burden: 2,
      rank: 2,
    })
    expect(closeCallOf(brief, [sure, light])).toMatchObject({ contaminants: [1], turned: true })
  })
})
