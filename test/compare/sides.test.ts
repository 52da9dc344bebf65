import { beforeAll, describe, expect, it } from 'vitest'
import { differencesOf, sizesDiffer } from '../../src/compare/differences.ts'
import { namedShort, pickSides } from '../../src/compare/sides.ts'
import { byCost, whatItAdds } from '../../src/compare/what-it-adds.ts'
import { type Laid, laid } from './two-machines.ts'

let table: Laid
beforeAll(async () => {
  table = await laid()
})

const keys = (sides: readonly { key: string }[]) => sides.map(({ key }) => key)

describe('what can be laid side by side', () => {
  it('is every machine at its point, then every quote', () => {
    expect(keys(table.sides).sort()).toEqual(['p0.coil-single', 'p0.xray-dual', 'p0.xray-single', 'q0', 'q1'])
    expect(table.side('p0.xray-dual').quotes).toHaveLength(2)
    expect(table.side('q1').quotes.map(({ given }) => given.sizeMm)).toEqual([1])
  })

  it('is picked in the order asked, three at most, each once', () => {
    const asked = ['q1', 'p0.coil-single', 'q1', 'p0.xray-single', 'p0.xray-dual', 'nothing']
    expect(keys(pickSides(table.sides, asked))).toEqual(['q1', 'p0.coil-single', 'p0.xray-single'])
  })

  it('falls back to the quotes, and to the first ranked machines where there are none', async () => {
    expect(keys(pickSides(table.sides, []))).toEqual(['q0', 'q1'])
    const { quotes: _, ...without } = table.brief.given
    const plain = await laid(without)
    expect(keys(pickSides(plain.sides, []))).toEqual(
      plain.advice.points[0]!.options.slice(0, 2).map(({ equipment }) => `p0.${equipment}`),
    )
    expect(keys(pickSides(plain.sides, ['p0.coil-single']))[0]).toBe('p0.coil-single')
  })

  it('is called by the machine alone where all stand at one point', () => {
    expect(namedShort(table.sides).every(({ words }) => !words.includes('after packing'))).toBe(true)
  })
})

describe('what differs', () => {
  it('leaves out what is the same, and names it', () => {
    const both = [table.side('p0.xray-single'), table.side('p0.xray-dual')]
    const { figures, burdens, sizes, same } = differencesOf(both, 3)
    expect(burdens).toEqual([3, 4])
    expect(figures.map(({ words }) => words)).toContain('Energies recorded')
    expect(figures.map(({ words }) => words)).not.toContain('Pixel size')
    expect(same.figures).toContain('Pixel size')
    for (const { findings } of sizes)
      expect(
        findings[0]?.meets !== findings[1]?.meets ||
          sizesDiffer(findings[0]!.expectedMm, findings[1]!.expectedMm) ||
          sizesDiffer(findings[0]!.cautiousMm, findings[1]!.cautiousMm),
      ).toBe(true)
    expect([...sizes.map(({ contaminant }) => contaminant), ...same.contaminants].sort()).toEqual([0, 1, 2])
  })

  it('is nothing but the quotes between two quotes for one machine', () => {
    const { figures, verdicts, burdens, sizes, rules } = differencesOf(
      [table.side('q0'), table.side('q1')],
      3,
    )
    expect([figures, sizes, rules, verdicts, burdens]).toEqual([[], [], [], null, null])
  })

  it('shows a rule only where it does not speak of all', () => {
    const { rules } = differencesOf([table.side('p0.xray-single'), table.side('p0.xray-dual')], 3)
    for (const { texts } of rules) {
      expect(texts.some((text) => text === null)).toBe(true)
      expect(texts.some((text) => text !== null)).toBe(true)
    }
  })

  it.each([
    [1, 1.01, false],
    [1, 1.05, true],
    [null, 1, true],
    [null, null, false],
  ])('%s mm and %s mm are told apart: %s', (a, b, apart) => {
    expect(sizesDiffer(a, b)).toBe(apart)
  })
})

describe('what the dearer one adds', () => {
  it('is the millimetres between the expected sizes, and whether the size asked is reached', () => {
    const single = table.side('p0.xray-single')
    const dual = table.side('p0.xray-dual')
    const quartz = whatItAdds(single, dual).gains.find(({ contaminant }) => contaminant === 0)!
    const [before, after] = [single, dual].map(({ option }) => option.findings[0]!.expectedMm)
    expect(quartz.smallerByMm).toBeCloseTo(before! - after!, 9)
    expect(quartz.asked).toBe(before! > 4 ? 'now-met' : 'met-by-both')
    expect(whatItAdds(dual, single).losses.map(({ contaminant }) => contaminant)).toContain(0)
  })

  it('counts a size against none as a gain without millimetres', () => {
    const found = whatItAdds(table.side('p0.coil-single'), table.side('p0.xray-dual')).gains
    expect(found.find(({ contaminant }) => contaminant === 0)).toMatchObject({
      smallerByMm: null,
      asked: 'now-met',
    })
  })

  it('goes by burden until every side has a whole yearly cost', () => {
    const sides = [table.side('p0.xray-dual'), table.side('p0.coil-single')]
    const cost = (sum: number | null, complete = sum !== null) => ({
      lines: [],
      sum,
      complete,
      falseRejectsPerDay: null,
    })
    expect(byCost(sides, [cost(10), cost(null)])).toMatchObject({
      basis: 'burden',
      order: [sides[1], sides[0]],
    })
    expect(byCost(sides, [cost(10), cost(20, false)]).basis).toBe('burden')
    expect(byCost(sides, [cost(10), cost(20)])).toMatchObject({ basis: 'entered', order: sides })
    expect(byCost([sides[0]!, sides[0]!], [cost(null), cost(null)]).basis).toBe('unknown')
  })
})
