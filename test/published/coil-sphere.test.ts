import { describe, expect, test } from 'vitest'
import { MU0, skinDepthM } from '../../src/coil/piece/skin-argument.ts'
import { spherePolarizability } from '../../src/coil/piece/sphere.ts'

const A = 1e-3
const COPPER = { conductivitySPerM: 5.8e7, relativePermeability: 1 }
const STEEL = { conductivitySPerM: 6e6, relativePermeability: 100 }
const SS316 = { conductivitySPerM: 1.35e6, relativePermeability: 1.005 }
const VOLUME = (4 / 3) * Math.PI * A ** 3

/** Frequency at which ωμ0σa² has this value. */
const frequencyFor = (x: number, sigma: number, radiusM = A) => x / (2 * Math.PI * MU0 * sigma * radiusM ** 2)

describe('sphere (J. R. Wait 1951, Geophysics 16:666, mark M)', () => {
  test('steady field: the magnetised sphere, 4πa³(μr − 1)/(μr + 2)', () => {
    const alpha = spherePolarizability(A, STEEL, 1e-3)
    expect(alpha.re / ((4 * Math.PI * A ** 3 * 99) / 102)).toBeCloseTo(1, 6)
    expect(Math.abs(alpha.im / alpha.re)).toBeLessThan(1e-5)
  })

  test('perfect conductor: −2πa³, reached as 1/|x|', () => {
    const alpha = spherePolarizability(A, COPPER, 1e14)
    expect(Math.abs(alpha.re / (-2 * Math.PI * A ** 3) - 1)).toBeLessThan(1e-3)
    expect(Math.abs(alpha.im / alpha.re)).toBeLessThan(1e-3)
  })

  test('first loss term of any permeability: −(6π/5)a⁵ωμ0σμr²/(μr + 2)²', () => {
    for (const metal of [COPPER, STEEL, SS316]) {
      const { conductivitySPerM: sigma, relativePermeability: mu } = metal
      const f = frequencyFor(1e-6, sigma)
      const loss = ((6 * Math.PI) / 5) * A ** 3 * 1e-6 * (mu / (mu + 2)) ** 2
      expect(spherePolarizability(A, metal, f).im / -loss).toBeCloseTo(1, 4)
    }
  })
})

describe('sphere without magnetism (Landau and Lifshitz, Electrodynamics of Continuous Media, § 59, mark M)', () => {
  // Their α per volume is Gaussian and for exp(−iωt): ours is 4πV times its conjugate.
  test('weak skin effect: α′ = −(1/105π)(a/δ)⁴, α″ = (1/20π)(a/δ)²', () => {
    const f = frequencyFor(1e-3, COPPER.conductivitySPerM)
    const ratio = A / skinDepthM(COPPER, f)
    const alpha = spherePolarizability(A, COPPER, f)
    expect(alpha.re / (-4 * VOLUME * (ratio ** 4 / 105))).toBeCloseTo(1, 5)
    expect(alpha.im / (-4 * VOLUME * (ratio ** 2 / 20))).toBeCloseTo(1, 5)
  })

  test('strong skin effect: α′ = −(3/8π)(1 − 3δ/2a), α″ = (9/16π)(δ/a)', () => {
    const f = frequencyFor(1e6, COPPER.conductivitySPerM)
    const ratio = skinDepthM(COPPER, f) / A
    const alpha = spherePolarizability(A, COPPER, f)
    expect(alpha.re / (-4 * VOLUME * (3 / 8) * (1 - 1.5 * ratio))).toBeCloseTo(1, 5)
    // next term −3/x² is −3δ²/2ia²: relative δ/a
    expect(Math.abs(alpha.im / (-4 * VOLUME * (9 / 16) * ratio) - 1)).toBeLessThan(1.1 * ratio)
  })
})

describe('figures computed for this kind of coil (mark C)', () => {
  const scan = (value: (x: number) => number) => {
    let at = 0
    let most = -Infinity
    for (let x = 1; x < 40; x *= 1.001) {
      if (value(x) > most) {
        most = value(x)
        at = x
      }
    }
    return { at, most }
  }
  const answer = (x: number) => spherePolarizability(A, COPPER, frequencyFor(x, COPPER.conductivitySPerM))

  test('the loss is greatest at ωμ0σa² = 11.6, 0.355 of 2πa³', () => {
    const { at, most } = scan((x) => -answer(x).im)
    expect(at).toBeCloseTo(11.6, 1)
    expect(most / (2 * Math.PI * A ** 3)).toBeCloseTo(0.355, 3)
  })

  test('best single frequency against a resistive product: ωμ0σa² = 10.2; for 316 955, 611, 424 kHz', () => {
    const { at } = scan((x) => -answer(x).re / x)
    expect(at).toBeCloseTo(10.2, 1)
    const best = [1, 1.25, 1.5].map((mm) => frequencyFor(10.18, 1.35e6, mm / 1000) / 1000)
    expect(best[0]! / 955).toBeCloseTo(1, 2)
    expect(best[1]! / 611).toBeCloseTo(1, 2)
    expect(best[2]! / 424).toBeCloseTo(1, 2)
  })

  test('316 has the phase of a wet product at 1.65, 0.95, 0.57 mm for 100, 300, 850 kHz', () => {
    for (const [f, diameterMm] of [
      [100e3, 1.65],
      [300e3, 0.95],
      [850e3, 0.57],
    ] as const) {
      const below = spherePolarizability((diameterMm - 0.02) / 2000, SS316, f)
      const above = spherePolarizability((diameterMm + 0.02) / 2000, SS316, f)
      expect(below.re).toBeGreaterThan(0)
      expect(above.re).toBeLessThan(0)
    }
  })

  test('large steel turns: its reactive answer changes sign near 5.7 mm at 850 kHz and 9.6 mm at 300 kHz', () => {
    for (const [f, diameterMm] of [
      [850e3, 5.7],
      [300e3, 9.6],
    ] as const) {
      expect(spherePolarizability((diameterMm - 0.1) / 2000, STEEL, f).re).toBeGreaterThan(0)
      expect(spherePolarizability((diameterMm + 0.1) / 2000, STEEL, f).re).toBeLessThan(0)
    }
  })
})
