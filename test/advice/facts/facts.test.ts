import { describe, expect, it } from 'vitest'
import type { FactSheet } from '../../../src/advice/facts/fact-sheet.ts'
import { factsForBrief, factsForContaminant, factsForPoint } from '../../../src/advice/facts/facts.ts'
import { FACTS } from '../../../src/advice/facts/list/fact-list.ts'
import { materials } from '../../../src/reference/index.ts'
import { sampleBrief } from '../sample.ts'

const read = (sheet: FactSheet) => Object.fromEntries(sheet.facts.map((fact) => [fact.id, fact]))
const point = (over: Record<string, unknown> = {}, product: Record<string, unknown> = {}) =>
  read(factsForPoint(sampleBrief({ product, points: [over] }), 0, materials))
const contaminant = (over: Record<string, unknown>, brief: Record<string, unknown> = {}) =>
  read(factsForContaminant(sampleBrief({ ...brief, contaminants: [over] }), 0, materials))

describe('where a fact comes from', () => {
  it('is entered when the brief gives it, assumed when it was filled in', () => {
    const facts = read(factsForBrief(sampleBrief(), materials))
    expect(facts['brief.market']).toMatchObject({ value: 'UK', origin: 'entered', label: 'market' })
    expect(facts['brief.consumer']).toMatchObject({ value: 'general', origin: 'assumed' })
    expect(point()['point.heightMm']).toMatchObject({
      value: 60,
      unit: 'mm',
      origin: 'entered',
      scope: 'p0',
    })
    // From mass, size and grain density, where the pack gives them.
    expect(point()['food.packing']).toMatchObject({
      value: expect.closeTo(0.3047, 4),
      unit: '',
      origin: 'assumed',
    })
    expect(point({}, { packing: 0.5 })['food.packing']).toMatchObject({ value: 0.5, origin: 'entered' })
  })
  it('follows a point that differs from the product above it', () => {
    const brief = sampleBrief({
      product: { unevennessMm: 0.4 },
      points: [
        {},
        {
          stage: 'loose',
          heightMm: 40,
          widthMm: 300,
          lengthMm: 300,
          speedMPerMin: 30,
          product: { packing: 0.5 },
        },
      ],
    })
    expect(read(factsForPoint(brief, 1, materials))['food.packing']).toMatchObject({
      value: 0.5,
      origin: 'entered',
    })
    expect(read(factsForPoint(brief, 1, materials))['food.unevennessMm']).toMatchObject({
      value: 0.4,
      origin: 'entered',
    })
    expect(read(factsForPoint(brief, 0, materials))['food.packing']?.origin).toBe('assumed')
  })
  it('is computed with a calculation for what is worked out', () => {
    const sheet = factsForPoint(sampleBrief(), 0, materials)
    const gap = read(sheet)['flow.gapMm']
    expect(gap).toMatchObject({ value: 250, unit: 'mm', origin: 'computed' })
    expect(sheet.calculations.find(({ id }) => id === gap?.calculation)).toMatchObject({
      value: 250,
      formula: 'spacing − length',
      inputs: ['flow.pitchMm', 'point.lengthMm'],
    })
  })
})

describe('what is not known and what is not there', () => {
  it('a mass nobody gave is null', () => {
    expect(point({ massG: null })['point.massG']).toMatchObject({ value: null })
  })
  it('spacing without a rate is null', () => {
    expect(point({ packsPerMin: null })['flow.gapMm']).toMatchObject({ value: null })
  })
  it('loose food has neither spacing nor mass of a pack', () => {
    const loose = point({ stage: 'loose', parts: [], packsPerMin: null, massG: null })
    expect(loose).not.toHaveProperty('flow.gapMm')
    expect(loose).not.toHaveProperty('point.massG')
    expect(loose['pack.kind']?.value).toBe('none')
  })
  it('a liquid has no grain', () => {
    expect(point({}, { food: 'jam' })).not.toHaveProperty('food.grainMm')
  })
  it('a contaminant without a size to find has none', () => {
    expect(contaminant({ mustFindMm: null, basis: 'best-achievable' })).not.toHaveProperty(
      'contaminant.mustFindMm',
    )
  })
})

describe('flow', () => {
  it('counts spacing per lane', () => {
    expect(point({ lanes: 2 })['flow.pitchMm']?.value).toBe(1000)
  })
  it('says what the false rejects cost a day', () => {
    expect(point({ hoursPerDay: 10 })['flow.falseRejectsPerDay']?.value).toBeCloseTo(36)
  })
})

