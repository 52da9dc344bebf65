import { describe, expect, it } from 'vitest'
import { type Candidate, outcomesFor, rankOptions } from '../../../src/advice/order/rank.ts'
import type { PlacedOutcome } from '../../../src/advice/stages.ts'
import type { Finding } from '../../../src/contract/index.ts'
import { coilAssessment, SAMPLE_MACHINE, sampleAssessment, sampleBrief } from '../sample.ts'
import { finding } from './options-by-hand.ts'

const brief = sampleBrief({
  contaminants: [
    { material: 'quartz', mustFindMm: 3 },
    { material: 'ss316', mustFindMm: 3 },
  ],
})

const outcome = (rule: string, over: Partial<PlacedOutcome> = {}) =>
  ({
    rule,
    type: 'excludes',
    outcome: 'fired',
    open: false,
    contaminant: null,
    pointIndex: 0,
    equipment: 'x',
    ...over,
  }) as PlacedOutcome

interface Over {
  readonly outcomes?: readonly PlacedOutcome[]
  readonly burden?: number
  readonly ranked?: boolean
  readonly assessed?: Candidate['assessed']
  readonly label?: string
}

const xray = {
  family: 'xray',
  pointIndex: 0,
  machine: SAMPLE_MACHINE,
  assessment: sampleAssessment(),
} as const

const candidate = (id: string, findings: readonly Finding[], over: Over = {}): Candidate => {
  const { label, ...machine } = SAMPLE_MACHINE
  return {
    linedUp: {
      machine: { ...machine, id, ...(over.label ? { label: over.label } : {}) },
      ranked: over.ranked ?? true,
      burden: over.burden ?? 3,
    },
    assessed: over.assessed ?? xray,
    findings,
    outcomes: over.outcomes ?? [],
  }
}

const rank = (...candidates: Candidate[]) => rankOptions(brief, 0, candidates)
const verdicts = (...candidates: Candidate[]) =>
  rank(...candidates).map((o) => [o.equipment, o.rank, o.verdict])
const both = (over: Partial<Finding> = {}) => [finding(0, over), finding(1, over)]
const lost = (c: number) => finding(c, { expectedMm: 4, cautiousMm: 5 })
const never = (c: number) => finding(c, { bestMm: null, expectedMm: null, cautiousMm: null, meets: 'cannot' })

describe('the outcomes of an option', () => {
  it('are those that fired for it at its point', () => {
    const mine = outcome('mine')
    const others = [
      outcome('quiet', { outcome: 'not-fired' }),
      outcome('there', { pointIndex: 1 }),
      outcome('hers', { equipment: 'y' }),
    ]
    expect(outcomesFor([...others, mine], 0, 'x')).toEqual([mine])
  })
})

