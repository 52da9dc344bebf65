import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stepsBetween } from '../../src/trade-offs/steps.ts'

describe('the values of a curve', () => {
  it('hold the present value exactly, run upwards and stay in the range', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 1.1, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 2, max: 20 }),
        fc.constantFrom('log' as const, 'linear' as const),
        (from, factor, share, count, scale) => {
          const to = from * factor
          const present = Math.min(to, from + share * (to - from))
          const values = stepsBetween([from, to], scale, count, present)
          expect(values).toContain(present)
          expect(values.length).toBeLessThanOrEqual(count)
          values.forEach((value, at) => {
            if (at > 0) expect(value).toBeGreaterThan(values[at - 1]!)
            expect(value).toBeGreaterThanOrEqual(from * 0.99)
            expect(value).toBeLessThanOrEqual(to * 1.01)
          })
        },
      ),
      { numRuns: 200, seed: 6 },
    )
  })

  it('leave out a present value beyond the range, and have none where there is none', () => {
    expect(stepsBetween([1, 4], 'log', 3, 9)).toEqual([1, 2, 4])
    expect(stepsBetween([0, 2], 'linear', 3, null)).toEqual([0, 1, 2])
  })
})
