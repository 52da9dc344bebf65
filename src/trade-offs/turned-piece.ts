import { lastCrossingMm } from '../coil/decide/last-crossing.ts'
import { curveOf, LEVELS, type Listening } from '../coil/decide/reading.ts'
import { hasDirection, type Piece } from '../coil/piece/piece.ts'
import { shapeLimitMm, targetPolarizability } from '../coil/piece/target.ts'

/** A piece lying at an angle to the travel. */
export interface TurnedPiece {
  /** 0 along the travel, 90 across it. */
  readonly angleDeg: number
  /** Expected size at this angle, mm; null above the limit. */
  readonly expectedMm: number | null
  /** |α| at the machine's lowest frequency, over the stronger of along and across there; at the given size. */
  readonly response: number
}

/** cos² of the angle to the travel: how much of the piece's answer is that of lying along. */
export const alongShare = (angleDeg: number): number => Math.cos((angleDeg * Math.PI) / 180) ** 2

/**
 * A wire or flake turned from along the travel (0°) to across it (90°): its answer is cos²·along + sin²·across
 * of the two polarizabilities. limitMm: largest size spoken of; sizeMm: the size the response is shown at.
 */
export function turnedPiece(
  listening: Listening,
  piece: Piece,
  limitMm: number,
  sizeMm: number,
  anglesDeg: readonly number[],
): TurnedPiece[] {
  if (!hasDirection(piece.shape)) throw new RangeError('a sphere answers the same whichever way it lies')
  const hz = listening.hearing.frequenciesHz[0]!
  const answer = (orientation: 'along' | 'across') =>
    targetPolarizability(piece.shape, sizeMm, orientation, piece.metal, hz)
  const along = answer('along')
  const across = answer('across')
  const strongest = Math.max(Math.hypot(along.re, along.im), Math.hypot(across.re, across.im))
  const largest = Math.min(limitMm, shapeLimitMm(piece.shape))
  return anglesDeg.map((angle) => {
    const share = alongShare(angle)
    const re = share * along.re + (1 - share) * across.re
    const im = share * along.im + (1 - share) * across.im
    return {
      angleDeg: angle,
      expectedMm: lastCrossingMm(curveOf(listening, piece, share), LEVELS.found, largest),
      response: Math.hypot(re, im) / strongest,
    }
  })
}
