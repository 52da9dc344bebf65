import { columnMm, rowMm } from '../food/raster.ts'
import { distanceToPieceMm, halfExtents, type Piece } from '../pack/piece.ts'
import type { Detection } from './detections.ts'
import type { Reading } from './reading.ts'

/** What became of one piece. */
export interface PieceResult {
  readonly piece: Piece
  readonly found: boolean
  /**
   * Filter answer in standard deviations of the noise: of its detection, else the strongest on the piece;
   * null where it is not read.
   */
  readonly signal: number | null
}

/** A reading held against what really lay there: counted, never assumed. */
export interface Score {
  readonly results: readonly PieceResult[]
  /** Detections that belong to no piece. */
  readonly falseAlarms: readonly Detection[]
  /** Detections that belong to a piece. */
  readonly hits: readonly Detection[]
}

/** Reach of a filter beyond the thing it answers to, mm: half the size it is made for and one pixel. */
function filterRadiusMm(reading: Reading, filter: number): number {
  return reading.filters[filter]!.sizeMm / 2 + reading.area.pixels.pitchMm
}

/** A piece is found when a detection lies within its extent and one filter radius. */
export function scoreReading(reading: Reading, pieces: readonly Piece[]): Score {
  const belongs = (detection: Detection, piece: Piece) =>
    distanceToPieceMm(piece, detection.u, detection.v) <= filterRadiusMm(reading, detection.filter)
  const results = pieces.map((piece) => {
    const own = reading.detections.filter((detection) => belongs(detection, piece))
    const signal = own.length > 0 ? Math.max(...own.map((d) => d.score)) : strongestOn(reading, piece)
    return { piece, found: own.length > 0, signal }
  })
  const hits = reading.detections.filter((d) => pieces.some((piece) => belongs(d, piece)))
  return { results, hits, falseAlarms: reading.detections.filter((d) => !hits.includes(d)) }
}

/** Strongest answer within a piece's extent and one pixel. */
function strongestOn(reading: Reading, piece: Piece): number | null {
  const { pixels, mask } = reading.area
  const { scores } = reading.scores
  const reach = halfExtents(piece).alongMm + pixels.pitchMm
  const from = (x: number, start: number) => Math.max(0, Math.floor((x - reach - start) / pixels.pitchMm))
  const to = (x: number, start: number, n: number) =>
    Math.min(n - 1, Math.ceil((x + reach - start) / pixels.pitchMm))
  const [left, right] = [from(piece.u, pixels.leftMm), to(piece.u, pixels.leftMm, pixels.columns)] as const
  let best: number | null = null
  for (let row = from(piece.v, pixels.topMm); row <= to(piece.v, pixels.topMm, pixels.rows); row++) {
    for (let column = left; column <= right; column++) {
      const at = row * pixels.columns + column
      if (mask[at] === 0 || (best !== null && scores[at]! <= best)) continue
      const distance = distanceToPieceMm(piece, columnMm(pixels, column), rowMm(pixels, row))
      if (distance <= pixels.pitchMm) best = scores[at]!
    }
  }
  return best
}
