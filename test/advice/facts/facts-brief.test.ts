import { describe, expect, it } from 'vitest'
import type { FactSheet } from '../../../src/advice/facts/fact-sheet.ts'
import { factsForBrief, factsForContaminant, factsForPoint } from '../../../src/advice/facts/facts.ts'
import { materials } from '../../../src/reference/index.ts'
import { sampleBrief } from '../sample.ts'

const read = (sheet: FactSheet) => Object.fromEntries(sheet.facts.map(({ id, value }) => [id, value]))
const ofBrief = (over: Record<string, unknown>) => read(factsForBrief(sampleBrief(over), materials))
const ofPoint = (point: Record<string, unknown>, product: Record<string, unknown> = {}) =>
  factsForPoint(sampleBrief({ product, points: [{ massG: null, ...point }] }), 0, materials)
const contaminant = (over: Record<string, unknown>) =>
  read(factsForContaminant(sampleBrief({ contaminants: [over] }), 0, materials))

describe('contaminants counted by what a coil makes of them', () => {
  it('sorts metals', () => {
    const contaminants = ['steel', 'ss430', 'ss316', 'ss304', 'brass', 'quartz', 'ferrite'].map(
      (material) => ({
        material,
        mustFindMm: 2,
      }),
    )
    expect(ofBrief({ contaminants })).toMatchObject({
      'brief.metals': 6,
      'brief.ferrousMetals': 3,
      'brief.austeniticMetals': 2,
      'brief.plainMetals': 1,
      'brief.nonMetals': 1,
      'brief.sizesAsked': 7,
      'brief.wires': 0,
    })
  })
  it('says of one metal which test piece stands for it', () => {
    expect(contaminant({ material: 'ss316' })).toMatchObject({
      'contaminant.metal': true,
      'contaminant.magnetism': 'weak',
      'contaminant.testPiece': 'austenitic',
    })
    expect(contaminant({ material: 'pmma' })).toMatchObject({
      'contaminant.metal': false,
      'contaminant.magnetism': 'no metal',
      'contaminant.brittle': true,
    })
    expect(contaminant({ material: 'pe' })['contaminant.brittle']).toBe(false)
    expect(contaminant({ material: 'pp_barium' })['contaminant.bariumPct']).toBeGreaterThan(5)
    expect(contaminant({ material: 'pp' })['contaminant.bariumPct']).toBe(0)
  })
})

describe('food, law and flow of a brief', () => {
  it('knows meat and fish, and does not guess of a custom food', () => {
    const food = (id: string) => ofBrief({ product: { food: id }, points: [{ massG: null }] })
    expect(food('beef_mince')).toMatchObject({ 'brief.foodClass': 'meat-or-poultry' })
    expect(food('cod')).toMatchObject({ 'brief.foodClass': 'fish' })
    const composition = { waterPct: 70, proteinPct: 20, fatPct: 9, carbohydratePct: 0, ashPct: 1 }
    const custom = { product: { food: 'custom', composition, structure: 'solid' }, points: [{ massG: null }] }
    expect(ofBrief(custom)).toMatchObject({ 'brief.foodClass': null, 'brief.foodClassKnown': false })
  })
  it.each([
    [['organic'], true],
    [['100 % Bio'], true],
    [['boneless'], false],
    [[], false],
  ])('label %j says organic: %s', (labelClaims, said) => {
    expect(ofBrief({ labelClaims })['brief.saysOrganic']).toBe(said)
  })
  it('tells steps without a control, and rework; nothing where no flow is told', () => {
    const flow = [
      { step: 'roasting', entersHere: ['steel'] },
      { step: 'sieving', entersHere: ['wire'], upstreamControl: 'mesh checked each shift' },
      { step: 'packing', rework: true },
    ]
    expect(ofBrief({ flow })).toMatchObject({
      'brief.openSteps': 1,
      'brief.openStepNames': 'roasting',
      'brief.reworkSteps': 1,
    })
    expect(ofBrief({})).not.toHaveProperty('brief.openSteps')
  })
})

describe('facts of a point', () => {
  it('take the usual salt of a listed food as assumed, and none of a food without an entry', () => {
    const salt = (food: string, more = {}) =>
      ofPoint({}, { food, ...more }).facts.find(({ id }) => id === 'food.saltPct')
    expect(salt('cheddar')).toMatchObject({ value: 1.8, origin: 'assumed' })
    expect(salt('cheddar', { saltPct: 2.2 })).toMatchObject({ value: 2.2, origin: 'entered' })
    expect(salt('almond')).toMatchObject({ value: null })
  })
  it('count what a failed check puts on hold', () => {
    const held = (point: Record<string, unknown>) => read(ofPoint(point))['flow.holdPacks']
    expect(held({ checkIntervalMin: 60, reactMin: 10 })).toBe(4200)
    expect(held({ checkIntervalMin: 60 })).toBe(3600)
    expect(held({})).toBeNull()
  })
  it('know of a fall height only where something falls', () => {
    const free = {
      stage: 'free-fall',
      heightMm: 50,
      widthMm: 150,
      pipeDiameterMm: 150,
      packsPerMin: null,
      parts: null,
    }
    expect(read(ofPoint(free, { food: 'flour' }))['point.fallHeightGiven']).toBe(false)
    expect(read(ofPoint({}))).not.toHaveProperty('point.fallHeightGiven')
  })
})
