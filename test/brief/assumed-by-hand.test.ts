import { describe, expect, it } from 'vitest'
import { fillProduct } from '../../src/brief/product-defaults.ts'
import type { ProductInput } from '../../src/contract/index.ts'

const read = (input: ProductInput) => fillProduct(input, 'product', 'packed')
/** What is assumed of a food: its label and why, by field. */
const told = (input: ProductInput) =>
  Object.fromEntries(
    read(input).assumed.map(({ path, label, because }) => [path.replace(/^product\./, ''), [label, because]]),
  )
const rangeOf = (input: ProductInput, field: string) =>
  read(input).assumed.find(({ path }) => path === `product.${field}`)?.range
const custom = {
  food: 'custom',
  composition: { waterPct: 60, proteinPct: 20, fatPct: 10, carbohydratePct: 8, ashPct: 2 },
} as const

describe('what is assumed of a food says what it is and why', () => {
  it('of a listed food by its name', () => {
    const usual = 'usual for almonds, whole'
    expect(told({ food: 'almond' })).toMatchObject({
      structure: ['structure', usual],
      densityGPerCm3: ['density of the solid food', usual],
      packing: ['fill fraction', usual],
      grainMm: ['grain size', usual],
      unevennessMm: ['unevenness', 'judgement, no source: rms thickness variation over 2 to 20 mm'],
      temperatureC: ['temperature', usual],
      voidFree: ['void-free', 'foods hold bubbles and gaps unless declared void-free'],
      ironMgPerKg: ['added iron', 'none unless said'],
    })
  })
  it('of a food of one’s own as a judgement, its density as computed', () => {
    expect(told(custom)).toMatchObject({
      structure: ['structure', 'not stated; taken as solid'],
      densityGPerCm3: ['density of the solid food', 'computed from the composition, no pores'],
      temperatureC: ['temperature', 'judgement for a custom food'],
    })
    expect(told({ ...custom, structure: 'powder', grainMm: 0.2 }).packing).toEqual([
      'fill fraction',
      'usual for loose pieces',
    ])
    expect(told({ food: 'instant_coffee', structure: 'powder' }).grainMm).toEqual([
      'grain size',
      'ground to a powder (judgement)',
    ])
  })
  it('of what flows whether a piece stays where it fell', () => {
    expect(told({ food: 'honey', structure: 'liquid' }).stiff).toEqual([
      'stiff',
      'usual for honey: a piece stays where it fell',
    ])
    expect(told({ food: 'soup', structure: 'liquid' }).stiff).toEqual([
      'stiff',
      'not stated; a piece sinks or floats',
    ])
  })
})

describe('how far it may be off', () => {
  it('packing a tenth either way, and never above the space it fills', () => {
    const packing = read({ food: 'almond' }).product!.packing
    const [least, most] = rangeOf({ food: 'almond' }, 'packing')!
    expect(least / packing).toBeCloseTo(0.9, 2)
    expect(most / packing).toBeCloseTo(1.1, 2)
    expect(rangeOf({ food: 'cheddar', structure: 'granular', grainMm: 5 }, 'packing')).toEqual([0.35, 0.68])
  })
  it('a listed powder keeps its own grain', () => {
    expect(read({ food: 'flour' }).product!.grainMm).toBe(0.1)
    expect(read({ food: 'flour', structure: 'powder' }).product!.grainMm).toBe(0.1)
  })
})

describe('what is given is handed on as it is', () => {
  it('composition, salt, conductivity and bone', () => {
    expect(read({ ...custom, saltPct: 1.2, conductivitySPerM: 0.4, boneIn: true }).product).toMatchObject({
      composition: custom.composition,
      saltPct: 1.2,
      conductivitySPerM: 0.4,
      boneIn: true,
    })
    expect(read({ food: 'almond' }).product).toMatchObject({
      composition: null,
      saltPct: null,
      conductivitySPerM: null,
      boneIn: false,
    })
  })
  it('a grain that is given is not assumed', () => {
    expect(told({ food: 'almond', grainMm: 9 }).grainMm).toBeUndefined()
    expect(read({ food: 'almond', grainMm: 9 }).product!.grainMm).toBe(9)
    expect(read({ food: 'cheddar', structure: 'granular', grainMm: 9 }).problems).toEqual([])
  })
})
