import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  binomialAtMost,
  exactInterval,
  lowerBound,
  runsToDemonstrate,
  upperBound,
} from '../../src/numerics/binomial.ts'

/**
 * 29 of 29 for a chance of 0.90 at 95 % confidence: 0.9^29 = 0.047 (NASA/TP-2011-217176; Annis, notes on
 * binomial demonstrations, statisticalengineering.com). The other rows are the exact binomial tail, computed
 * with arbitrary precision outside this project.
 */
const FEWEST_RUNS: readonly (readonly [chance: number, confidence: number, runs: readonly number[]])[] = [
  [0.9, 0.95, [29, 46, 61, 76, 89, 103]],
  [0.9, 0.9, [22, 38, 52, 65, 78, 91]],
  [0.95, 0.95, [59, 93, 124, 153, 181, 208]],
  [0.99, 0.95, [299, 473, 628, 773, 913, 1049]],
  [0.8, 0.95, [14, 22, 30, 37, 44, 50]],
]

describe('runs that demonstrate a chance of finding', () => {
  it.each(FEWEST_RUNS)('chance %s at confidence %s', (chance, confidence, runs) => {
    expect(runs.map((_, misses) => runsToDemonstrate({ chance, confidence }, misses))).toEqual(runs)
  })

  it('has the published tails at 90/95, to five digits', () => {
    const tails = [29, 46, 61, 76, 89].map((runs, misses) => binomialAtMost(misses, runs, 0.1))
    expect(tails.map((tail) => tail.toFixed(5))).toEqual([
      '0.04710',
      '0.04800',
      '0.04912',
      '0.04697',
      '0.04970',
    ])
    expect(binomialAtMost(0, 28, 0.1).toFixed(5)).toBe('0.05233')
  })
})

/** Clopper & Pearson 1934, Biometrika 26:404; values from exact beta quantiles computed outside this project. */
describe('Clopper–Pearson bounds, to six digits', () => {
  it.each([
    [29, 29, 0.880555, 1, 0.901855],
    [10, 10, 0.691503, 1, 0.741134],
    [9, 10, 0.554984, 0.997471, 0.605837],
    [27, 30, 0.734712, 0.978883, 0.761402],
    [59, 60, 0.910601, 0.999578, 0.92336],
    [0, 10, 0, 0.308497, 0],
  ])('%s of %s', (found, runs, low, high, oneSided) => {
    const [from, to] = exactInterval(found, runs, 0.95)
    expect(from).toBeCloseTo(low, 6)
    expect(to).toBeCloseTo(high, 6)
    expect(lowerBound(found, runs, 0.95)).toBeCloseTo(oneSided, 6)
  })

  /** By the symmetry of p = ½ and by 1 − P, which the short sums know nothing of. */
  it('holds for very many runs, whose far terms are left out', () => {
    const half = (1 - Math.exp(-0.5 * Math.log(Math.PI * 500_000))) / 2
    expect(binomialAtMost(499_999, 1_000_000, 0.5)).toBeCloseTo(half, 8)
    for (const [count, runs, chance] of [
      [1001, 3000, 0.33],
      [1001, 1100, 0.9],
      [1500, 100_000, 0.0148],
    ] as const) {
      let mirrored = 0
      let logTerm = runs * Math.log(chance)
      for (let missed = 0; missed <= runs; missed++) {
        if (runs - missed <= count) mirrored += Math.exp(logTerm)
        logTerm += Math.log((runs - missed) / (missed + 1)) + Math.log1p(-chance) - Math.log(chance)
      }
      expect(binomialAtMost(count, runs, chance)).toBeCloseTo(mirrored, 8)
    }
    // The normal approximation with half a run taken off.
    expect(lowerBound(500_000, 1_000_000, 0.95)).toBeCloseTo(0.5 - 1.6448536 / 2000 - 0.5e-6, 8)
  })

  it('29 of 29 shows 90/95 only with the one-sided bound', () => {
    expect(lowerBound(29, 29, 0.95)).toBeGreaterThan(0.9)
    expect(exactInterval(29, 29, 0.95)[0]).toBeLessThan(0.9)
  })
})

describe('the exact binomial', () => {
  const run = fc.integer({ min: 1, max: 400 })
  const chance = fc.double({ min: 0.01, max: 0.99, noNaN: true })

  it('rises with the count, ends at 1, and mirrors itself', () => {
    fc.assert(
      fc.property(run, chance, fc.nat({ max: 400 }), (runs, p, k) => {
        const at = binomialAtMost(k, runs, p)
        expect(at).toBeGreaterThanOrEqual(binomialAtMost(k - 1, runs, p))
        expect(at + binomialAtMost(runs - k - 1, runs, 1 - p)).toBeCloseTo(1, 9)
        expect(binomialAtMost(runs, runs, p)).toBe(1)
      }),
    )
  })

  it('the bound of all found is confidence turned round: (1 − confidence)^(1/n)', () => {
    fc.assert(
      fc.property(run, (runs) => {
        expect(lowerBound(runs, runs, 0.95)).toBeCloseTo(0.05 ** (1 / runs), 9)
        expect(upperBound(0, runs, 0.95)).toBeCloseTo(1 - 0.05 ** (1 / runs), 9)
      }),
    )
  })

  it('demonstrates with exactly the fewest runs', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 0.99, noNaN: true }), fc.nat({ max: 6 }), (p, misses) => {
        const runs = runsToDemonstrate({ chance: p, confidence: 0.95 }, misses)
        expect(lowerBound(runs - misses, runs, 0.95)).toBeGreaterThanOrEqual(p - 1e-9)
        expect(lowerBound(runs - 1 - misses, runs - 1, 0.95)).toBeLessThan(p)
      }),
      { numRuns: 60 },
    )
  })

  it('says what it was given when that is no chance', () => {
    expect(() => binomialAtMost(1, 10, 1.2)).toThrow('1.2 was given')
    expect(() => runsToDemonstrate({ chance: 1, confidence: 0.95 }, 0)).toThrow('between 0 and 1')
  })
})
