import type { PieceShape } from '../piece-shape.ts'
import { secondSmallestMm } from '../piece-shape.ts'

/**
 * Chance that a sphere of diameter x falls through a square opening a that it meets at random:
 * (1 − x/a)², 0 from x = a on. Valid for one sphere thrown straight at the opening, wires left out of account.
 * Source: `sieve-passage`.
 */
export function passage(diameterMm: number, meshMm: number): number {
  return diameterMm >= meshMm ? 0 : (1 - diameterMm / meshMm) ** 2
}

/**
 * Share of all directions in which a wire of diameter d and length l is upright enough for an opening a:
 * 1 − cos θ with sin θ = (a − d)/l; 1 where l ≤ a − d. Valid for random directions; a wire on a flat, quiet
 * sieve lies down more often. Source: `sieve-orientation`.
 */
export function uprightShare(diameterMm: number, lengthMm: number, meshMm: number): number {
  const sine = (meshMm - diameterMm) / lengthMm
  if (sine <= 0) return 0
  return sine >= 1 ? 1 : 1 - Math.sqrt(1 - sine * sine)
}

/** Share still on the sieve after n chances p: (1 − p)^n. */
export const stays = (chance: number, presentations: number): number => (1 - chance) ** presentations

/**
 * Chance per opening of a foreign piece at its easiest and its hardest posture. A flake passes a square
 * opening on edge along the diagonal, so up to √2 wider than the opening; a wire standing on end.
 */
export function pieceChances(
  shape: PieceShape,
  meshMm: number,
): { readonly easiest: number; readonly hardest: number } {
  const across = secondSmallestMm(shape)
  const straight = passage(across, meshMm)
  switch (shape.kind) {
    case 'sphere':
      return { easiest: straight, hardest: straight }
    case 'wire':
      return { easiest: straight, hardest: straight * uprightShare(across, shape.lengthMm, meshMm) }
    case 'flake': {
      const diagonal = Math.max(shape.thicknessMm, across / Math.SQRT2)
      const widest = Math.max(shape.thicknessMm, across)
      return { easiest: passage(diagonal, meshMm), hardest: passage(widest, meshMm) }
    }
  }
}

/** Mean share of the grains that is still on the sieve after n chances. */
export function productOnSieve(grainsMm: readonly number[], meshMm: number, presentations: number): number {
  return grainsMm.reduce((sum, d) => sum + stays(passage(d, meshMm), presentations), 0) / grainsMm.length
}

const MOST_PRESENTATIONS = 1e5

/**
 * How often a grain must meet an opening until no more than `loss` of the good product is still on the
 * sieve: the sieve is as long as the product needs. At least 1, at most 100,000 (a mesh too fine to pass it).
 */
export function presentationsFor(grainsMm: readonly number[], meshMm: number, loss: number): number {
  let low = 1
  let high = MOST_PRESENTATIONS
  if (productOnSieve(grainsMm, meshMm, low) <= loss) return low
  if (productOnSieve(grainsMm, meshMm, high) > loss) return high
  for (let k = 0; k < 60; k++) {
    const middle = Math.sqrt(low * high)
    if (productOnSieve(grainsMm, meshMm, middle) > loss) low = middle
    else high = middle
  }
  return high
}
