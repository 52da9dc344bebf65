import { beforeAll, describe, expect, it } from 'vitest'
import { aMachine } from '../../src/advice/say/machine-words.ts'
import { advise } from '../../src/advise.ts'
import { demos } from '../../src/brief/demos.ts'
import type { Advice, AnswerRow, Option } from '../../src/contract/index.ts'
import { briefOf, QUICK } from '../advice/demo.ts'
import { sweep } from '../sweep.ts'
import { BRIEFS } from './briefs/expert.ts'
import { UNSEEN } from './briefs/unseen.ts'

/** Two lines at once: what a jar needs and what a pouch needs are two answers. */
const SOUP = {
  title: 'Vegetable soup in jars and in pouches',
  product: { food: 'tomato_sauce' },
  points: [
    {
      name: 'capped jars',
      line: 'jars',
      stage: 'packed',
      heightMm: 120,
      widthMm: 80,
      lengthMm: 80,
      outline: 'cylinder',
      massG: 500,
      parts: [
        { material: 'glass_container', mm: 2.5, place: 'wall' },
        { material: 'steel', mm: 0.2, place: 'closure' },
      ],
      speedMPerMin: 20,
      packsPerMin: 100,
    },
    {
      name: 'sealed pouches',
      line: 'pouches',
      stage: 'packed',
      heightMm: 25,
      widthMm: 150,
      lengthMm: 200,
      massG: 500,
      parts: [{ material: 'aluminium_foil', mm: 0.009, place: 'wrap' }],
      speedMPerMin: 20,
      packsPerMin: 60,
    },
  ],
  contaminants: [
    { material: 'glass_container', mustFindMm: 4 },
    { material: 'ss316', mustFindMm: 2 },
    { material: 'wood', mustFindMm: 5 },
  ],
}

const ALL = Object.entries<unknown>({
  ...Object.fromEntries(demos.map(({ id, brief }) => [`demo ${id}`, brief])),
  ...BRIEFS,
  ...UNSEEN,
  SOUP,
})

/** Every third with every run, all of them with `npm run sweeps`; two lines at once always. */
const STEP = sweep(3, 1)
const LOOKED_AT = ALL.filter(([name], at) => at % STEP === 0 || name === 'SOUP')

const PLACE: readonly Option['verdict'][] = [
  'best-fit',
  'worth-a-test',
  'conditional',
  'no-build',
  'not-suitable',
]
const isPromised = ({ meets }: Pick<AnswerRow, 'meets'>) => meets === 'yes' || meets === 'partly'

