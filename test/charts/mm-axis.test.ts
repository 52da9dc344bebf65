import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mmAxis } from '../../src/charts/mm-axis.ts'

const size = fc.double({ min: 0.06, max: 60, noNaN: true })

describe('the axis of the size ladder', () => {
  it('is logarithmic: equal ratios stand equally far apart', () => {
    const { percent } = mmAxis([0.5, 10])
    expect(percent(2) - percent(1)).toBeCloseTo(percent(4) - percent(2), 1)
    expect(percent(10) - percent(5)).toBeCloseTo(percent(2) - percent(1), 1)
  })

  it('holds every size inside the picture, in the order of the sizes', () => {
    fc.assert(
      fc.property(fc.array(size, { minLength: 1, maxLength: 12 }), (sizes) => {
        const axis = mmAxis(sizes)
        const places = [...sizes].sort((a, b) => a - b).map(axis.percent)
        expect(places).toEqual([...places].sort((a, b) => a - b))
        expect(axis.fromMm).toBeLessThanOrEqual(Math.min(...sizes))
        expect(axis.toMm).toBeGreaterThanOrEqual(Math.max(...sizes))
        for (const place of places) {
          expect(place).toBeGreaterThanOrEqual(2)
          expect(place).toBeLessThanOrEqual(98)
        }
      }),
    )
  })

  it('is drawn even where there is no size at all', () => {
    const axis = mmAxis([null, null])
    expect(axis.ticksMm).toContain(1)
    expect(axis.ticksMm).toContain(5)
  })

  it('stands a size beyond its ends at the end', () => {
    const axis = mmAxis([1, 4])
    expect(axis.percent(1000)).toBe(98)
    expect(axis.percent(0.0001)).toBe(2)
  })
})
