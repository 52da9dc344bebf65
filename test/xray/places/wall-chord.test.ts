import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  grazingSlant,
  grazingWallMm,
  wallChordMm,
  wallEdgeShare,
} from '../../../src/xray/places/wall-chord.ts'

/** A jar of 34 mm outer radius with a wall of 2.5 mm; every figure worked by hand from R and r. */
describe('the wall of a round container in a ray', () => {
  it('is twice the wall on the axis', () => {
    expect(wallChordMm(34, 2.5, 0)).toBeCloseTo(5, 9)
  })
  it('is 25.6 mm where the ray grazes the inside wall: 2·√(34² − 31.5²) = 2·√163.75', () => {
    expect(grazingWallMm(31.5, 2.5)).toBeCloseTo(25.593, 3)
  })
  it('at 0.9 of the radius, 30.6 mm from the axis, is 14.7 mm: 2·(√219.64 − √55.89)', () => {
    expect(wallChordMm(34, 2.5, 30.6)).toBeCloseTo(14.689, 3)
  })
  it('is nowhere more than at the inside wall', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 15, max: 120, noNaN: true }),
        fc.double({ min: 0.1, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (innerMm, wallMm, x) => {
          const most = grazingWallMm(innerMm, wallMm)
          expect(wallChordMm(innerMm + wallMm, wallMm, x * (innerMm + wallMm))).toBeLessThanOrEqual(
            most + 1e-9,
          )
        },
      ),
    )
  })
  it('meets the outside at a slant of 34/12.80 = 2.66', () => {
    expect(grazingSlant(31.5, 2.5)).toBeCloseTo(2.657, 3)
  })
  it('is at least half of the most in 1.3 % of the inside: beyond 30.0 mm of 31.5', () => {
    expect(wallChordMm(34, 2.5, Math.sqrt(34 ** 2 - 1.5625 * 163.75))).toBeCloseTo(25.593 / 2, 3)
    expect(wallEdgeShare(31.5, 2.5)).toBeCloseTo(0.0123, 3)
  })
})
