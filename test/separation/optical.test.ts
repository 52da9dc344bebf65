import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { arealMassKgPerM2, coverage, openShare } from '../../src/separation/layer-coverage.ts'
import { lostPerBlastG } from '../../src/separation/optical/optical.ts'
import { visibleDifference } from '../../src/separation/optical/visible-difference.ts'
import { assess, first, sorter } from './removal-case.ts'

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('the layer under the cameras', () => {
  it('3,600 kg/h on a metre of belt at 60 m/min is a kilogram per square metre', () => {
    expect(arealMassKgPerM2(3600, 1000, 60)).toBeCloseTo(1, 12)
  })

  it('balls of 9 mm in a square grid, touching, cover π/4 of the belt', () => {
    const ball = (Math.PI / 6) * 0.009 ** 3 * 1000
    const perM2 = ball / 0.009 ** 2
    expect(coverage(perM2, 1000, (2 / 3) * 9)).toBeCloseTo(Math.PI / 4, 12)
  })

  it('an empty belt hides nothing; a deep bed hides nearly everything', () => {
    expect(openShare(1e-9)[0]).toBeCloseTo(1, 8)
    expect(openShare(20)[1]).toBeCloseTo(0.05, 12)
    for (const kappa of [0.1, 0.5, 1, 3]) expect(openShare(kappa)[0]).toBeLessThan(openShare(kappa)[1])
  })

  it('the open share of random grains is that of grains thrown one by one', () => {
    // A point is open when none of n disks of area a, thrown on an area A, covers it: (1 − a/A)^n → exp(−κ).
    const disks = 1e6
    const kappa = 0.8
    expect((1 - kappa / disks) ** disks).toBeCloseTo(openShare(kappa)[0], 6)
  })

  it('a blast takes along the food of the area it hits', () => {
    // 2 kg/m² over (10 + 5) mm by (10 mm passed in 5 ms at 2 m/s + 5) mm: 0.45 g.
    expect(lostPerBlastG(2, 5, 120, 10, 5)).toBeCloseTo(0.45, 12)
  })
})

describe('telling foreign matter from food', () => {
  it('same colour: next to nothing; clearly different: nearly all; free colour: anything', () => {
    expect(visibleDifference('hazelnut', 'nut_shell').low).toBe(0)
    expect(visibleDifference('hazelnut', 'nut_shell').high).toBeLessThan(0.5)
    expect(visibleDifference('peas_frozen', 'ferrite').low).toBeGreaterThanOrEqual(0.9)
    expect(visibleDifference('hazelnut', 'pe')).toMatchObject({ low: 0, high: 1 })
    expect(visibleDifference('custom', 'ferrite')).toMatchObject({ low: 0, high: 1 })
  })

  it('counts the colour of a mixed food that is nearest', () => {
    expect(visibleDifference('blueberry_frozen', 'ferrite').high).toBeLessThan(0.5)
  })
})

describe('a sorter in the line', () => {
  it('more food per area never lets it see more', () => {
    fc.assert(
      fc.property(size(100, 9000), size(1.1, 5), (kgPerHour, factor) => {
        const at = (throughput: number) => first({ machine: sorter(), point: { kgPerHour: throughput } })
        const base = at(kgPerHour)
        const more = at(kgPerHour * factor)
        expect(more.shareRemoved[0]).toBeLessThanOrEqual(base.shareRemoved[0])
        expect(more.ceiling).toBeLessThanOrEqual(base.ceiling)
        expect(more.goodProductLost![1]).toBeGreaterThan(base.goodProductLost![1])
      }),
      { numRuns: 60, seed: 2 },
    )
  })

  it('finer pixels and larger pieces never remove less', () => {
    fc.assert(
      fc.property(size(0.1, 2), size(0.3, 8), size(1, 3), (pixel, mustFindMm, factor) => {
        const at = (pixelMm: number, mm: number) =>
          first({ machine: sorter(pixelMm), contaminants: [{ material: 'steel', mustFindMm: mm }] })
            .shareRemoved
        const base = at(pixel, mustFindMm)
        for (const better of [at(pixel / factor, mustFindMm), at(pixel, mustFindMm * factor)]) {
          expect(better[0]).toBeGreaterThanOrEqual(base[0])
          expect(better[1]).toBeGreaterThanOrEqual(base[1])
        }
      }),
      { numRuns: 60, seed: 4 },
    )
  })

  it('a piece under two pixels is a speck', () => {
    const found = first({ machine: sorter(0.5), contaminants: [{ material: 'steel', mustFindMm: 0.8 }] })
    expect(found.shareRemoved).toEqual([0, 0])
    expect(found.ceiling).toBeGreaterThan(0)
    expect(found.because).toContain('too few pixels')
  })

  it('says at which speed an overfull belt would be a single layer, and that speed does it', () => {
    const point = { kgPerHour: 9000, speedMPerMin: 10 }
    const found = first({ machine: sorter(), point })
    const faster = Number(/at (\d+) m\/min/.exec(found.condition)?.[1])
    expect(faster).toBeGreaterThan(10)
    const relaxed = first({ machine: sorter(), point: { ...point, speedMPerMin: faster + 1 } })
    expect(relaxed.condition).toMatch(/^A single layer: the food covers (4[789]|50) %/)
  })

  it('sees nothing inside a piece of food, half of what sits on it', () => {
    const fillet = (placement: 'inside' | 'outside') =>
      first({
        machine: sorter(),
        product: { food: 'cod' },
        contaminants: [{ material: 'ferrite', mustFindMm: 4, placement }],
      })
    expect(fillet('inside').applicable).toBe(false)
    expect(fillet('outside').applicable).toBe(true)
    expect(fillet('outside').ceiling).toBeLessThan(0.6)
  })

  it('reads the layer from its depth where the throughput is not known', () => {
    const parts = { heightMm: 13, kgPerHour: undefined }
    const { calculations } = assess({ machine: sorter(), point: parts as never })
    expect(calculations.find((c) => c.id === 'p0.test.areal-mass')!.formula).toContain('depth')
  })

  it('is not offered for packs, pipes, powders and liquids', () => {
    const off = (food: string, stage: 'loose' | 'pumped' | 'packed') =>
      assess({ machine: sorter(), product: { food }, point: { stage } }).applicable
    expect(off('hazelnut', 'packed')).toBe(false)
    expect(off('honey', 'pumped')).toBe(false)
    expect(off('flour', 'loose')).toBe(false)
    expect(off('soup', 'loose')).toBe(false)
    expect(off('potato_crisps', 'loose')).toBe(true)
  })
})
