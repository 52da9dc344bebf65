import type { PieceShape } from '../piece-shape.ts'

/**
 * Demagnetising factors of a piece: along its longest direction, and across it (of a flake: through it).
 * Wires are taken as prolate, flakes as oblate spheroids of the same aspect; 1/3 for a sphere.
 */
export interface Demagnetisation {
  readonly along: number
  readonly across: number
}

const NEARLY_ROUND = 1.0001

/** Prolate spheroid along its axis, aspect m ≥ 1: (m·ln(m + √(m² − 1))/√(m² − 1) − 1)/(m² − 1). */
function prolate(aspect: number): number {
  if (aspect <= NEARLY_ROUND) return 1 / 3
  const square = aspect ** 2 - 1
  return ((aspect * Math.acosh(aspect)) / Math.sqrt(square) - 1) / square
}

/** Oblate spheroid through its thin way, aspect m ≥ 1: m²/(m² − 1)·(1 − asin(√(m² − 1)/m)/√(m² − 1)). */
function oblate(aspect: number): number {
  if (aspect <= NEARLY_ROUND) return 1 / 3
  const root = Math.sqrt(aspect ** 2 - 1)
  return (aspect ** 2 / root ** 2) * (1 - Math.asin(root / aspect) / root)
}

/** Source: J. A. Osborn 1945, Physical Review 67:351 (`osborn-demagnetisation`, from memory). */
export function demagnetisationOf(shape: PieceShape): Demagnetisation {
  switch (shape.kind) {
    case 'sphere':
      return { along: 1 / 3, across: 1 / 3 }
    case 'wire': {
      const along = prolate(shape.lengthMm / shape.diameterMm)
      return { along, across: (1 - along) / 2 }
    }
    case 'flake': {
      const across = oblate(Math.sqrt(shape.faceMm2) / shape.thicknessMm)
      return { along: (1 - across) / 2, across }
    }
  }
}
