import { beforeAll, describe, expect, it } from 'vitest'
import { advise } from '../../src/advise.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { asData } from '../../src/compare/as-data.ts'
import { type Comparison, compare } from '../../src/compare/comparison.ts'
import { atRate, readRate } from '../../src/compare/false-rejects.ts'
import type { Laid } from '../../src/compare/laid.ts'
import { type BriefInput, comparisonSchema } from '../../src/contract/index.ts'

/** A bag of cheese in plain film, and the same behind a layer of foil: a coil hears the foil, x-rays hardly see it. */
const bag: BriefInput = {
  product: { food: 'cheddar', temperatureC: 6 },
  points: [
    {
      heightMm: 40,
      widthMm: 120,
      lengthMm: 180,
      speedMPerMin: 30,
      packsPerMin: 60,
      parts: [{ material: 'pe', mm: 0.06, place: 'wrap' }],
    },
  ],
  contaminants: [
    { material: 'ss316', mustFindMm: 3 },
    { material: 'glass_container', basis: 'best-achievable' },
  ],
  equipment: ['coil-multi', 'xray-single'],
}
const foil: BriefInput = {
  ...bag,
  points: [{ ...bag.points[0]!, parts: [{ material: 'aluminium_foil', mm: 0.02, place: 'wrap' }] }],
  contaminants: [bag.contaminants[1]!, bag.contaminants[0]!],
}

async function pack(mark: string, given: BriefInput): Promise<Laid> {
  const parsed = parseBrief(given)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return {
    mark,
    brief: parsed.brief,
    advice: await advise(parsed.brief, { withoutChanges: true, withoutMissing: true }),
  }
}

let table: Comparison
beforeAll(async () => {
  table = compare([await pack('A', bag), await pack('B', foil)], {
    keys: ['p0.coil-multi', 'p0.xray-single'],
    given: {},
    wordsOf: ({ material }) => material,
    ofMaterial: (id) => id,
  })!
})

describe('pack against pack', () => {
  it('lays each machine with the one pack beside itself with the other', () => {
    expect(table.sides.map(({ key }) => key)).toEqual([
      'p0.coil-multi',
      'B.p0.coil-multi',
      'p0.xray-single',
      'B.p0.xray-single',
    ])
    expect(table.sides[1]!.words).toMatch(/^B: metal detector/)
  })

  it('takes the best of the other technology beside a machine that both packs get', () => {
    const [first] = table.laid
    const asked = { keys: [], given: {}, wordsOf: () => '', ofMaterial: (id: string) => id }
    const { sides } = compare([first!, { ...first!, mark: 'B' }], asked)!
    expect(sides.map(({ key }) => key)).toEqual([
      'p0.coil-multi',
      'B.p0.coil-multi',
      'p0.xray-single',
      'B.p0.xray-single',
    ])
  })

  it('knows the same piece in both briefs, wherever it stands in them', () => {
    expect(table.wanted.map(({ piece, at }) => [piece.material, ...at])).toEqual([
      ['ss316', 0, 1],
      ['glass_container', 1, 0],
    ])
    for (const { findings } of table.sides)
      expect(findings.map((finding) => finding?.material)).toEqual(['ss316', 'glass_container'])
  })

  it('says what the second pack makes of each machine, from unrounded sizes', () => {
    const [coil, xray] = table.added
    expect(coil!.with.option.verdict).toBe('not-suitable')
    expect(coil!.losses.map(({ contaminant }) => contaminant)).toContain(0)
    const gone = [...xray!.gains, ...xray!.losses]
    for (const { from, to, smallerByMm } of gone) expect(smallerByMm).toBe(from.expectedMm! - to.expectedMm!)
  })

  it('holds the answers against each other piece by piece', () => {
    const [steel, glass] = table.packs
    expect(steel!.rows.map((row) => row?.contaminant)).toEqual([0, 1])
    expect(steel!.rows.map((row) => row?.equipment)).toEqual(['coil-multi', 'xray-single'])
    expect(steel!.differs).toBe(true)
    expect(glass!.rows.map((row) => row?.meets)).toEqual(['open', 'open'])
  })
})

describe('one rate of false rejects', () => {
  it('reads what people type, and says what is allowed', () => {
    expect(readRate('1 in 2000')).toEqual({ rate: 0.0005, problem: null })
    expect(readRate('')).toEqual({ rate: null, problem: null })
    expect(readRate('often').problem?.path).toBe('rejects')
    expect(readRate('0.9').problem?.message).toBe(
      'False rejects: give a share from 1 in 10,000,000 to 1 in 5; 0.9 was given',
    )
  })

  it('holds at every point of the brief, and leaves a brief alone that has it already', () => {
    const { brief } = table.laid[0]!
    expect(atRate(brief, 0.002).points.map((point) => point.falseRejectsPerPack)).toEqual([0.002])
    expect(atRate(brief, brief.points[0]!.falseRejectsPerPack)).toBe(brief)
  })
})

describe('as data', () => {
  it('keeps sizes as computed, names every side, and says first what the page says first', () => {
    const data = asData(table, ['said'])
    expect(comparisonSchema.parse(JSON.parse(JSON.stringify(data)))).toEqual(JSON.parse(JSON.stringify(data)))
    expect(data.words).toEqual(['said'])
    expect(data.sides.map(({ key, pack }) => [key, pack])).toEqual([
      ['p0.coil-multi', 'A'],
      ['B.p0.coil-multi', 'B'],
      ['p0.xray-single', 'A'],
      ['B.p0.xray-single', 'B'],
    ])
    for (const [at, side] of table.sides.entries())
      expect(data.sides[at]!.sizes.map((one) => one?.expectedMm)).toEqual(
        side.findings.map((finding) => finding?.expectedMm),
      )
    expect(
      data.changes.filter(({ better }) => !better).map(({ over, piece }) => [over, piece]),
    ).toContainEqual(['p0.coil-multi', 0])
  })
})
