import { describe, expect, it } from 'vitest'
import { gammaBelow, gammaQuantile, logGamma } from '../../src/numerics/gamma.ts'

describe('gamma function (closed forms; chi-square quantiles as in any statistical table)', () => {
  it('knows factorials and the half', () => {
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.sqrt(Math.PI)), 12)
    expect(logGamma(1)).toBeCloseTo(0, 12)
    expect(logGamma(11)).toBeCloseTo(Math.log(3628800), 11)
  })

  it('is the exponential distribution at shape 1, and a Poisson sum at whole shapes', () => {
    for (const x of [0.1, 1, 2.5, 9]) {
      expect(gammaBelow(1, x)).toBeCloseTo(1 - Math.exp(-x), 12)
      expect(gammaBelow(3, x)).toBeCloseTo(1 - Math.exp(-x) * (1 + x + (x * x) / 2), 12)
    }
  })

  it('gives chi-square quantiles: half of 3.8415 and 18.307', () => {
    expect(2 * gammaQuantile(0.5, 0.95)).toBeCloseTo(3.841459, 5)
    expect(2 * gammaQuantile(5, 0.95)).toBeCloseTo(18.307038, 5)
  })

  it('names a chance that is none', () => {
    expect(() => gammaQuantile(1, 1)).toThrow(/between 0 and 1/)
    expect(() => logGamma(0)).toThrow(/above 0/)
  })
})
