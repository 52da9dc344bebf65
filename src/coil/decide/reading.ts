import { hasDirection, type Piece } from '../piece/piece.ts'
import { responseTable } from '../piece/response-table.ts'
import { ORIENTATIONS, type Orientation, type TargetMetal } from '../piece/target.ts'
import type { Hearing } from '../scene.ts'
import { DetectionCurve } from './detection-curve.ts'
import { lastCrossingMm } from './last-crossing.ts'

/** Chances that name the sizes of a finding. */
export const LEVELS = { half: 0.5, found: 0.9, sure: 0.995 } as const

/** How a piece is listened for. */
export interface Listening {
  readonly hearing: Hearing
  readonly thresholdZ: number
  readonly spread: number
}

/** Detection curve of a piece of this metal; alongShare is cos² of its angle to the travel. */
export function curveOf(
  listening: Listening,
  piece: Piece,
  alongShare: number,
  metal: TargetMetal = piece.metal,
  gain = 1,
): DetectionCurve {
  const { frequenciesHz, whitening, inside } = listening.hearing
  const table = (orientation: Orientation) =>
    frequenciesHz.map((f) => responseTable(piece.shape, orientation, metal, f))
  const along = table('along')
  const target = {
    along,
    across: alongShare < 1 ? table('across') : along,
    alongShare,
    layer: piece.inside ? inside : null,
    gain,
  }
  return new DetectionCurve(whitening, target, listening.thresholdZ, listening.spread)
}

export interface OrientedCurve {
  readonly orientation: Orientation
  readonly curve: DetectionCurve
}

/** One curve for a sphere, two (along and across the travel) for wires and flakes. */
export function orientedCurves(listening: Listening, piece: Piece, gain = 1): readonly OrientedCurve[] {
  if (!hasDirection(piece.shape)) {
    return [{ orientation: 'along', curve: curveOf(listening, piece, 1, piece.metal, gain) }]
  }
  return ORIENTATIONS.map((orientation) => ({
    orientation,
    curve: curveOf(listening, piece, orientation === 'along' ? 1 : 0, piece.metal, gain),
  }))
}

/** The larger of two sizes; null (no size at all) is larger than any. */
export const largerMm = (a: number | null, b: number | null): number | null =>
  a === null || b === null ? null : Math.max(a, b)

/** The smaller of two sizes; null only where both are. */
export const smallerMm = (a: number | null, b: number | null): number | null =>
  a === null ? b : b === null ? a : Math.min(a, b)

/** Size from which every size is found at this chance, in the weaker of the orientations. */
export function weakestMm(curves: readonly OrientedCurve[], level: number, limitMm: number): number | null {
  let size: number | null = 0
  for (const { curve } of curves) {
    size = largerMm(size, lastCrossingMm(curve, level, limitMm))
    if (size === null) return null
  }
  return size
}

/** The orientation that needs the larger piece; where neither has a size, the one heard less at the limit. */
export function weakerOf(curves: readonly OrientedCurve[], limitMm: number): OrientedCurve {
  const rank = ({ curve }: OrientedCurve) =>
    lastCrossingMm(curve, LEVELS.found, limitMm) ?? 1e6 - curve.chanceOf(limitMm)
  return curves.reduce((weak, other) => (rank(other) > rank(weak) ? other : weak))
}