describe.each(LOOKED_AT)('the answer to %s', (_, given) => {
  let advice: Advice
  beforeAll(async () => {
    advice = await advise(briefOf(structuredClone(given)), { ...QUICK, withoutRecords: true })
  }, 120_000)
  const rowsOf = (line: string) => advice.answer.rows.filter((row) => row.line === line)
  const lines = () => [...new Set(advice.answer.rows.map(({ line }) => line))]
  const optionOf = ({ point, equipment }: Pick<AnswerRow, 'point' | 'equipment'>) =>
    advice.points.find(({ name }) => name === point)?.options.find((option) => option.equipment === equipment)

  it('has a row for every contaminant of every line, with something left to do or done', () => {
    for (const line of lines()) {
      const rows = rowsOf(line)
      expect(rows.map(({ contaminant }) => contaminant).sort((a, b) => a - b)).toEqual([
        ...advice.brief.contaminants.keys(),
      ])
      for (const { left, meets } of rows) {
        expect(left.rule).not.toBe('')
        expect(left.kind === 'done').toBe(meets === 'yes')
      }
    }
  })
  it('says the same sizes as the table of the machine it names', () => {
    for (const row of advice.answer.rows) {
      const finding = optionOf(row)?.findings.find(({ contaminant }) => contaminant === row.contaminant)
      expect([row.promisedMm, row.expectedMm]).toEqual([
        finding?.cautiousMm ?? null,
        finding?.expectedMm ?? null,
      ])
      if (isPromised(row) || row.meets === 'maybe') expect(row.meets).toBe(finding?.meets)
    }
  })
  it('says the same as the recommendation: met by a machine in use, or unmet with what is achievable', () => {
    const { uses, unmet } = advice.combination
    for (const row of advice.answer.rows) {
      const use = uses.find(
        ({ line, contaminants }) => line === row.line && contaminants.includes(row.contaminant),
      )
      const missing = unmet.find(
        ({ line, contaminant }) => line === row.line && contaminant === row.contaminant,
      )
      if (use) {
        expect([row.point, row.equipment]).toEqual([use.point, use.equipment])
        expect(use.expected.includes(row.contaminant)).toBe(row.meets === 'maybe')
        expect(isPromised(row) || row.meets === 'maybe').toBe(true)
      } else expect(isPromised(row) || row.meets === 'maybe').toBe(false)
      expect(missing !== undefined).toBe(use === undefined && row.askedMm !== null)
      if (missing)
        expect(missing).toMatchObject({
          achievableMm: row.promisedMm,
          equipment: row.equipment,
          point: row.point,
          why: row.left.text,
        })
    }
  })
  it('counts in the first sentence what the rows hold, and names every machine in use', () => {
    expect(advice.summary).toBe(advice.answer.sentence)
    for (const line of lines()) {
      const parts = advice.answer.parts.filter((part) => part.line === line)
      const asked = rowsOf(line).filter(({ askedMm }) => askedMm !== null)
      const promised = asked.filter(isPromised).length
      const said = parts.map(({ text }) => text).join(' ')
      expect(advice.answer.sentence).toContain(said)
      const [, some, of] = /safe to promise (\d+) of the (\d+)/.exec(said) ?? []
      if (some) expect([Number(some), Number(of)]).toEqual([promised, asked.length])
      if (/safe to promise (?:all \d+ sizes|both sizes|the size) you ask for/.test(said))
        expect(promised).toBe(asked.length)
      if (promised > 0) expect(said).toContain('It is safe to promise')
      for (const use of advice.combination.uses.filter((one) => one.line === line))
        expect(said).toContain(`${aMachine(optionOf(use)!)} at “${use.point}”`)
      expect(parts.filter(({ rule }) => /^put-/.test(rule))).toHaveLength(1)
    }
  })
  it('ranks by verdict, and best fit, close call and comparisons agree with the ranks', () => {
    for (const { name, options, contrasts, closeCall } of advice.points) {
      const ranked = options.filter(({ rank }) => rank !== null)
      const places = ranked.map(({ verdict }) => PLACE.indexOf(verdict))
      expect(places).toEqual([...places].sort((a, b) => a - b))
      expect(ranked.slice(1).map(({ verdict }) => verdict)).not.toContain('best-fit')
      if (closeCall) expect(closeCall.first).toBe(ranked[0]!.equipment)
      const inUse = advice.combination.uses.filter(({ point }) => point === name).map((use) => use.equipment)
      const verdictOf = (id: string) => options.find(({ equipment }) => equipment === id)!.verdict
      for (const { first, second } of contrasts) {
        expect(inUse.length > 0 ? inUse : [ranked[0]!.equipment]).toContain(first)
        expect([verdictOf(first), verdictOf(second)]).not.toEqual(['not-suitable', 'not-suitable'])
      }
    }
  })
  it('gives a verdict the ground that its sizes give', () => {
    for (const option of advice.points.flatMap(({ options }) => options)) {
      const asked = option.findings.filter(({ mustFindMm }) => mustFindMm !== null)
      expect(option.because).toBe([...new Set(option.grounds.map(({ text }) => text))].join(' '))
      expect(option.grounds.length).toBeGreaterThan(0)
      if (option.verdict === 'best-fit') expect(asked.length > 0 && asked.every(isPromised)).toBe(true)
      if (option.verdict === 'no-build') expect(option.askFor).not.toBeNull()
      if (/Every size asked is safe to promise/.test(option.because))
        expect(asked.every(isPromised)).toBe(true)
      if (option.verdict === 'not-suitable' && option.askFor === null)
        expect(option.because).not.toMatch(/Every size/)
    }
  })
  it('has a rule behind every sentence, and that rule fired where the sentence says', () => {
    const fired = new Map(
      advice.trace.rules.filter(({ outcome }) => outcome === 'fired').map((rule) => [rule.key, rule.id]),
    )
    const said = [
      ...advice.answer.parts,
      ...advice.answer.rows.map(({ left }) => left),
      ...advice.answer.ask,
      ...advice.answer.test,
      ...advice.combination.grounds,
      ...advice.points.flatMap(({ options }) => options.flatMap(({ grounds }) => grounds)),
    ]
    for (const { text, rule, trace, sources } of said) {
      expect(fired.get(trace)).toBe(rule)
      expect(text).not.toMatch(/[{}]|\(no /)
      expect(sources.length).toBeGreaterThan(0)
    }
    const rules = new Set(fired.values())
    for (const { id } of [
      ...advice.cautions,
      ...advice.points.flatMap(({ options }) => options.flatMap(({ cautions }) => cautions)),
    ])
      expect(rules).toContain(id)
  })
  it('keeps out what is not met', () => {
    const lost = advice.answer.rows.filter(({ meets, left }) => meets === 'no' || left.kind === 'prevent')
    const kept = new Set(advice.prevention.map(({ contaminant }) => contaminant))
    for (const { contaminant } of lost) expect(kept).toContain(contaminant)
  })
})

describe('two lines beside each other', () => {
  it('each get what they need', async () => {
    const { answer, combination } = await advise(briefOf(structuredClone(SOUP)), QUICK)
    expect(new Set(combination.uses.map(({ line }) => line))).toEqual(new Set(['jars', 'pouches']))
    expect(combination.unmet.filter(({ contaminant }) => contaminant === 2).map(({ line }) => line)).toEqual([
      'jars',
      'pouches',
    ])
    expect(answer.sentence).toMatch(/^Line “jars”: .* Line “pouches”: /)
  })
  it('are asked about where two closed packs stand on one', async () => {
    const one = structuredClone(SOUP)
    for (const point of one.points) point.line = ''
    const { answer } = await advise(briefOf(one), QUICK)
    expect(answer.ask.map(({ rule }) => rule)).toContain('are-these-two-lines')
  })
})

describe('raisins in a carton of 140 mm', () => {
  it('rank by verdict: what meets nothing stands behind what meets something', async () => {
    const raisins = {
      product: { food: 'raisin' },
      points: [
        {
          name: 'cartons',
          heightMm: 140,
          widthMm: 300,
          lengthMm: 400,
          massG: 12_500,
          parts: [{ material: 'pe', mm: 0.05, place: 'wrap' }],
          speedMPerMin: 15,
          packsPerMin: 12,
        },
      ],
      contaminants: [
        { material: 'stone_any', mustFindMm: 4 },
        { material: 'glass_any', mustFindMm: 4 },
        { material: 'ss316', mustFindMm: 2.5 },
      ],
    }
    const { points } = await advise(briefOf(raisins), QUICK)
    const [first, ...others] = points[0]!.options.filter(({ rank }) => rank !== null)
    expect(first!.family).toBe('xray')
    const coils = others.filter(({ family }) => family === 'coil')
    const isBetter = ({ verdict }: Option) => verdict !== 'not-suitable'
    for (const coil of coils.filter((one) => !isBetter(one)))
      for (const other of others.filter(isBetter)) expect(other.rank).toBeLessThan(coil.rank!)
  })
})