describe('verdicts and ranks', () => {
  it('the best fit meets everything, comes first and stands alone; what meets it too is behind it', () => {
    const [best, second] = rank(
      candidate('dear', both(), { burden: 4 }),
      candidate('light', both(), { burden: 2 }),
    )
    expect(best).toMatchObject({ equipment: 'light', rank: 1, verdict: 'best-fit', behind: null })
    expect(second).toMatchObject({
      equipment: 'dear',
      rank: 2,
      verdict: 'worth-a-test',
      behind: { burden: 2, smallerByMm: null },
    })
  })
  it('what is behind says by how much it finds smaller, the most of it, to a hundredth, and only what can be told apart', () => {
    const smaller = [finding(0, { expectedMm: 1.5 }), finding(1, { expectedMm: 0.764 })]
    const dear = (findings: Finding[]) =>
      rank(candidate('light', both(), { burden: 2 }), candidate('dear', findings, { burden: 4 }))[1]!.behind
    expect(dear(smaller)).toEqual({ burden: 2, smallerByMm: 1.24 })
    expect(dear([finding(0, { expectedMm: 1.97 }), finding(1)])).toEqual({ burden: 2, smallerByMm: null })
    expect(dear([finding(0, { expectedMm: 2.2 }), finding(1)])).toEqual({ burden: 2, smallerByMm: null })
  })
  it('without a best fit nothing is behind it: one expected to meet all is worth a test, one that meets some conditional', () => {
    const expected = candidate('expected', both({ cautiousMm: 3.4 }))
    const some = candidate('some', [finding(0), lost(1)])
    const nothing = candidate('nothing', [lost(0), lost(1)])
    expect(verdicts(nothing, some, expected)).toEqual([
      ['expected', 1, 'worth-a-test'],
      ['some', 2, 'conditional'],
      ['nothing', 3, 'not-suitable'],
    ])
    expect(rank(nothing, some, expected).map(({ behind }) => behind)).toEqual([null, null, null])
  })
  it('an ideal has no rank, stands last and is never the best fit', () => {
    expect(
      verdicts(candidate('ideal', both(), { ranked: false, burden: 1 }), candidate('real', both())),
    ).toEqual([
      ['real', 1, 'best-fit'],
      ['ideal', null, 'conditional'],
    ])
    expect(verdicts(candidate('ideal', both(), { ranked: false }))).toEqual([['ideal', null, 'conditional']])
  })
  it('what is asked for and open caps a machine at conditional, and stands behind one that is free of it, whatever it costs', () => {
    const open = candidate('open', both(), {
      burden: 1,
      outcomes: [outcome('ask', { type: 'requires', open: true })],
    })
    expect(verdicts(open)).toEqual([['open', 1, 'conditional']])
    const [first, second] = rank(open, candidate('free', both(), { burden: 4 }))
    expect([first!.equipment, first!.verdict]).toEqual(['free', 'best-fit'])
    expect([second!.equipment, second!.verdict]).toEqual(['open', 'conditional'])
  })
  it('carries name, family and burden; without a label the id', () => {
    expect(rank(candidate('a', both(), { label: 'machine A', burden: 4 }))[0]).toMatchObject({
      equipment: 'a',
      label: 'machine A',
      family: 'xray',
      burden: 4,
      excluded: false,
      excludedBy: null,
      askFor: null,
      onlyTheFilm: false,
    })
    expect(rank(candidate('a', both()))[0]!.label).toBe('a')
  })
})

describe('a machine ruled out', () => {
  const size = (rule: string) => outcome(rule)
  it('by a rule of its own is not suitable; by the size of the pack alone it is a build to ask for', () => {
    const [out] = rank(candidate('x', both(), { outcomes: [outcome('foil')] }))
    expect(out).toMatchObject({ excluded: true, verdict: 'not-suitable', askFor: null })
    expect(out!.excludedBy!.rule).toBe('foil')
    for (const rule of ['too-wide', 'too-high', 'fan-too-wide']) {
      const [small] = rank(candidate('x', both(), { outcomes: [size(rule)] }))
      expect(small).toMatchObject({
        excluded: false,
        verdict: 'no-build',
        askFor: { widthMm: 200, heightMm: 60 },
      })
      expect(small!.excludedBy!.rule).toBe(rule)
    }
  })
  it('by both is ruled out by its own rule, whichever comes first', () => {
    const [both_] = rank(candidate('x', both(), { outcomes: [size('too-wide'), outcome('foil')] }))
    expect(both_).toMatchObject({ excluded: true, verdict: 'not-suitable', askFor: null })
    expect(both_!.excludedBy!.rule).toBe('foil')
  })
  it('a build too small that would meet nothing is not suitable, though one may ask for it', () => {
    const [small] = rank(candidate('x', [lost(0), lost(1)], { outcomes: [size('too-high')] }))
    expect(small).toMatchObject({ verdict: 'not-suitable', excluded: false, askFor: { widthMm: 200 } })
  })
  it('is not by a rule that speaks of one piece, or of no exclusion', () => {
    const quiet = [outcome('piece', { contaminant: 0 }), outcome('warning', { type: 'weakens' })]
    expect(rank(candidate('x', both(), { outcomes: quiet }))[0]).toMatchObject({
      excluded: false,
      excludedBy: null,
      verdict: 'best-fit',
    })
  })
})

