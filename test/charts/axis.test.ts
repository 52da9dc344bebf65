import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chanceAxis, linearAxis, logAxis, sizeAxis } from '../../src/charts/axis.ts'

describe('an axis', () => {
  it('runs from 0 to 1 without turning back, and keeps values beyond it at its ends', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 1e3, noNaN: true }),
        fc.double({ min: 1.01, max: 1e4, noNaN: true }),
        fc.constantFrom(logAxis, linearAxis),
        (from, factor, build) => {
          const axis = build(from, from * factor, 'mm')
          expect(axis.share(from)).toBeCloseTo(0, 9)
          expect(axis.share(axis.to)).toBeCloseTo(1, 9)
          expect(axis.share(from / 2)).toBe(0)
          expect(axis.share(axis.to * 2)).toBe(1)
          const shares = axis.ticks.map(({ value }) => axis.share(value))
          shares.forEach((share, at) => {
            if (at > 0) expect(share).toBeGreaterThanOrEqual(shares[at - 1]!)
          })
        },
      ),
      { numRuns: 200, seed: 2 },
    )
  })

  it('says in its title what it measures, in which unit, and that it is a log axis where it is one', () => {
    expect(logAxis(10, 1000, 'frequency, kHz').title).toBe('frequency, kHz, log scale')
    expect(linearAxis(0, 90, 'angle, degrees').title).toBe('angle, degrees')
  })

  it('writes every number of its run, none left out for the words of another', () => {
    expect(logAxis(10, 1000, '').ticks.map(({ words }) => words)).toEqual([
      '10',
      '20',
      '50',
      '100',
      '200',
      '500',
      '1000',
    ])
    expect(linearAxis(40, 80, '').ticks.map(({ value }) => value)).toEqual([
      40, 45, 50, 55, 60, 65, 70, 75, 80,
    ])
  })

  it('has whole decades over a long run and more numbers within one', () => {
    expect(logAxis(1e-5, 0.05, '').ticks.map(({ value }) => value)).toEqual([1e-5, 1e-4, 1e-3, 1e-2])
    expect(logAxis(10, 40, '').ticks.map(({ value }) => value)).toEqual([10, 15, 20, 30])
  })

  it('of sizes ends on round ones around all that is shown, nulls left out', () => {
    const axis = sizeAxis([null, 1.3, 4.2, null])
    expect([axis.from, axis.to]).toEqual([1, 5])
    expect(sizeAxis([null]).from).toBeLessThan(0.5)
  })

  it('of chances goes from never to always', () => {
    expect(chanceAxis().ticks.at(0)!.words).toBe('0')
    expect(chanceAxis().ticks.at(-1)!.words).toBe('100')
  })
})
