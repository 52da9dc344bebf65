import { describe, expect, it } from 'vitest'
import { coverageOf, DESIGNS, promisedAndGiven, signalCoverage } from './coverage.ts'

/** A short form of `npm run coverage`: 94 % less three standard errors of so many sets. */
const SETS = 120
const least = 0.94 - 3 * Math.sqrt((0.95 * 0.05) / SETS)

describe('the bounds hold as often as they say', () => {
  it.each([DESIGNS[0]!, DESIGNS[5]!, DESIGNS.at(-1)!])('$words', (design) => {
    const { headline, wrong } = coverageOf(design, SETS, 7)
    expect(headline).toBeGreaterThan(least)
    expect(wrong).toBeLessThan(1 - least)
  })

  it('by the signal', () => {
    expect(signalCoverage(20, SETS, 7)).toBeGreaterThan(least)
  })

  /** Within 3 points in `npm run coverage`; here 3 points and three standard errors of 200 trials. */
  it('a plan gives the power it promises', () => {
    const { promised, given } = promisedAndGiven(10, 0, 200, 7)
    expect(Math.abs(promised - given)).toBeLessThan(0.03 + 3 * Math.sqrt((0.8 * 0.2) / 200))
  })
})