describe('packaging', () => {
  const part = (material: string, mm: number, place: string) => ({ material, mm, place })
  it.each([
    ['a film bag', [part('pe', 0.08, 'wrap')], 'bag', false],
    ['a glass jar', [part('glass_container', 2.5, 'wall')], 'jar', true],
    ['a steel can', [part('steel', 0.2, 'wall')], 'can', true],
    ['a plastic tub', [part('pp', 0.6, 'wall')], 'tub', true],
    ['a tray with film', [part('pp', 0.4, 'tray'), part('pe', 0.05, 'wrap')], 'tray', false],
    ['a carton', [part('carton', 0.5, 'wrap')], 'carton', false],
    ['something else', [part('pe', 0.05, 'lid')], 'other', false],
  ])('%s', (_, parts, kind, rigid) => {
    expect(point({ parts })).toMatchObject({ 'pack.kind': { value: kind }, 'pack.rigid': { value: rigid } })
  })
  it('tells foil from metallised film and from a can', () => {
    expect(point({ parts: [part('aluminium_foil', 0.009, 'wrap')] })).toMatchObject({
      'pack.foilMicrometres': { value: 9 },
      'pack.metallisedFilm': { value: false },
    })
    expect(point({ parts: [part('metallised_film', 0.03, 'wrap')] })).toMatchObject({
      'pack.foilMicrometres': { value: 0 },
      'pack.metallisedFilm': { value: true },
    })
    expect(point({ parts: [{ ...part('pet', 0.03, 'wrap'), sheetOhmPerSquare: 2 }] })).toMatchObject({
      'pack.metallisedFilm': { value: true },
    })
    expect(point({ parts: [part('aluminium', 0.11, 'wall')] })['pack.foilMicrometres']?.value).toBe(0)
  })
})

describe('contaminants', () => {
  it.each([
    ['bone in chicken', 'chicken_breast', 'bone_poultry', 'bone'],
    ['shell among almonds', 'almond', 'nut_shell', 'shell'],
    ['stones in olives', 'olive', 'nut_shell', 'stone'],
    ['shell in rice', 'rice', 'nut_shell', 'none'],
    ['bone among almonds', 'almond', 'bone_poultry', 'none'],
    ['glass in chicken', 'chicken_breast', 'glass_container', 'none'],
  ])('%s', (_, food, material, part) => {
    const facts = contaminant({ material }, { product: { food }, points: [{ massG: null }] })
    expect(facts['contaminant.naturalPart']?.value).toBe(part)
  })
  it('of a custom food: nobody knows whether bone belongs to it', () => {
    const composition = { waterPct: 70, proteinPct: 20, fatPct: 9, carbohydratePct: 0, ashPct: 1 }
    const brief = { product: { food: 'custom', composition, structure: 'solid' }, points: [{ massG: null }] }
    expect(contaminant({ material: 'bone_hard' }, brief)['contaminant.naturalPart']?.value).toBeNull()
    expect(contaminant({ material: 'quartz' }, brief)['contaminant.naturalPart']?.value).toBe('none')
  })
  it.each([
    [['boneless'], true],
    [['Bone-free fillet'], true],
    [['pitted'], false],
    [[], false],
  ])('label claims %j', (labelClaims, removed) => {
    const brief = { product: { food: 'chicken_breast' }, points: [{ massG: null }], labelClaims }
    expect(contaminant({ material: 'bone_poultry' }, brief)['contaminant.labelSaysRemoved']?.value).toBe(
      removed,
    )
  })
  it('knows calcium and hardness', () => {
    expect(contaminant({ material: 'cartilage' })).toMatchObject({
      'contaminant.hardOrSharp': { value: false },
      'contaminant.calciumPct': { unit: '%', origin: 'computed' },
    })
    expect(contaminant({ material: 'cartilage' })['contaminant.calciumPct']?.value).toBeLessThan(2)
    expect(contaminant({ material: 'bone_hard' })['contaminant.calciumPct']?.value).toBeGreaterThan(20)
    expect(contaminant({ material: 'bone_hard' })['contaminant.hardOrSharp']?.value).toBe(true)
  })
})

describe('the fact list', () => {
  it('gives every fact a label, and every word it can be', () => {
    for (const fact of FACTS.values()) {
      expect(fact.label.length).toBeGreaterThan(2)
      if (fact.values) expect(fact.type).toBe('string')
    }
  })
})
