import { describe, expect, test } from 'vitest'
import { oblateDemagnetisation } from '../../src/coil/piece/flake.ts'
import { prolateDemagnetisation, shortFerrousWireAlong } from '../../src/coil/piece/short-ferrous-wire.ts'
import { MU0 } from '../../src/coil/piece/skin-argument.ts'
import { spherePolarizability } from '../../src/coil/piece/sphere.ts'
import { besselExcess, wireAcrossFieldPerM, wireAlongFieldPerM } from '../../src/coil/piece/wire.ts'
import { complex, magnitude } from '../../src/numerics/complex.ts'

const A = 0.25e-3
const COPPER = { conductivitySPerM: 5.8e7, relativePermeability: 1 }
const STEEL = { conductivitySPerM: 6e6, relativePermeability: 100 }
const SS316 = { conductivitySPerM: 1.35e6, relativePermeability: 1.005 }

describe('long wire (exact two-dimensional solution; limits from textbooks, mark M)', () => {
  test('x·I0(x)/I1(x) at 1 and 10 (Abramowitz and Stegun, table 9.8, mark M)', () => {
    expect(besselExcess(complex(1)).re + 2).toBeCloseTo(1.2660658777520084 / 0.5651591039924851, 12)
    expect(besselExcess(complex(10)).re + 2).toBeCloseTo((10 * 2815.716628466254) / 2670.988303701255, 10)
  })

  test('continued fraction and large-argument series meet', () => {
    for (const angle of [0.3, Math.PI / 4]) {
      const at = (size: number) => besselExcess(complex(size * Math.cos(angle), size * Math.sin(angle)))
      const below = at(149.999999)
      const above = at(150.000001)
      expect(Math.hypot(above.re - below.re, above.im - below.im) / magnitude(below)).toBeLessThan(3e-8)
    }
  })

  test('steady field: πa²(μr − 1) along, 2πa²(μr − 1)/(μr + 1) across', () => {
    expect(wireAlongFieldPerM(A, STEEL, 1e-3).re / (Math.PI * A * A * 99)).toBeCloseTo(1, 5)
    expect(wireAcrossFieldPerM(A, STEEL, 1e-3).re / ((2 * Math.PI * A * A * 99) / 101)).toBeCloseTo(1, 5)
  })

  test('perfect conductor: −πa² along, −2πa² across', () => {
    expect(wireAlongFieldPerM(A, COPPER, 1e15).re / (-Math.PI * A * A)).toBeCloseTo(1, 3)
    expect(wireAcrossFieldPerM(A, COPPER, 1e15).re / (-2 * Math.PI * A * A)).toBeCloseTo(1, 3)
  })

  test('resistive: (π/8)a⁴ωμ0σ along and twice that across: the wire is weak along the travel', () => {
    const f = 10
    const loss = (Math.PI / 8) * A ** 4 * 2 * Math.PI * f * MU0 * COPPER.conductivitySPerM
    expect(wireAlongFieldPerM(A, COPPER, f).im / -loss).toBeCloseTo(1, 4)
    expect(wireAcrossFieldPerM(A, COPPER, f).im / (-2 * loss)).toBeCloseTo(1, 4)
  })
})

describe('demagnetisation (J. A. Osborn 1945, Physical Review 67:351, table values from memory, mark M)', () => {
  test('prolate: 0.1736, 0.0558, 0.0203 at aspect 2, 5, 10; 1/3 for the sphere', () => {
    expect(prolateDemagnetisation(2)).toBeCloseTo(0.173564, 5)
    expect(prolateDemagnetisation(5)).toBeCloseTo(0.055821, 5)
    expect(prolateDemagnetisation(10)).toBeCloseTo(0.020286, 5)
    expect(prolateDemagnetisation(1.001)).toBeCloseTo(1 / 3, 3)
  })

  test('oblate: 0.8608 along the normal at aspect 10; the three factors add up to 1', () => {
    const { normal, inPlane } = oblateDemagnetisation(0.1)
    expect(normal).toBeCloseTo(0.860804, 5)
    expect(normal + 2 * inPlane).toBeCloseTo(1, 12)
    expect(oblateDemagnetisation(0.999).normal).toBeCloseTo(1 / 3, 3)
  })
})

describe('lengths of wire that answer as a 2 mm ball at 300 kHz', () => {
  const ball = (metal: typeof STEEL) => magnitude(spherePolarizability(1e-3, metal, 300e3))
  const lengths = (metal: typeof STEEL, diameterMm: number) => [
    (ball(metal) / magnitude(wireAlongFieldPerM(diameterMm / 2000, metal, 300e3))) * 1000,
    (ball(metal) / magnitude(wireAcrossFieldPerM(diameterMm / 2000, metal, 300e3))) * 1000,
  ]

  test('US FDA Fish and Fishery Products guide, chapter 20 (mark M): a 24 mm stainless wire thinner than 2 mm may be missed', () => {
    // 24 mm of 316 answer as the ball at a diameter of 0.91 mm along and 0.76 mm across the travel (mark C).
    expect(lengths(SS316, 0.91)[0]! / 24).toBeCloseTo(1, 1)
    expect(lengths(SS316, 0.76)[1]! / 24).toBeCloseTo(1, 1)
  })

  test('316: 67 and 34 mm of 0.7 mm wire, 25 and 12.5 mm of 0.9 mm (mark C)', () => {
    expect(lengths(SS316, 0.7).map(Math.round)).toEqual([67, 34])
    expect(lengths(SS316, 0.9)[0]! / 25).toBeCloseTo(1, 1)
    expect(lengths(SS316, 0.9)[1]! / 12.5).toBeCloseTo(1, 1)
  })

  test('mild steel, 0.5 mm: 3.5 mm along, 24 mm across: iron is weak across the travel (mark C)', () => {
    const along = (mm: number) => magnitude(shortFerrousWireAlong(0.25e-3, mm / 1000, STEEL, 300e3))
    expect(along(3.4)).toBeLessThan(ball(STEEL))
    expect(along(3.6)).toBeGreaterThan(ball(STEEL))
    expect(lengths(STEEL, 0.5)[1]! / 24).toBeCloseTo(1, 1)
  })
})
