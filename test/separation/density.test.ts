import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fluids } from '../../src/reference/separation.ts'
import { grainsBeyondCut } from '../../src/separation/density/separator.ts'
import { leavesShare } from '../../src/separation/density/separator-cut.ts'
import { equalSettlingMm, settlingMPerS } from '../../src/separation/density/settling-piece.ts'
import { assess, first, separator } from './removal-case.ts'

const { air, water } = fluids
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('settling', () => {
  it('is faster for larger, denser and rounder pieces', () => {
    fc.assert(
      fc.property(size(0.01, 60), size(1.1, 9), size(0.5, 0.99), size(1.01, 2), (d, rho, psi, factor) => {
        const base = settlingMPerS(d, rho, water, psi)
        expect(settlingMPerS(d * factor, rho, water, psi)).toBeGreaterThan(base)
        expect(settlingMPerS(d, rho * factor, water, psi)).toBeGreaterThan(base)
        expect(settlingMPerS(d, rho, water, Math.min(1, psi * factor))).toBeGreaterThan(base)
      }),
    )
  })

  it('is upwards for what is lighter than the fluid, and nothing for what weighs the same', () => {
    expect(settlingMPerS(5, 0.6, water, 1)).toBeLessThan(0)
    expect(settlingMPerS(5, 0.9982, water, 1)).toBeCloseTo(0, 6)
  })
})

describe('the cut', () => {
  it('takes half of what is just r times as fast, and hardly anything at the speed of the food', () => {
    expect(leavesShare(13, 10, 1.3, 0.1, 'heavy')).toBeCloseTo(0.5, 12)
    expect(leavesShare(10 / 1.3, 10, 1.3, 0.1, 'light')).toBeCloseTo(0.5, 12)
    expect(leavesShare(10, 10, 1.3, 0.1, 'either')).toBeLessThan(0.01)
    expect(leavesShare(-1, 10, 1.3, 0.1, 'light')).toBe(1)
    expect(leavesShare(-1, 10, 1.3, 0.1, 'heavy')).toBe(0)
  })

  it('a wider ratio takes less, and costs less good product', () => {
    fc.assert(
      fc.property(size(1, 40), size(1.05, 2), size(1.01, 2), (speed, ratio, factor) => {
        expect(leavesShare(speed, 10, ratio * factor, 0.1, 'either')).toBeLessThanOrEqual(
          leavesShare(speed, 10, ratio, 0.1, 'either'),
        )
        const spread = [0.08, 0.25] as const
        expect(grainsBeyondCut(ratio * factor, spread, 0.1)[1]).toBeLessThanOrEqual(
          grainsBeyondCut(ratio, spread, 0.1)[1],
        )
      }),
    )
  })

  it('grains of one size cost least', () => {
    const [even, uneven] = grainsBeyondCut(1.3, [0, 0.5], 0.1)
    expect(even).toBeLessThan(uneven)
  })
})

describe('a separator in the line', () => {
  const stone = (mustFindMm: number) =>
    first({ machine: separator(), contaminants: [{ material: 'quartz', mustFindMm }] })

  it('removes large stones; small ones leave with the food or are not promised', () => {
    expect(stone(45).shareRemoved[0]).toBeGreaterThan(0.8)
    expect(stone(13).shareRemoved[1]).toBeGreaterThan(0.9)
    expect(stone(2).shareRemoved[0]).toBe(0)
  })

  it('never promises less of a larger stone', () => {
    fc.assert(
      fc.property(size(0.5, 45), size(1.01, 2), (mm, factor) => {
        expect(stone(Math.min(50, mm * factor)).shareRemoved[0]).toBeGreaterThanOrEqual(
          stone(mm).shareRemoved[0],
        )
      }),
      { numRuns: 40, seed: 6 },
    )
  })

  it('names the sizes that settle like the food: near d·ρ_food/ρ_stone', () => {
    const words = stone(4).neverRemoves
    const [, from, to] = /: ([\d.]+) mm to ([\d.]+) mm/.exec(words)!.map(Number)
    const rule = (13 * 1.045) / 2.65
    expect(from!).toBeLessThan(rule)
    expect(to!).toBeGreaterThan(rule)
  })

  it('a piece of equal settling really settles like the food', () => {
    const speed = settlingMPerS(13, 1.045, air, 0.9)
    const mm = equalSettlingMm(speed, 2.65, air, 0.8)!
    expect(settlingMPerS(mm, 2.65, air, 0.8)).toBeCloseTo(speed, 9)
    expect(equalSettlingMm(speed, 0.001, air, 0.8)).toBeNull()
  })

  it('light matter goes as light where its speed is far below', () => {
    const wood = first({ machine: separator(), contaminants: [{ material: 'wood', mustFindMm: 2 }] })
    expect(wood.shareRemoved[0]).toBeGreaterThan(0.7)
    expect(wood.because).toContain('light')
  })

  it('washes wet unfrozen food, and parts everything else in air', () => {
    const because = (product: { food: string; temperatureC?: number }, height = 80) =>
      first({ machine: separator(), product, point: { heightMm: height } }).because
    expect(because({ food: 'potato', temperatureC: 12 })).toContain('in water')
    expect(because({ food: 'beans_frozen' })).toContain('in air')
    expect(because({ food: 'hazelnut' })).toContain('in air')
  })

  it('food that floats parts from everything that sinks, whatever its size', () => {
    const floats = { food: 'custom', structure: 'granular', grainMm: 30, packing: 0.6 } as const
    const composition = { waterPct: 86, proteinPct: 0.3, fatPct: 0.2, carbohydratePct: 13.2, ashPct: 0.3 }
    const found = first({
      machine: separator(),
      product: { ...floats, composition, densityGPerCm3: 0.85, temperatureC: 10 },
      point: { heightMm: 60 },
      contaminants: [{ material: 'quartz', mustFindMm: 1 }],
    })
    expect(found.shareRemoved).toEqual([0.85, 0.97])
    expect(found.goodProductLost).toBeNull()
  })

  it('is not offered where nothing settles as single grains', () => {
    const off = (food: string, stage: 'loose' | 'pumped' | 'packed') =>
      assess({ machine: separator(), product: { food }, point: { stage } }).applicable
    expect(off('cheddar', 'loose')).toBe(false)
    expect(off('flour', 'loose')).toBe(false)
    expect(off('potato_crisps', 'loose')).toBe(false)
    expect(off('hazelnut', 'packed')).toBe(false)
    expect(off('soup', 'pumped')).toBe(false)
  })
})
