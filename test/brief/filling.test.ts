import { describe, expect, it } from 'vitest'
import { fillingOf, heightOfMassMm } from '../../src/brief/filling.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { BriefInput } from '../../src/contract/index.ts'
import { samplePoint } from '../coil/sample-point.ts'

const shreds = samplePoint(
  {},
  { structure: 'granular', grainMm: 4, packing: 0.45, densityGPerCm3: 1.1 },
).product
const soup = samplePoint({}, { structure: 'liquid', densityGPerCm3: 1.02 }).product
const block = samplePoint({}, { structure: 'solid', densityGPerCm3: 1.1 }).product
const pack = (massG: number | null, more = {}) => ({
  stage: 'packed' as const,
  massG,
  heightMm: 55,
  widthMm: 200,
  lengthMm: 280,
  outline: 'box' as const,
  parts: [],
  filledMm: null,
  packing: null,
  ...more,
})

/** Base 200 × 280 mm, 55 mm high: 3,080 cm³. All figures by hand. */
describe('what a mass fills', () => {
  it('is mass over density, packing and base: 1,000 g at 1.1 and 0.45 are 36.1 mm of 200 × 280', () => {
    expect(heightOfMassMm(samplePoint({ widthMm: 200, lengthMm: 280 }), 1000, 1.1, 0.45)).toBeCloseTo(
      36.08,
      2,
    )
    const round = samplePoint({ widthMm: 68, lengthMm: 68, outline: 'cylinder' })
    expect(heightOfMassMm(round, 350, 1.04, 1)).toBeCloseTo(92.67, 2)
  })
  it('gives the packing of grains from 0.3 on: 1,017 g fill 0.300 of 3,080 cm³', () => {
    expect(fillingOf(pack(1017), shreds)).toMatchObject({ filledMm: 55, packingFromMass: true })
    expect(fillingOf(pack(1017), shreds).packing).toBeCloseTo(0.3002, 4)
    expect(fillingOf(pack(1600), shreds).packing).toBeCloseTo(0.4723, 4)
  })
  it('below 0.3 leaves the usual packing and headspace', () => {
    const filling = fillingOf(pack(1015), shreds)
    expect(filling).toMatchObject({ packing: 0.45, heightFromMass: true, packingFromMass: false })
    expect(filling.filledMm).toBeCloseTo(36.62, 2)
  })
  it('does not overrule what was typed', () => {
    const typed = fillingOf(pack(1600, { packing: 0.45 }), shreds)
    expect(typed).toMatchObject({ packing: 0.45, filledMm: 55, packingFromMass: false })
    expect(fillingOf(pack(1015, { filledMm: 50 }), { ...shreds, packing: 0.45 }).filledMm).toBe(50)
    expect(fillingOf(pack(null, { filledMm: 70 }), shreds).filledMm).toBe(55)
  })
  it('gives a liquid its height where the stated one holds more than 10 % too much', () => {
    const holds = 1.02 * 3080
    expect(fillingOf(pack(holds / 1.09), soup)).toMatchObject({ filledMm: 55, heightFromMass: false })
    expect(fillingOf(pack(holds / 1.11), soup).filledMm).toBeCloseTo(55 / 1.11, 6)
  })
  it('leaves a solid its own height, unless a container holds it', () => {
    expect(fillingOf(pack(1000), block).filledMm).toBe(55)
    const tray = { parts: [{ place: 'tray' as const }] }
    expect(fillingOf(pack(1000, tray), block).filledMm).toBeCloseTo(16.23, 2)
    const inPack = (place: 'wall' | 'wrap') => fillingOf(pack(1000, { parts: [{ place }] }), block).filledMm
    expect(inPack('wall')).toBeCloseTo(16.23, 2)
    expect(inPack('wrap')).toBe(55)
    expect(fillingOf(pack(1000), { ...block, structure: 'inclusions' }).filledMm).toBe(55)
  })
  it('never moves a height that was typed, and makes nothing of a mass not given', () => {
    expect(fillingOf(pack(1000, { filledMm: 50 }), soup)).toMatchObject({
      filledMm: 50,
      heightFromMass: false,
    })
    expect(fillingOf(pack(null), soup)).toMatchObject({ filledMm: 55, heightFromMass: false })
    expect(fillingOf(pack(null), shreds)).toMatchObject({ packing: 0.45, packingFromMass: false })
  })
  it('says nothing of food that is not packed', () => {
    expect(fillingOf(pack(100, { stage: 'loose' }), soup).filledMm).toBe(55)
  })
})

describe('a brief', () => {
  const brief = (massG: number, product: BriefInput['product']): BriefInput => ({
    product,
    points: [{ heightMm: 55, widthMm: 200, lengthMm: 280, massG, speedMPerMin: 30 }],
    contaminants: [{ material: 'quartz' }],
  })
  it('says that height or packing follow from the mass, and from which', () => {
    const parsed = parseBrief(brief(1600, { food: 'almond' }))
    if (!parsed.ok) throw new Error('no brief')
    const packing = parsed.brief.assumed.filter(({ path }) => path.endsWith('packing'))
    expect(packing).toHaveLength(1)
    expect(packing[0]).toMatchObject({ path: 'points.0.product.packing' })
    expect(packing[0]!.because).toContain('1600 g')
    const half = parseBrief(brief(1600, { food: 'soup' }))
    if (!half.ok) throw new Error('no brief')
    const filled = half.brief.assumed.find(({ path }) => path === 'points.0.filledMm')
    expect(filled?.because).toContain('headspace')
    expect(half.brief.points[0]).toMatchObject({ heightMm: 55, filledMm: filled?.value })
  })
})
