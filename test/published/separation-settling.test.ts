import { describe, expect, it } from 'vitest'
import { figures, fluids } from '../../src/reference/separation.ts'
import { sphereDrag, steadySpeedMPerS } from '../../src/separation/density/settling.ts'
import { equalSettlingMm, settlingMPerS } from '../../src/separation/density/settling-piece.ts'
import { GRAVITY_M_PER_S2 } from '../../src/separation/physical-constants.ts'

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

  it('equal settling tends to d·ρ_food/ρ_stone in air (Perry, equal settling in the Newton regime); 3 %', () => {
    const speed = settlingMPerS(40, 1.045, fluids.air, 1)
    expect(off(equalSettlingMm(speed, 2.65, fluids.air, 1)!, (40 * 1.045) / 2.65)).toBeLessThan(0.03)
  })
})

describe('settling speed against published examples', () => {
  it('GPSA Engineering Data Book, 13th edition, example 7-1: 0.46 ft/s (quoted by a library); 3 %', () => {
    // Drop of 150 µm and 31.2 lb/ft³ in gas of 2.07 lb/ft³ and 1.2e-5 Pa·s.
    const lbPerFt3 = 16.018463
    const gas = { densityKgPerM3: 2.07 * lbPerFt3, viscosityPaS: 1.2e-5 }
    const f = weight(31.2 * lbPerFt3, gas.densityKgPerM3)
    expect(off(steadySpeedMPerS(150e-6, f, gas, 1) / 0.3048, 0.46)).toBeLessThan(0.03)
  })

  // A. Rushton, A. S. Ward, R. G. Holdich, Solid-Liquid Filtration and Separation Technology (1996),
  // spheres in water of 1e-3 Pa·s, as quoted in the tests of a library; 5 %.
  it.each([
    { micrometres: 70, solid: 2600, published: 0.00406 },
    { micrometres: 50, solid: 2800, published: 0.002453 },
  ])('Rushton, Ward, Holdich: $micrometres µm at $solid kg/m³ settles at $published m/s', (row) => {
    const water = { densityKgPerM3: 1000, viscosityPaS: 1e-3 }
    const ours = steadySpeedMPerS(row.micrometres * 1e-6, weight(row.solid, 1000), water, 1)
    expect(off(ours, row.published)).toBeLessThan(0.05)
  })

  it('angular sand lies between two published equations carried out by an open library', () => {
    // 160 µm, sphericity 0.67, 2,600 kg/m³, in gas of 1.2 kg/m³ and 1.8e-5 Pa·s: 0.8857 m/s by Haider and
    // Levenspiel's explicit equation, 0.6230 m/s by Ganser 1993.
    const gas = { densityKgPerM3: 1.2, viscosityPaS: 1.8e-5 }
    const ours = steadySpeedMPerS(160e-6, weight(2600, 1.2), gas, 0.67)
    expect(ours).toBeGreaterThan(0.623)
    expect(ours).toBeLessThan(0.8857)
  })

  it('drag of a sphere at Re 200 is 0.796 (Haider and Levenspiel, documentation of an open library)', () => {
    expect(off(sphereDrag(200), 0.7959551680251666)).toBeLessThan(1e-9)
  })

  // R. I. Ferguson and M. Church 2004, w = R·g·D²/(C1·ν + √(0.75·C2·R·g·D³)), constants as quoted by an open
  // encyclopaedia: natural grains by nominal diameter 20 and 1.1, limit of angularity 24 and 1.2. Ours with
  // the sphericities that figure fragment-sphericity gives to stones; 8 %.
  it.each([
    { kind: 'natural stones', c1: 20, c2: 1.1, psi: 0.78 },
    { kind: 'the most angular stones', c1: 24, c2: 1.2, psi: 0.75 },
  ])('$kind of 4 to 20 mm in water settle as Ferguson and Church say', ({ c1, c2, psi }) => {
    const { water } = fluids
    const nu = water.viscosityPaS / water.densityKgPerM3
    const excess = (2650 - water.densityKgPerM3) / water.densityKgPerM3
    for (const d of [0.004, 0.01, 0.02]) {
      const rg = excess * GRAVITY_M_PER_S2
      const published = (rg * d * d) / (c1 * nu + Math.sqrt(0.75 * c2 * rg * d ** 3))
      expect(off(settlingMPerS(d * 1000, 2.65, water, psi), published)).toBeLessThan(0.08)
    }
  })
})

describe('settling speed against measured food grains in air', () => {
  const range = (masses: readonly number[], density: number, psi: readonly [number, number]) => {
    const speeds = masses.flatMap((mg) =>
      psi.map((p) => settlingMPerS(Math.cbrt((6 * mg) / density / Math.PI), density, fluids.air, p)),
    )
    return [Math.min(...speeds), Math.max(...speeds)] as const
  }

  it('wheat kernels, 6.8 to 8.6 m/s: ours overlaps and strays by 15 % at most', () => {
    // M. H. Khoshtaghaza and R. Mehdizadeh, Aerodynamic Properties of Wheat Kernel and Straw Materials
    // (abstract): kernels of 20 to 50 mg, 7 to 20 % moist. Density 1.3 g/cm³ is our assumption.
    const [slow, fast] = range([20, 50], 1.3, figures['grain-sphericity-oval'].range)
    expect(slow).toBeGreaterThan(6.81 * 0.85)
    expect(slow).toBeLessThan(8.63)
    expect(fast).toBeLessThan(8.63 * 1.15)
  })

  it('almond kernels, 5.6 to 7.2 m/s: ours reaches into it, its middle is up to 20 % too fast', () => {
    // "Physical properties of almond nut and kernel" (abstract): kernels of 0.69 g, 0.90 to 1.00 g/cm³.
    const { range: flat, value } = figures['grain-sphericity-flat']
    const [slow] = range([690], 0.95, flat)
    const [middle] = range([690], 0.95, [value, value])
    expect(slow).toBeGreaterThan(5.62)
    expect(slow).toBeLessThan(7.2)
    expect(middle).toBeLessThan(7.2 * 1.2)
  })
})
