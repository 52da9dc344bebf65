import { describe, expect, it } from 'vitest'
import type { Contaminant } from '../../src/contract/index.ts'
import { demagnetisationOf } from '../../src/separation/magnet/demagnetisation.ts'
import {
  equivalentDiameterMm,
  type PieceShape,
  secondSmallestMm,
  shapesOf,
  sphericityOf,
} from '../../src/separation/piece-shape.ts'

const ball: PieceShape = { kind: 'sphere', diameterMm: 3 }
const wire: PieceShape = { kind: 'wire', diameterMm: 0.6, lengthMm: 10 }
const flake: PieceShape = { kind: 'flake', thicknessMm: 2, faceMm2: 25 }

describe('the outline of a piece', () => {
  it('takes the diameter of a ball and of a wire, and the side of the face of a flake', () => {
    expect(secondSmallestMm(ball)).toBe(3)
    expect(secondSmallestMm(wire)).toBe(0.6)
    expect(secondSmallestMm(flake)).toBe(5)
  })

  it('a ball is its own equivalent and perfectly round; wires and flakes are not', () => {
    expect(equivalentDiameterMm(ball)).toBeCloseTo(3, 12)
    expect(sphericityOf(ball)).toBeCloseTo(1, 12)
    expect(sphericityOf(wire)).toBeLessThan(0.6)
    expect(sphericityOf(flake)).toBeLessThan(0.85)
  })

  it('a cube has the sphericity (π/6)^⅓', () => {
    const cube: PieceShape = { kind: 'flake', thicknessMm: 4, faceMm2: 16 }
    expect(sphericityOf(cube)).toBeCloseTo(Math.cbrt(Math.PI / 6), 12)
  })

  it('demagnetising factors of the three ways add up to one', () => {
    const a = demagnetisationOf(wire)
    expect(a.along + 2 * a.across).toBeCloseTo(1, 12)
    const b = demagnetisationOf(flake)
    expect(2 * b.along + b.across).toBeCloseTo(1, 12)
    expect(demagnetisationOf(ball)).toEqual({ along: 1 / 3, across: 1 / 3 })
  })

  it('stands at both ends of a range where no size to find is given', () => {
    const contaminant = { shape: 'sphere', mustFindMm: null } as Contaminant
    expect(shapesOf(contaminant)).toEqual([
      { kind: 'sphere', diameterMm: 1 },
      { kind: 'sphere', diameterMm: 10 },
    ])
  })
})
