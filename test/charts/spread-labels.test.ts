import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { spreadLabels } from '../../src/charts/spread-labels.ts'

describe('labels moved apart', () => {
  it('keep their order and their distance, inside the picture where they fit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { minLength: 1, maxLength: 8 }),
        (wanted) => {
          const placed = spreadLabels(wanted, 15, 0, 200)
          const order = wanted.map((_, at) => at).sort((a, b) => wanted[a]! - wanted[b]! || a - b)
          order.forEach((at, k) => {
            expect(placed[at]!).toBeGreaterThanOrEqual(-1e-9)
            expect(placed[at]!).toBeLessThanOrEqual(200 + 1e-9)
            if (k > 0) expect(placed[at]! - placed[order[k - 1]!]!).toBeGreaterThanOrEqual(15 - 1e-9)
          })
        },
      ),
      { numRuns: 200, seed: 5 },
    )
  })

  it('leave those alone that stand apart already', () => {
    expect(spreadLabels([10, 60, 120], 15, 0, 200)).toEqual([10, 60, 120])
  })
})
