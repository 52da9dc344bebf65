import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { askerOf } from '../../../src/advice/decide/ask-records.ts'
import { withoutRuledOut } from '../../../src/advice/decide/ruled-out.ts'
import type { Detector, PlacedOutcome } from '../../../src/advice/stages.ts'
import type { Fact } from '../../../src/contract/index.ts'
import { RULE, ruleFolder } from '../book/rule-folder.ts'
import { finding } from '../order/options-by-hand.ts'

const detector = (id: string, ...contaminants: number[]): Detector =>
  ({ linedUp: { machine: { id } }, findings: contaminants.map((c) => finding(c)) }) as never
const ruling = (over: Partial<PlacedOutcome> = {}) =>
  ({
    outcome: 'fired',
    type: 'excludes',
    pointIndex: 0,
    equipment: 'a',
    contaminant: 1,
    text: 'Bone belongs there.',
    ...over,
  }) as PlacedOutcome

describe('a rule that excludes one piece at one machine', () => {
  const line = [[detector('a', 0, 1), detector('b', 0, 1)], [detector('a', 0, 1)]]
  const told = (...outcomes: PlacedOutcome[]) =>
    withoutRuledOut(line, outcomes).map((there) =>
      there.map(({ findings }) => findings.map(({ meets, note }) => `${meets} ${note}`.trim())),
    )
  it('takes away every size it has there, and nowhere else, and says why in the words of the rules', () => {
    expect(told(ruling(), ruling({ text: 'And the cut decides.' }))).toEqual([
      [
        ['yes', 'cannot Bone belongs there. And the cut decides.'],
        ['yes', 'yes'],
      ],
      [['yes', 'yes']],
    ])
    expect(withoutRuledOut(line, [ruling()])[0]![0]!.findings[1]).toMatchObject({
      contaminant: 1,
      mustFindMm: 3,
      bestMm: null,
      bestRangeMm: null,
      extrapolated: null,
      halfMm: null,
      expectedMm: null,
      sureMm: null,
      cautiousMm: null,
      chanceAtMustFind: null,
      chanceAnyOrientation: null,
      curve: { sizesMm: [], chance: [] },
      zones: [],
      widest: '',
    })
  })
  it('leaves all as it is where nothing rules a piece out', () => {
    const quiet = [
      ruling({ outcome: 'not-fired' }),
      ruling({ type: 'weakens' }),
      ruling({ equipment: null }),
      ruling({ contaminant: null }),
    ]
    expect(withoutRuledOut(line, quiet)).toBe(line)
    expect(told(ruling({ pointIndex: 2 }))).toEqual(told())
  })
})

const fact = (id: string, scope: string, value: Fact['value']): Fact => ({
  id,
  scope,
  label: id,
  unit: id === 'point.heightMm' ? 'mm' : '',
  origin: 'entered',
  value,
})
const rule = (id: string, ground: string, conditions: object, type: string, params: object = {}) => ({
  ...RULE,
  id,
  appliesTo: [ground],
  conditions,
  event: { type, params: { text: `Said of ${ground} by ${id}.`, ...params } },
})
const tall = { fact: 'point.heightMm', operator: 'greaterThan', value: { fact: 'threshold.high' } }
const glass = { fact: 'contaminant.kind', operator: 'equal', value: 'glass' }
const eu = { fact: 'brief.market', operator: 'equal', value: 'EU' }
const book = loadRulebook(
  [],
  ruleFolder({
    rules: [
      RULE,
      rule(
        'nothing-found',
        'change',
        { all: [{ fact: 'change.kind', operator: 'equal', value: 'none' }, eu] },
        'alters',
      ),
      rule(
        'found-a-lever',
        'change',
        { all: [{ fact: 'change.kind', operator: 'equal', value: 'lever' }] },
        'alters',
      ),
      rule('tall-check', 'check', { all: [tall, eu] }, 'records', { slot: 'pieces', about: 'height' }),
      rule('glass-control', 'control', { all: [glass, tall] }, 'records', { slot: 'limit' }),
      rule('glass-hazard', 'hazard', { all: [glass, eu] }, 'records', { slot: 'note' }),
    ],
  }),
)
const KNOWN = [
  fact('brief.market', 'brief', 'EU'),
  fact('point.heightMm', 'p0', 20),
  fact('point.heightMm', 'p1', 60),
  fact('contaminant.kind', 'c0', 'steel'),
  fact('contaminant.kind', 'c1', 'glass'),
]

describe('the rules asked of the record, over what is known of the place', () => {
  const at = { equipment: 'coil', contaminant: null } as const
  it('a check knows the brief and its point, and says where its words stand', async () => {
    const { ask, outcomes } = askerOf(book, KNOWN)
    expect(await ask({ ground: 'check', pointIndex: 0, ...at }, {})).toEqual([])
    const [said] = await ask({ ground: 'check', pointIndex: 1, ...at }, {})
    expect(said).toMatchObject({ rule: 'tall-check', slot: 'pieces', about: 'height', pointIndex: 1 })
    expect(outcomes.map(({ outcome, pointIndex, line }) => [outcome, pointIndex, line])).toEqual([
      ['not-fired', 0, null],
      ['fired', 1, null],
    ])
  })
  it('a control knows its contaminant too; a hazard knows its contaminant and no point', async () => {
    const { ask, outcomes } = askerOf(book, KNOWN)
    const control = (pointIndex: number | null, contaminant: number) =>
      ask({ ground: 'control', pointIndex, equipment: 'coil', contaminant }, {})
    expect((await control(1, 1)).map((one) => one.rule)).toEqual(['glass-control'])
    expect(await control(1, 0)).toEqual([])
    expect(await control(0, 1)).toEqual([])
    const hazard = (contaminant: number) =>
      ask({ ground: 'hazard', pointIndex: 1, equipment: null, contaminant }, {})
    expect((await hazard(1)).map((one) => one.rule)).toEqual(['glass-hazard'])
    expect(await hazard(0)).toEqual([])
    expect(outcomes.at(-1)!.conditions.children!.map((one) => one.fact)).toEqual([
      'contaminant.kind',
      'brief.market',
    ])
  })
  it('what was searched for knows the brief alone; its facts stand under the path of the value', async () => {
    const { askFound, facts, outcomes } = askerOf(book, KNOWN)
    const found = {
      ground: 'change',
      pointIndex: 1,
      contaminant: 1,
      equipment: 'coil',
      beside: 'points.1.x',
    } as const
    const said = await askFound(found, { 'change.kind': 'none', 'change.missed': 2 })
    expect(said.map((one) => [one.rule, one.beside, one.line])).toEqual([
      ['nothing-found', 'points.1.x', null],
    ])
    expect([...facts.keys()]).toEqual([
      'p1.coil.c1.with.points.1.x change.kind',
      'p1.coil.c1.with.points.1.x change.missed',
    ])
    expect(facts.get('p1.coil.c1.with.points.1.x change.missed')).toMatchObject({
      id: 'change.missed',
      value: 2,
      unit: '',
      origin: 'computed',
      label: 'sizes missed that changes were searched for',
    })
    expect(outcomes.map(({ rule: id, outcome }) => [id, outcome])).toEqual([
      ['found-a-lever', 'not-fired'],
      ['nothing-found', 'fired'],
    ])
  })
  it('a fact nobody has listed is an error that says where to list it', async () => {
    await expect(
      askerOf(book, KNOWN).ask({ ground: 'check', pointIndex: 1, ...at }, { 'check.nonsense': 1 }),
    ).rejects.toThrow('no fact "check.nonsense" in the fact list; add it there first')
  })
})
