import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PieceShape } from '../../src/separation/piece-shape.ts'
import { grainClassesMm, largestGrainMm, shareAbove } from '../../src/separation/sieve/grain-sizes.ts'
import { chooseMesh } from '../../src/separation/sieve/mesh-choice.ts'
import {
  passage,
  pieceChances,
  presentationsFor,
  productOnSieve,
  uprightShare,
} from '../../src/separation/sieve/sieve-passage.ts'
import { assess, first, sieve } from './removal-case.ts'

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const shape: fc.Arbitrary<PieceShape> = fc.oneof(
  size(0.2, 40).map((diameterMm): PieceShape => ({ kind: 'sphere', diameterMm })),
  fc
    .tuple(size(0.2, 10), size(1, 60))
    .map(([diameterMm, lengthMm]): PieceShape => ({ kind: 'wire', diameterMm, lengthMm })),
  fc
    .tuple(size(0.2, 10), size(1, 900))
    .map(([thicknessMm, faceMm2]): PieceShape => ({ kind: 'flake', thicknessMm, faceMm2 })),
)

describe('passing an opening', () => {
  it('is certain for a speck, impossible from the opening on', () => {
    expect(passage(0, 5)).toBe(1)
    expect(passage(2.5, 5)).toBe(0.25)
    expect(passage(5, 5)).toBe(0)
    expect(passage(9, 5)).toBe(0)
  })

  it('a wire shorter than the opening needs no standing up; a long one hardly ever stands', () => {
    expect(uprightShare(1, 3, 5)).toBe(1)
    expect(uprightShare(1, 400, 5)).toBeLessThan(1e-4)
  })

  it('never gets harder through a coarser opening, and standing is never harder than lying', () => {
    fc.assert(
      fc.property(shape, size(0.3, 60), size(1, 3), (piece, mesh, factor) => {
        const fine = pieceChances(piece, mesh)
        const coarse = pieceChances(piece, mesh * factor)
        expect(coarse.easiest).toBeGreaterThanOrEqual(fine.easiest)
        expect(coarse.hardest).toBeGreaterThanOrEqual(fine.hardest)
        expect(fine.easiest).toBeGreaterThanOrEqual(fine.hardest)
      }),
      { numRuns: 500, seed: 3 },
    )
  })
})

describe('grains and their opening', () => {
  const grains = { medianMm: 9, spread: 0.15 }

  it('half the grains are above the median, a thousandth above the largest', () => {
    expect(shareAbove(grains, 9)).toBeCloseTo(0.5, 12)
    expect(shareAbove(grains, largestGrainMm(grains, 0.001))).toBeCloseTo(0.001, 9)
  })

  it('the chosen opening is a nominal one and clears the largest grain', () => {
    const { meshMm, largestGrainMm: largest } = chooseMesh(grains)
    expect(meshMm).toBe(16)
    expect(meshMm).toBeGreaterThan(largest)
  })

  it('the sieve is just long enough for the loss that is accepted', () => {
    const classes = grainClassesMm(grains)
    for (const loss of [0.01, 0.001, 0.0001]) {
      const n = presentationsFor(classes, 16, loss)
      expect(productOnSieve(classes, 16, n)).toBeCloseTo(loss, 6)
    }
  })
})

describe('a sieve in the line', () => {
  it('keeps hardly anything smaller than the product: an honest zero', () => {
    const found = first({ machine: sieve() })
    expect(found.applicable).toBe(true)
    expect(found.shareRemoved).toEqual([0, 0])
    expect(found.because).toContain('can fall through')
  })

  it('keeps what is larger than its opening, up to a ceiling no size lifts', () => {
    const at = (mustFindMm: number) =>
      first({ machine: sieve(), contaminants: [{ material: 'steel', mustFindMm }] })
    expect(at(26).shareRemoved).toEqual([0.9, 0.99])
    expect(at(49).shareRemoved).toEqual([0.9, 0.99])
    expect(at(26).ceiling).toBe(0.99)
  })

  it('lets a long thin wire through on end, however long', () => {
    const wire = (lengthMm: number) =>
      first({
        machine: sieve(),
        contaminants: [{ material: 'ss304', shape: 'wire', lengthMm, mustFindMm: 1 }],
      }).shareRemoved
    expect(wire(500)[0]).toBe(0)
    expect(wire(500)[1]).toBeGreaterThan(wire(60)[1])
  })

  it('a coarser mesh never removes more', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('sphere' as const, 'wire' as const, 'flake' as const),
        size(0.5, 45),
        size(4, 60),
        size(1.01, 2),
        (kind, mustFindMm, mesh, factor) => {
          const extent = { sphere: {}, wire: { lengthMm: 50 }, flake: { faceMm2: 400 } }[kind]
          const contaminants = [{ material: 'quartz', shape: kind, mustFindMm, ...extent }]
          const fine = first({ machine: sieve(mesh), contaminants }).shareRemoved
          const coarse = first({ machine: sieve(mesh * factor), contaminants }).shareRemoved
          expect(coarse[0]).toBeLessThanOrEqual(fine[0])
          expect(coarse[1]).toBeLessThanOrEqual(fine[1])
        },
      ),
      { numRuns: 80, seed: 5 },
    )
  })

  it('says that an opening under the largest grain blinds and costs good product', () => {
    const found = first({ machine: sieve(10) })
    expect(found.condition).toContain('blinds')
    expect(found.goodProductLost![0]).toBeGreaterThan(0.9)
    expect(first({ machine: sieve() }).goodProductLost![1]).toBeLessThanOrEqual(0.0101)
  })

  it('strains a pumped liquid, with the opening of the machine', () => {
    const point = { stage: 'pumped', pipeDiameterMm: 76, heightMm: 76, widthMm: 76 } as const
    const contaminants = [{ material: 'glass_any', mustFindMm: 2 }]
    const at = (mesh: number) =>
      first({ machine: sieve(mesh), product: { food: 'honey' }, point, contaminants })
    expect(at(1).shareRemoved).toEqual([0.9, 0.99])
    expect(at(4).shareRemoved[0]).toBeLessThan(0.01)
  })

  it('is not offered where the food cannot fall through', () => {
    const refusal = (food: string, stage: 'loose' | 'pumped' | 'packed') =>
      assess({ machine: sieve(), product: { food }, point: { stage } })
    for (const [food, stage] of [
      ['cheddar', 'loose'],
      ['beef_mince', 'pumped'],
      ['soup', 'pumped'],
      ['potato_crisps', 'loose'],
      ['hazelnut', 'packed'],
      ['honey', 'loose'],
    ] as const) {
      const { applicable, findings } = refusal(food, stage)
      expect(applicable, `${food} ${stage}`).toBe(false)
      expect(findings[0]!.because.length).toBeGreaterThan(20)
    }
  })
})
