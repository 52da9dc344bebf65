import { magnitude } from '../../numerics/complex.ts'
import type { Arrangement, Opening } from '../opening/opening.ts'
import type { Piece } from '../piece/piece.ts'
import { positionOf, sizeAtMm } from '../piece/size-grid.ts'
import { type Orientation, shapeLimitMm, targetPolarizability } from '../piece/target.ts'

/** Smallest spheres a conveyor tunnel is trusted with, mm (common practice, no source). */
const FLOOR_MM = { ferrous: 0.6, 'non-ferrous': 0.8, austenitic: 1 } as const
/** How much less for small pipes and throats, and what counts as small (assumption), mm. */
const SMALL_THROAT = { lessMm: 0.1, upToMm: 100 } as const

/** Floor under the cautious size of a sphere of this metal, mm. */
export function sphereFloorMm(piece: Piece, arrangement: Arrangement, opening: Opening): number {
  const small = arrangement !== 'tunnel' && Math.max(opening.heightMm, opening.widthMm) <= SMALL_THROAT.upToMm
  return FLOOR_MM[piece.electrical.testPiece] - (small ? SMALL_THROAT.lessMm : 0)
}

/**
 * The floor for the piece's own shape, mm: a wire or flake is trusted from the size at which it answers as
 * strongly as the floor sphere of its metal, at the frequency where it needs most. null where it never does.
 */
export function floorMm(
  piece: Piece,
  arrangement: Arrangement,
  opening: Opening,
  orientation: Orientation | null,
  frequenciesHz: readonly number[],
): number | null {
  const sphereMm = sphereFloorMm(piece, arrangement, opening)
  if (orientation === null) return sphereMm
  let floor = 0
  for (const f of frequenciesHz) {
    const needed = magnitude(targetPolarizability({ kind: 'sphere' }, sphereMm, 'along', piece.metal, f))
    const answer = (mm: number) =>
      magnitude(targetPolarizability(piece.shape, mm, orientation, piece.metal, f))
    let low = positionOf(0.01)
    let high = positionOf(shapeLimitMm(piece.shape))
    if (answer(sizeAtMm(high)) < needed) return null
    for (let step = 0; step < 30; step++) {
      const middle = (low + high) / 2
      if (answer(sizeAtMm(middle)) < needed) low = middle
      else high = middle
    }
    floor = Math.max(floor, sizeAtMm(high))
  }
  return floor
}
