import { describe, expect, it } from 'vitest'
import { fluids } from '../../src/reference/separation.ts'
import { GRAVITY_M_PER_S2 } from '../../src/separation/physical-constants.ts'
import { steadySpeedMPerS } from '../../src/separation/settling.ts'
import { equalSettlingMm, settlingMPerS } from '../../src/separation/settling-piece.ts'

const off = (ours: number, published: number) => Math.abs(ours / published - 1)
const weight = (solid: number, fluid: number) => GRAVITY_M_PER_S2 * (solid - fluid)

describe('settling speed in its two limits', () => {
  it("is Stokes' d²·g·Δρ/(18μ) for the smallest spheres (G. G. Stokes 1851); 0.1 %", () => {
    const water = { densityKgPerM3: 1000, viscosityPaS: 1e-3 }
    const f = weight(2650, 1000)
    for (const d of [1e-7, 1e-6]) {
      const stokes = (d * d * f) / (18 * 1e-3)
      expect(off(steadySpeedMPerS(d, f, water, 1), stokes)).toBeLessThan(0.001)
    }
  })

  it("is Newton's with a drag coefficient of 0.44 for large spheres (textbook constant, from memory); 4 %", () => {
    // u = √(4·d·f/(3·C·ρ_f)); Reynolds numbers here 2e4 to 6e4.
    const { air } = fluids
    for (const [d, rho] of [
      [0.02, 2500],
      [0.03, 1500],
    ] as const) {
      const f = weight(rho, air.densityKgPerM3)
      const newton = Math.sqrt((4 * d * f) / (3 * 0.44 * air.densityKgPerM3))
      expect(off(steadySpeedMPerS(d, f, air, 1), newton)).toBeLessThan(0.04)
    }
  })

  it('equal settling tends to d·ρ_food/ρ_stone in air (Perry, equal settling in the Newton regime); 2 %', () => {
    const speed = settlingMPerS(40, 1.045, fluids.air, 1)
    expect(off(equalSettlingMm(speed, 2.65, fluids.air, 1)!, (40 * 1.045) / 2.65)).toBeLessThan(0.02)
  })
})

describe('settling speed against published examples', () => {
  it('GPSA Engineering Data Book, 13th edition, example 7-1: 0.46 ft/s (quoted by a library); 10 %', () => {
    // Drop of 150 µm and 31.2 lb/ft³ in gas of 2.07 lb/ft³ and 1.2e-5 Pa·s.
    const lbPerFt3 = 16.018463
    const gas = { densityKgPerM3: 2.07 * lbPerFt3, viscosityPaS: 1.2e-5 }
    const f = weight(31.2 * lbPerFt3, gas.densityKgPerM3)
    expect(off(steadySpeedMPerS(150e-6, f, gas, 1) / 0.3048, 0.46)).toBeLessThan(0.1)
  })

  // A. Rushton, A. S. Ward, R. G. Holdich, Solid-Liquid Filtration and Separation Technology (1996),
  // spheres in water of 1e-3 Pa·s, as quoted in the tests of a library; 7 %.
  it.each([
    { micrometres: 70, solid: 2600, published: 0.00406 },
    { micrometres: 50, solid: 2800, published: 0.002453 },
  ])('Rushton, Ward, Holdich: $micrometres µm at $solid kg/m³ settles at $published m/s', (row) => {
    const water = { densityKgPerM3: 1000, viscosityPaS: 1e-3 }
    const ours = steadySpeedMPerS(row.micrometres * 1e-6, weight(row.solid, 1000), water, 1)
    expect(off(ours, row.published)).toBeLessThan(0.07)
  })

  it('Haider & Levenspiel as carried out by an open library: angular sand of sphericity 0.67; 0.2 %', () => {
    // 160 µm, 2,600 kg/m³, in gas of 1.2 kg/m³ and 1.8e-5 Pa·s: 0.8857 m/s.
    const gas = { densityKgPerM3: 1.2, viscosityPaS: 1.8e-5 }
    expect(off(steadySpeedMPerS(160e-6, weight(2600, 1.2), gas, 0.67), 0.8857)).toBeLessThan(0.002)
  })

  it('wheat kernels in air: 7.0 to 8.6 m/s measured', () => {
    // M. H. Khoshtaghaza and R. Mehdizadeh, Aerodynamic Properties of Wheat Kernel and Straw Materials
    // (abstract): kernels of 0.02 to 0.05 g, 7.04 to 7.74 m/s, moist ones up to 8.63. Density 1.3 g/cm³ and
    // sphericity 0.8 to 0.9 are our assumptions.
    const speeds = [20, 50].flatMap((mg) =>
      [0.8, 0.9].map((psi) => settlingMPerS(Math.cbrt((6 * (mg / 1.3)) / Math.PI), 1.3, fluids.air, psi)),
    )
    expect(Math.min(...speeds)).toBeGreaterThan(7.04 * 0.8)
    expect(Math.max(...speeds)).toBeLessThan(8.63 * 1.1)
  })
})
