import type { Placement, Shape } from '../../../contract/index.ts'

/** One test piece at its place in the picture. Sphere and wire: diameter; flake: thickness, lying flat. */
export interface Piece {
  /** Index of the brief's contaminant. */
  readonly contaminant: number
  readonly material: string
  readonly shape: Shape
  readonly sizeMm: number
  /** Wires. */
  readonly lengthMm: number
  /** Flakes. */
  readonly faceMm2: number
  readonly placement: Placement
  readonly u: number
  readonly v: number
  /** Direction of a wire in the picture, radians from u. */
  readonly angle: number
}

/** Half of a piece's extent across and along the direction it points, mm. */
export function halfExtents(piece: Pick<Piece, 'shape' | 'sizeMm' | 'lengthMm' | 'faceMm2'>): {
  alongMm: number
  acrossMm: number
} {
  if (piece.shape === 'wire') return { alongMm: piece.lengthMm / 2, acrossMm: piece.sizeMm / 2 }
  const half = piece.shape === 'flake' ? Math.sqrt(piece.faceMm2 / Math.PI) : piece.sizeMm / 2
  return { alongMm: half, acrossMm: half }
}

/** Chord of the beam through a piece at an offset from its centre, mm. */
export function chordMm(piece: Piece, du: number, dv: number): number {
  const r = piece.sizeMm / 2
  switch (piece.shape) {
    case 'sphere': {
      const inside = r * r - du * du - dv * dv
      return inside > 0 ? 2 * Math.sqrt(inside) : 0
    }
    case 'wire': {
      const along = du * Math.cos(piece.angle) + dv * Math.sin(piece.angle)
      const across = dv * Math.cos(piece.angle) - du * Math.sin(piece.angle)
      const inside = r * r - across * across
      return inside > 0 && Math.abs(along) <= piece.lengthMm / 2 ? 2 * Math.sqrt(inside) : 0
    }
    case 'flake':
      return du * du + dv * dv <= piece.faceMm2 / Math.PI ? piece.sizeMm : 0
    default:
      return piece.shape satisfies never
  }
}

/** Distance from a place in the picture to the nearest point of a piece, mm; 0 on the piece. */
export function distanceToPieceMm(piece: Piece, u: number, v: number): number {
  const du = u - piece.u
  const dv = v - piece.v
  const { alongMm, acrossMm } = halfExtents(piece)
  if (piece.shape !== 'wire') return Math.max(0, Math.hypot(du, dv) - alongMm)
  const along = Math.abs(du * Math.cos(piece.angle) + dv * Math.sin(piece.angle))
  const across = Math.abs(dv * Math.cos(piece.angle) - du * Math.sin(piece.angle))
  return Math.hypot(Math.max(0, along - alongMm), Math.max(0, across - acrossMm))
}
