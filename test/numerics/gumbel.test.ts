import { describe, expect, it } from 'vitest'
import { gumbelUpper } from '../../src/numerics/gumbel.ts'

describe('the tail of largest values', () => {
  // The standard Gumbel distribution: F(x) = exp(−e^−x); its upper 1 % lies beyond −ln(−ln 0.99) = 4.6001.
  const standard = Array.from({ length: 20_000 }, (_, i) => -Math.log(-Math.log((i + 0.5) / 20_000)))

  it('is found again from a sample of that distribution', () => {
    expect(gumbelUpper(standard, 0.01)).toBeCloseTo(4.6001, 2)
    expect(gumbelUpper(standard, 0.001)).toBeCloseTo(6.9073, 2)
  })

  it('moves and stretches with the values', () => {
    const moved = standard.map((x) => 3 + 2 * x)
    expect(gumbelUpper(moved, 0.01)).toBeCloseTo(3 + 2 * gumbelUpper(standard, 0.01), 6)
  })

  it('refuses what shows no tail, with the figure', () => {
    expect(() => gumbelUpper([1], 0.01)).toThrow('1 were given')
    expect(() => gumbelUpper([1, 2], 0)).toThrow('0 was given')
  })
})
