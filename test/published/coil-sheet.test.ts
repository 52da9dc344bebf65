import { describe, expect, test } from 'vitest'
import { blockPolarizability } from '../../src/coil/food/product-block.ts'
import { closedTube, magneticShell, thinShell } from '../../src/coil/pack/closed-wrap.ts'
import { flakeFaceOn, flakeInPlane, oblateDemagnetisation } from '../../src/coil/piece/flake.ts'
import { discPolarizability, rectanglePolarizability } from '../../src/coil/piece/sheet.ts'
import { MU0 } from '../../src/coil/piece/skin-argument.ts'
import { torsionConstantM4 } from '../../src/coil/piece/torsion.ts'
import { magnitude } from '../../src/numerics/complex.ts'

const R = 0.03
const ALUMINIUM = { conductivitySPerM: 3.5e7, relativePermeability: 1 }
const STEEL = { conductivitySPerM: 6e6, relativePermeability: 100 }

describe('thin disc and rectangle', () => {
  test('perfect disc: (8/3)R³, the flat limit of the oblate spheroid (Osborn 1945, mark M)', () => {
    const k = 1e-4
    const volume = (4 / 3) * Math.PI * R ** 3 * k
    const spheroid = -volume / (1 - oblateDemagnetisation(k).normal)
    expect(discPolarizability(R, 1e12, 1e6).re / spheroid).toBeCloseTo(1, 3)
  })

  test('resistive disc: the moment of rings driven by their own flux, summed (mark C)', () => {
    const omega = 2 * Math.PI * 100
    const s = 1
    let moment = 0
    const n = 2000
    for (let k = 0; k < n; k++) {
      const r = ((k + 0.5) * R) / n
      moment += Math.PI * r * r * s * ((omega * MU0 * r) / 2) * (R / n)
    }
    expect(discPolarizability(R, s, 100).im / -moment).toBeCloseTo(1, 4)
  })

  test('the rectangle keeps both limits: J/4 and the disc of its area', () => {
    const loss = (2 * Math.PI * 100 * MU0 * torsionConstantM4(0.1, 0.05)) / 4
    expect(rectanglePolarizability(0.1, 0.05, 1, 100).im / -loss).toBeCloseTo(1, 5)
    const disc = (8 / 3) * ((0.1 * 0.05) / Math.PI) ** 1.5
    expect(rectanglePolarizability(0.1, 0.05, 1e12, 1e6).re / -disc).toBeCloseTo(1, 4)
  })
})

describe('torsion constant (Timoshenko and Roark, mark M)', () => {
  test.each([
    [1, 0.1406],
    [1.5, 0.196],
    [2, 0.229],
    [3, 0.263],
    [5, 0.291],
    [10, 0.312],
  ])('a/b = %d: J = %d·ab³ (table, three digits)', (ratio, factor) => {
    expect(Math.abs(torsionConstantM4(ratio, 1) / (factor * ratio) - 1)).toBeLessThan(0.003)
  })

  test('Saint-Venant’s series, exact: within 0.35 % for 1 to 20 (worst near 1.3)', () => {
    for (const ratio of [1, 1.3, 2, 4, 8, 20]) {
      let sum = 0
      for (let n = 1; n < 60; n += 2) sum += Math.tanh((n * Math.PI * ratio) / 2) / n ** 5
      const exact = ratio * (1 / 3 - ((64 / Math.PI ** 5) * sum) / ratio)
      expect(Math.abs(torsionConstantM4(ratio, 1) / exact - 1)).toBeLessThan(0.0035)
    }
  })
})

describe('flake', () => {
  test('non-magnetic, thin, field in its plane: −iωμ0σt²/12 per volume (one-dimensional plate, mark C)', () => {
    const t = 1e-5
    const alpha = flakeInPlane(2.5e-5, t, ALUMINIUM, 1000)
    expect(alpha.im / (-2 * Math.PI * 1000 * MU0 * 3.5e7 * (t * t * t * 2.5e-5)) / (1 / 12)).toBeCloseTo(1, 4)
  })

  test('a wide food block and a plate are the same body: −iωμ0σ·L·J/4 goes to V·t²/12', () => {
    const block = { widthM: 1, heightM: 1e-3, lengthM: 0.1, conductivitySPerM: 2, relativePermittivity: 0 }
    const plate = flakeInPlane(0.1, 1e-3, { conductivitySPerM: 2, relativePermeability: 1 }, 1e5)
    expect(blockPolarizability(block, 1e5).im / plate.im).toBeCloseTo(1, 2)
  })

  test('lying flat it nearly vanishes when it does not magnetise, and answers best when it does', () => {
    const face = 5e-5
    expect(magnitude(flakeFaceOn(face, 1e-4, ALUMINIUM, 3e5))).toBeGreaterThan(
      10 * magnitude(flakeInPlane(face, 1e-4, ALUMINIUM, 3e5)),
    )
    const still = flakeInPlane(face, 1e-4, STEEL, 1e-3)
    const { inPlane } = oblateDemagnetisation(1e-4 / (2 * Math.sqrt(face / Math.PI)))
    expect(still.re / ((face * 1e-4 * 99) / (1 + 99 * inPlane))).toBeCloseTo(1, 5)
  })
})

describe('closed layers (J. D. Jackson, Classical Electrodynamics, 5.12, and textbook shells, mark M)', () => {
  test('a magnetic shell of high permeability leaves 9/(2μ(1 − a³/b³)) of the field', () => {
    const shell = magneticShell(0.9, 1, 1e6)
    expect(shell.inside.re / (9 / (2e6 * (1 - 0.9 ** 3)))).toBeCloseTo(1, 3)
    expect(shell.alpha.re / (4 * Math.PI)).toBeCloseTo(1, 3)
  })

  test('a shell without hole is the magnetised sphere', () => {
    expect(magneticShell(0, 1, 100).alpha.re).toBeCloseTo((4 * Math.PI * 99) / 102, 9)
  })

  test('a steel can of 40 mm radius and 0.2 mm wall: about 2.0e-4 m³ (mark C)', () => {
    expect(magneticShell(0.0398, 0.04, 100).alpha.re / 2.0e-4).toBeCloseTo(1, 1)
  })

  test('a thin shell: loss ωμ0S·R/3 of 2πR³ at low, perfect sphere and no field inside at high frequency', () => {
    const low = thinShell(R, 1, 1)
    const q = (2 * Math.PI * MU0 * R) / 3
    expect(low.alpha.im / (-2 * Math.PI * R ** 3 * q)).toBeCloseTo(1, 6)
    const high = thinShell(R, 1e6, 1e7)
    expect(high.alpha.re / (-2 * Math.PI * R ** 3)).toBeCloseTo(1, 6)
    expect(magnitude(high.inside)).toBeLessThan(1e-4)
  })

  test('a foil tube of 9 µm, 100 × 30 mm: |T²| 0.33 at 50 kHz, 0.013 at 300 kHz; 1.000 at 1 Hz (mark C)', () => {
    const t2 = (f: number) => magnitude(closedTube(0.003, 0.26, 0.1, 315, f).inside) ** 2
    expect(t2(50e3)).toBeCloseTo(0.33, 2)
    expect(t2(300e3)).toBeCloseTo(0.013, 3)
    expect(t2(1)).toBeCloseTo(1, 6)
  })
})
