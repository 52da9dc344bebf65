import { describe, expect, test } from 'vitest'
import { brineConductivitySPerM } from '../../src/coil/food/brine.ts'
import { foodConductivity } from '../../src/coil/food/food-conductivity.ts'
import { ironPowderSusceptibility } from '../../src/coil/food/iron-powder.ts'
import { productResponse, sphereGeometryM5, weakConductor } from '../../src/coil/food/product-block.ts'
import { spherePolarizability } from '../../src/coil/piece/sphere.ts'
import { magnitude, phaseDeg } from '../../src/numerics/complex.ts'

const food = (changes: Partial<Parameters<typeof foodConductivity>[0]>) =>
  foodConductivity({
    food: 'custom',
    waterPct: null,
    ashPct: null,
    saltPct: null,
    temperatureC: 25,
    packing: 1,
    enteredSPerM: null,
    ...changes,
  })

describe('signal of a food', () => {
  test('a weakly conducting ball is the exact sphere (Landau and Lifshitz § 59, mark M)', () => {
    const exact = spherePolarizability(0.02, { conductivitySPerM: 1, relativePermeability: 1 }, 1e5)
    expect(weakConductor(sphereGeometryM5(0.02), 1, 0, 1e5).im / exact.im).toBeCloseTo(1, 4)
  })

  test('intact muscle has −83, −80, −77, −79° at 100, 200, 400, 1000 kHz (Gabriel 1996 as tabulated in BioMed Eng OnLine 2018, table 3, mark V)', () => {
    const rows = [
      [100e3, 0.362, 8089, -83],
      [200e3, 0.384, 6378, -80],
      [400e3, 0.428, 4339, -77],
      [1000e3, 0.503, 1836, -79],
    ] as const
    for (const [f, sigma, permittivity, degrees] of rows) {
      expect(Math.abs(phaseDeg(weakConductor(1, sigma, permittivity, f)) - degrees)).toBeLessThan(0.6)
    }
  })

  test('100 × 40 × 150 mm at 0.5 S/m in 175 mm at 300 kHz: 4.6e-8 m³, 36 times a 1 mm steel ball (mark C)', () => {
    const block = {
      widthM: 0.1,
      heightM: 0.04,
      lengthM: 0.15,
      conductivitySPerM: 0.5,
      relativePermittivity: 2000,
      susceptibility: 0,
      sideBySide: 1,
    }
    const p = magnitude(productResponse(block, 0.175, 300e3))
    const ball = magnitude(
      spherePolarizability(5e-4, { conductivitySPerM: 6e6, relativePermeability: 100 }, 300e3),
    )
    expect(p / 4.6e-8).toBeCloseTo(1, 1)
    expect(p / ball).toBeGreaterThan(35)
    expect(p / ball).toBeLessThan(37)
  })

  test('iron powder, 10 to 50 mg per 100 g at 0.3 g/cm³: χ about 1e-5 to 6e-5 (mark C)', () => {
    expect(ironPowderSusceptibility(100, 0.3)).toBeCloseTo(1.14e-5, 7)
    expect(ironPowderSusceptibility(500, 0.3)).toBeCloseTo(5.7e-5, 6)
  })
})

describe('conductivity of foods', () => {
  test('minced beef with 18 to 20 % fat at −1 °C: 0.393 S/m (Cevik and Icier 2018, abstract, mark V)', () => {
    const mince = food({ food: 'beef_mince', temperatureC: -0.999 })
    expect(mince.valueSPerM).toBeCloseTo(0.393, 2)
    expect(mince.state).toBe('thawed')
  })

  test('milk as a food of its own composition lies within a factor two of 0.708 S/m at 20 °C (abstract, mark V)', () => {
    const milk = food({ waterPct: 88, ashPct: 0.7, temperatureC: 20 })
    expect(milk.valueSPerM).toBeGreaterThan(0.35)
    expect(milk.valueSPerM).toBeLessThan(1.4)
    expect(milk.lowSPerM).toBeLessThan(0.708)
    expect(milk.highSPerM).toBeGreaterThan(0.708)
  })

  test('raw potato with intact cells: 0.025 S/m (Cho and Song 2019, mark V)', () => {
    expect(food({ food: 'potato' }).valueSPerM).toBe(0.025)
  })

  test('brine at 20 °C: 0.82, 1.60, 3.02, 7.01, 12.6 S/m for 0.5 to 10 % (CRC Handbook, mark M)', () => {
    for (const [salt, value] of [
      [0.5, 0.82],
      [1, 1.6],
      [2, 3.02],
      [5, 7.01],
      [10, 12.6],
    ] as const) {
      expect(brineConductivitySPerM(salt) * 0.9).toBeCloseTo(value, 9)
    }
  })

  test('lean pork 0.64 to 0.76 S/m (Shirsat 2004, abstract, mark V) lies in the range used for chicken', () => {
    const chicken = food({ food: 'chicken_breast' })
    expect(chicken.lowSPerM).toBeLessThan(0.64)
    expect(chicken.highSPerM).toBeGreaterThan(0.76)
  })
})
