import { beforeAll, describe, expect, it } from 'vitest'
import { acceptanceOf } from '../../src/compare/acceptance.ts'
import { questionsOf } from '../../src/compare/questions.ts'
import { readTerms } from '../../src/compare/terms.ts'
import type { BriefInput } from '../../src/contract/index.ts'
import { chanceOnCurve } from '../../src/numerics/chance-on-curve.ts'
import { type Laid, laid } from './two-machines.ts'

let table: Laid
beforeAll(async () => {
  table = await laid()
})

const pieces = ['quartz', 'wire', 'wood']

describe('an acceptance clause', () => {
  it('asks 29 runs with none missed for 9 in 10, 95 % sure, and the clean packs that show 1 in 1,000', () => {
    const { pieces: asked, clean } = acceptanceOf(table.side('p0.xray-dual'))
    expect(asked.map(({ sizeMm, runs, origin }) => [sizeMm, runs, origin]).slice(0, 2)).toEqual([
      [4, 29, 'asked'],
      [0.6, 29, 'asked'],
    ])
    // ln 0.05 / ln 0.999 = 2994.2, so 2,995 packs.
    expect(clean).toMatchObject({ packs: 2995, minutes: 59.9 })
    expect(clean.comesThroughAtHalf).toBeCloseTo(0.9995 ** 2995, 9)
  })

  it('asks more runs the more may be missed', () => {
    const runs = [0, 1, 2, 3].map(
      (misses) =>
        acceptanceOf(table.side('p0.xray-dual'), { chance: 0.9, confidence: 0.95, misses, falseRejects: 0 })
          .pieces[0]!.runs,
    )
    expect(runs).toEqual([29, 46, 61, 76])
  })

  it('says how likely the machine as computed comes through: chance of finding to the 29th power', () => {
    const side = table.side('p0.xray-dual')
    const [piece] = acceptanceOf(side).pieces
    expect(piece!.comesThrough).toBeCloseTo(side.option.findings[0]!.chanceAtMustFind! ** 29, 9)
  })

  it('runs a wire both ways at a metal detector, and asks nothing it cannot find', () => {
    const { pieces: asked, left } = acceptanceOf(table.side('p0.coil-single'))
    expect(asked.find(({ contaminant }) => contaminant === 1)?.lies).toEqual([
      'along the travel',
      'across the travel',
    ])
    expect(left.map(({ contaminant }) => contaminant)).toEqual([0, 2])
  })

  it('is run at the weakest place the size covers, and names the places it does not', async () => {
    const jar: BriefInput = {
      product: { food: 'tomato_sauce', stiff: true },
      points: [
        {
          heightMm: 95,
          widthMm: 68,
          lengthMm: 68,
          outline: 'cylinder',
          speedMPerMin: 30,
          parts: [
            { material: 'glass_container', mm: 2.5, place: 'wall' },
            { material: 'glass_container', mm: 4, place: 'base' },
          ],
        },
      ],
      contaminants: [{ material: 'ss304', mustFindMm: 2 }],
      equipment: ['xray-side'],
    }
    const { side } = await laid(jar)
    const [piece] = acceptanceOf(side('p0.xray-side')).pieces
    const zones = side('p0.xray-side').option.findings[0]!.zones
    const covered = zones.filter(({ sizes: { expectedMm } }) => expectedMm !== null && expectedMm <= 2)
    expect(covered.length).toBeGreaterThan(0)
    expect(zones.find(({ name }) => name === piece!.place)?.sizes.expectedMm).toBe(
      Math.max(...covered.map(({ sizes }) => sizes.expectedMm!)),
    )
    expect(piece!.notCovered.map(({ place }) => place)).toContain('base')
  })

  it('takes only the choices it offers from an address', () => {
    expect(readTerms({ chance: '0.95', misses: '2', confidence: '0.2', falseRejects: 'many' })).toEqual({
      chance: 0.95,
      confidence: 0.95,
      misses: 2,
      falseRejects: 0,
    })
  })
})

describe('questions', () => {
  const words = { pieces, ofMaterial: (id: string) => id }
  const asked = () => questionsOf([table.side('p0.xray-dual'), table.side('p0.coil-single')], words)

  it('ask of a quoted size what it leaves open, and nothing of one that says all', () => {
    const [ofXray] = asked().toEach
    const asks = ofXray!.map(({ ask }) => ask)
    expect(asks).toContain(
      'How was it obtained: 1 mm of quartz? Show it in our product, in our pack, at 30 m/min.',
    )
    expect(asks).toContain('Where did the piece lie: 1 mm of quartz?')
    expect(asks.join()).toMatch(/at 1 in 1,000 false rejects, counted on good packs first: 1 mm of quartz\?/)
    expect(asks.join()).not.toContain('2.5 mm')
    expect(ofXray!.map(({ because }) => because).join()).toMatch(/10 of 10 shows only that at least 74 %/)
  })

  it('ask once what two quoted sizes leave open alike', async () => {
    const silent = table.brief.given.quotes!.map(({ equipment, material, sizeMm }) => ({
      equipment,
      material,
      sizeMm,
    }))
    const { side } = await laid({ ...table.brief.given, quotes: silent })
    const [own] = questionsOf([side('p0.xray-dual')], words).toEach
    expect(own!.filter(({ ask }) => ask.startsWith('Where did the piece lie'))).toEqual([
      expect.objectContaining({ ask: 'Where did the piece lie: 2.5 mm of quartz, 1 mm of quartz?' }),
    ])
  })

  it('are put to every supplier once, and not again to each', () => {
    const { toAll, toEach } = asked()
    expect(toAll.map(({ ask }) => ask).join()).toContain('reject bin that locks')
    for (const own of toEach)
      for (const { ask } of own) expect(toAll.map((one) => one.ask)).not.toContain(ask)
  })

  it('leave to the buyer what only the buyer can answer', () => {
    const { toAll, toEach, ourselves } = asked()
    expect(ourselves.map(({ ask }) => ask).join()).toContain('No time between checks was given')
    expect([...toAll, ...toEach.flat()].map(({ ask }) => ask).join()).not.toContain('No time between checks')
  })

  it('name the machine figures a supplier left out, with what was taken instead', async () => {
    const described = await laid({
      ...table.brief.given,
      quotes: [],
      equipment: [
        'xray-single',
        {
          id: 'offer',
          family: 'xray',
          kV: 70,
          mA: 4,
          pixelMm: 0.4,
          magnification: 1.3,
          detectorLayers: [
            { scintillator: 'gos', mgPerCm2: 100, swank: 0.8, electronsPerKeV: 20, noiseElectrons: 1500 },
          ],
        },
      ],
    })
    const [own] = questionsOf([described.side('p0.offer')], words).toEach
    const figures = own!.find(({ ask }) => ask.includes('aluminium filter'))
    expect(figures?.ask).not.toContain('magnification')
    expect(figures?.because).toMatch(/taken as 500, 1,/)
    expect(own!.map(({ ask }) => ask).join()).toMatch(/read \d+ lines a second, which 30 m\/min needs/)
  })
})

describe('the chance on a curve', () => {
  const curve = { sizesMm: [1, 2, 4], chance: [0.1, 0.5, 0.9] }
  it.each([
    [0.5, 0.1],
    [1.5, 0.3],
    [3, 0.7],
    [9, 0.9],
  ])('at %s mm is %s', (size, chance) => {
    expect(chanceOnCurve(curve, size)).toBeCloseTo(chance, 12)
  })

  it('is not known without a curve', () => {
    expect(chanceOnCurve({ sizesMm: [], chance: [] }, 1)).toBeNull()
  })
})
