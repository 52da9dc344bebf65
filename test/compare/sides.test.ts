import { beforeAll, describe, expect, it } from 'vitest'
import { differencesOf, sizesDiffer } from '../../src/compare/differences.ts'
import { pickSides } from '../../src/compare/pick-sides.ts'
import { namedShort } from '../../src/compare/sides.ts'
import { byCost, whatItAdds } from '../../src/compare/what-it-adds.ts'
import { type Laid, laid } from './two-machines.ts'

let table: Laid
beforeAll(async () => {
  table = await laid()
})

const keys = (sides: readonly { key: string }[]) => sides.map(({ key }) => key)

describe('what can be laid side by side', () => {
  it('is every machine at its point, with all that is quoted for it inside', () => {
    expect(keys(table.sides).sort()).toEqual(['p0.coil-single', 'p0.xray-dual', 'p0.xray-single'])
    expect(table.side('p0.xray-dual').claims.map(({ given }) => given.sizeMm)).toEqual([2.5, 1])
    expect(table.side('p0.xray-single').claims).toEqual([])
  })

  it('is picked in the order asked, three at most, each once', () => {
    const asked = ['p0.coil-single', 'q0', 'p0.coil-single', 'p0.xray-single', 'p0.xray-dual', 'nothing']
    expect(keys(pickSides(table.sides, asked))).toEqual(['p0.coil-single', 'p0.xray-single', 'p0.xray-dual'])
  })

  it('is what is quoted beside the best ranked other, and where nothing is the first ranked two', async () => {
    const best = table.sides.filter(({ key }) => key !== 'p0.xray-dual')[0]!.key
    expect(keys(pickSides(table.sides, []))).toEqual(['p0.xray-dual', best])
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
    const { figures, burdens, sizes, same } = differencesOf(both)
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

  it('is nothing between a machine and itself', () => {
    const { figures, ownFigures, burdens, sizes, rules } = differencesOf([
      table.side('p0.xray-dual'),
      table.side('p0.xray-dual'),
    ])
    expect([figures, ownFigures.flat(), sizes, rules, burdens]).toEqual([[], [], [], [], null])
  })

  it('keeps figures that only one of them has out of the rows', () => {
    const { figures, ownFigures } = differencesOf([table.side('p0.coil-single'), table.side('p0.xray-dual')])
    expect(figures.flatMap(({ cells }) => cells)).not.toContain(null)
    expect(ownFigures[0]!.map(({ words }) => words)).toContain('Frequencies')
    expect(ownFigures[1]!.map(({ words }) => words)).toContain('Pixel size')
  })

  it('shows a rule only where it does not speak of all', () => {
    const { rules } = differencesOf([table.side('p0.xray-single'), table.side('p0.xray-dual')])
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

/** The same asked of the words themselves. */
const turnOf = (before: string, after: string) => {
  const level = (meets: string) => ({ yes: 2, partly: 2, maybe: 1 })[meets] ?? 0
  if (level(before) === level(after)) return level(before) === 0 ? 'neither' : 'as-before'
  return level(before) === 1 ? 'firmer' : level(after) === 2 ? 'promised' : 'expected'
}

describe('what the dearer one adds', () => {
  it('is the millimetres between the expected sizes, and whether the size asked is reached', () => {
    const single = table.side('p0.xray-single')
    const dual = table.side('p0.xray-dual')
    const quartz = whatItAdds(single, dual).gains.find(({ contaminant }) => contaminant === 0)!
    const [before, after] = [single, dual].map(({ option }) => option.findings[0]!.expectedMm)
    expect(quartz.smallerByMm).toBeCloseTo(before! - after!, 9)
    expect(quartz.turn).toBe(turnOf(single.option.findings[0]!.meets, dual.option.findings[0]!.meets))
    expect(whatItAdds(dual, single).losses.map(({ contaminant }) => contaminant)).toContain(0)
  })

  it('counts a size against none as a gain without millimetres', () => {
    const found = whatItAdds(table.side('p0.coil-single'), table.side('p0.xray-dual')).gains
    expect(found.find(({ contaminant }) => contaminant === 0)).toMatchObject({
      smallerByMm: null,
      turn: table.side('p0.xray-dual').option.findings[0]!.meets === 'yes' ? 'promised' : 'expected',
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
