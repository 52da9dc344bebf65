import { describe, expect, it } from 'vitest'
import { coverageOf, DESIGNS, signalCoverage } from './coverage.ts'

/** A short form of `npm run coverage`: 94 % less three standard errors of so many sets. */
const SETS = 120
const least = 0.94 - 3 * Math.sqrt((0.95 * 0.05) / SETS)

describe('the bounds hold as often as they say', () => {
  it.each([DESIGNS[0]!, DESIGNS[5]!, DESIGNS[7]!])('$words', (design) => {
    const { headline, wrong } = coverageOf(design, SETS, 7)
    expect(headline).toBeGreaterThan(least)
    expect(wrong).toBeLessThan(1 - least)
  })

  it('by the signal', () => {
    expect(signalCoverage(20, SETS, 7)).toBeGreaterThan(least)
  })
})