describe('machines that computed sizes do not settle', () => {
  const film = { part: { material: 'metallised_film', mm: 0.03, place: 'wrap' }, film: true } as never
  const sheet = { part: { material: 'aluminium_foil', mm: 0.02, place: 'wrap' }, film: false } as never
  const coil = (over: Parameters<typeof coilAssessment>[0]): Candidate['assessed'] => ({
    family: 'coil',
    pointIndex: 0,
    machine: { id: 'c', family: 'coil', frequenciesKHz: [300] },
    assessment: coilAssessment({ productSignal: false, layers: [film], ...over }),
  })
  const wrapped = (
    over: Parameters<typeof coilAssessment>[0],
    findings: readonly Finding[],
    more: Over = {},
  ) => rank(candidate('c', findings, { assessed: coil(over), ...more }))[0]!
  const hidden = [lost(0), never(1)]
  it('film alone in the way of dry food makes it conditional, and says so', () => {
    expect(wrapped({}, hidden)).toMatchObject({ verdict: 'conditional', onlyTheFilm: true })
  })
  it.each([
    ['the food signals too', { productSignal: true }, hidden],
    ['there is no layer', { layers: [] }, hidden],
    ['a sheet of metal is among the layers', { layers: [film, sheet] }, hidden],
    [
      'without the film it would find nothing asked',
      {},
      [finding(0, { bestMm: 3.1, expectedMm: 4, cautiousMm: 5 }), never(1)],
    ],
    ['nothing is asked', {}, [finding(0, { mustFindMm: null, meets: 'cannot', expectedMm: null }), never(1)]],
  ] as const)('but not where %s', (_, over, findings) => {
    expect(wrapped(over, findings)).toMatchObject({ verdict: 'not-suitable', onlyTheFilm: false })
  })
  it('the size asked itself counts as found without the film', () => {
    expect(wrapped({}, [finding(0, { bestMm: 3, expectedMm: 4, cautiousMm: 5 }), never(1)]).onlyTheFilm).toBe(
      true,
    )
  })
  it('film is not what stands in the way where something asked is met, or where a rule rules it out', () => {
    expect(wrapped({}, [finding(0), never(1)])).toMatchObject({ verdict: 'conditional', onlyTheFilm: false })
    expect(wrapped({}, hidden, { outcomes: [outcome('foil')] })).toMatchObject({
      verdict: 'not-suitable',
      onlyTheFilm: false,
    })
    expect(wrapped({}, hidden, { outcomes: [outcome('too-wide')] }).onlyTheFilm).toBe(false)
  })
  it('a detector without sizes that reacts to all is worth a test, an unranked one conditional, one that reacts to some conditional', () => {
    const still: Candidate['assessed'] = {
      family: 'static-field',
      pointIndex: 0,
      machine: { id: 's', family: 'static-field' },
      assessment: coilAssessment(),
    }
    const reacts = (c: number) => finding(c, { expectedMm: null, cautiousMm: null, meets: 'open' })
    const of = (findings: readonly Finding[], more: Over = {}) =>
      rank(candidate('s', findings, { assessed: still, ...more }))[0]!.verdict
    expect(of([reacts(0), reacts(1)])).toBe('worth-a-test')
    expect(of([reacts(0), reacts(1)], { ranked: false })).toBe('conditional')
    expect(of([reacts(0), never(1)])).toBe('conditional')
    expect(of([reacts(0), reacts(1)], { outcomes: [outcome('iron')] })).toBe('not-suitable')
    expect(rank(candidate('x', [reacts(0), reacts(1)]))[0]!.verdict).toBe('conditional')
  })
})
