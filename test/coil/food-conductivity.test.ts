import { describe, expect, test } from 'vitest'
import { saltConductivitySPerM } from '../../src/coil/food/brine.ts'
import { foodConductivity } from '../../src/coil/food/food-conductivity.ts'
import { productTerm, wetness } from '../../src/coil/scene.ts'
import { conductivityRules, electricalSources, foodConductivities } from '../../src/reference/electrical.ts'
import { materials, sources } from '../../src/reference/index.ts'

const at = (changes: Partial<Parameters<typeof foodConductivity>[0]>) =>
  foodConductivity({
    food: 'ham',
    waterPct: 67,
    ashPct: 3.7,
    saltPct: null,
    temperatureC: 25,
    packing: 1,
    enteredSPerM: null,
    ...changes,
  })

describe('conductivity of a food', () => {
  test('what the brief enters is taken as it is, whatever the temperature', () => {
    const food = at({ enteredSPerM: 0.3, temperatureC: -20, packing: 0.5 })
    expect([food.valueSPerM, food.lowSPerM, food.highSPerM, food.state]).toEqual([0.3, 0.3, 0.3, 'entered'])
  })

  test('rises by 2 % of the value at 25 °C per kelvin', () => {
    expect(at({ temperatureC: 5 }).valueSPerM / at({}).valueSPerM).toBeCloseTo(0.6, 12)
    expect(at({ temperatureC: 75 }).valueSPerM / at({}).valueSPerM).toBeCloseTo(2, 12)
  })

  test('frozen through it is a class of its own, wider where salted; between it is continuous', () => {
    const mince = (temperatureC: number) => at({ food: 'beef_mince', temperatureC })
    expect(mince(-18).valueSPerM).toBe(0.005)
    expect([mince(-18).lowSPerM, mince(-18).highSPerM]).toEqual([0.001, 0.01])
    expect(at({ temperatureC: -18 }).highSPerM).toBe(0.05)
    expect(mince(-18).state).toBe('frozen')
    expect(mince(-5).state).toBe('partly-frozen')
    expect(mince(-5).valueSPerM).toBeGreaterThan(0.005)
    expect(mince(-5).valueSPerM).toBeLessThan(mince(0).valueSPerM)
    expect(mince(-1.0001).valueSPerM / mince(-0.9999).valueSPerM).toBeCloseTo(1, 3)
    expect(mince(-9.4999).valueSPerM / mince(-9.5001).valueSPerM).toBeCloseTo(1, 3)
  })

  test('a dry food stays dry: cold, salted or at the top of its range it adds no signal', () => {
    for (const food of ['biscuit', 'potato_crisps', 'almond']) {
      const dry = at({ food, saltPct: 2, temperatureC: -18 })
      expect(dry.state).toBe('dry')
      expect(productTerm(dry.highSPerM).sPerM).toBe(0)
    }
  })

  test('more salt in the water conducts better, less salt less; the usual salt changes nothing', () => {
    const usual = at({ saltPct: 2.3 }).valueSPerM
    expect(usual).toBe(at({}).valueSPerM)
    expect(at({ saltPct: 4 }).valueSPerM).toBeGreaterThan(usual)
    expect(at({ saltPct: 1 }).valueSPerM).toBeLessThan(usual)
    expect(at({ saltPct: 0 }).valueSPerM).toBeGreaterThan(0)
  })

  test('the salt rule meets ham, cheese and processed cheese within a factor of two of the trade figures', () => {
    // common practice figures, no source: ham 1 to 2.5, processed cheese 0.3 to 0.8 S/m
    expect(saltConductivitySPerM(2.5, 72)).toBeGreaterThan(1)
    expect(saltConductivitySPerM(2.5, 72)).toBeLessThan(2.5)
    expect(saltConductivitySPerM(2.5, 45)).toBeGreaterThan(0.3)
    expect(saltConductivitySPerM(2.5, 45)).toBeLessThan(0.8)
  })

  test('a food of its own composition: dry below 8 % water, a little to 20 %, above that a brine', () => {
    const custom = (waterPct: number) => at({ food: 'custom', waterPct, ashPct: 1.5 })
    expect(custom(5).state).toBe('dry')
    expect(custom(12).valueSPerM).toBe(conductivityRules.lowMoisture.valueSPerM)
    expect(custom(70).valueSPerM).toBeGreaterThan(0.1)
    expect(at({ food: 'custom', waterPct: 70, ashPct: 1.5, saltPct: 3 }).valueSPerM).toBeGreaterThan(
      custom(70).valueSPerM,
    )
  })

  test('a heap of pieces counts with its packing, a block or loaf does not', () => {
    expect(at({ food: 'peas_frozen', packing: 0.57 }).valueSPerM).toBeCloseTo(0.2 * 0.57, 12)
    expect(at({ food: 'bread', packing: 0.57 }).valueSPerM).toBe(0.02)
  })

  test('permittivity goes from 5 to 80 over the decade from 0.001 to 0.01 S/m; below it nothing counts', () => {
    expect(productTerm(0.02)).toEqual({ sPerM: 0.02, relativePermittivity: 80 })
    expect(productTerm(0.005).sPerM).toBe(0.005)
    expect(productTerm(Math.sqrt(1e-5)).relativePermittivity).toBeCloseTo(20, 9)
    expect(productTerm(0.0005).sPerM).toBe(0)
  })

  test('goes from dry to wet without a step: food, its permittivity and its spread', () => {
    for (let s = 0.0009; s < 0.012; s *= 1.02) {
      const [here, next] = [productTerm(s), productTerm(s * 1.02)]
      expect(next.sPerM - here.sPerM).toBeLessThan(0.065 * Math.max(0.001, here.sPerM))
      expect(next.relativePermittivity - here.relativePermittivity).toBeLessThan(3)
      expect(wetness(s * 1.02) - wetness(s)).toBeLessThan(0.01)
    }
    expect([wetness(0.001), wetness(0.01)]).toEqual([0, 1])
  })
})

describe('the table', () => {
  test('has every food of the catalogue, ordered ranges and known sources', () => {
    for (const material of materials.values()) {
      if (material.kind === 'food') expect(foodConductivities.has(material.id), material.id).toBe(true)
    }
    for (const row of foodConductivities.values()) {
      expect(electricalSources.has(row.source), row.source).toBe(true)
      if (row.class === 'dry') continue
      expect(row.range[0]).toBeLessThanOrEqual(row.valueSPerM)
      expect(row.range[1]).toBeGreaterThanOrEqual(row.valueSPerM)
    }
  })

  test('its source ids do not collide with those of the other reference files', () => {
    for (const id of electricalSources.keys()) expect(sources.has(id), id).toBe(false)
  })
})
