import type { Point } from '../../contract/index.ts'
import { SENSING_LENGTH_RATIO } from '../food/product-block.ts'

/**
 * Distance free of metal before and behind the coil, mm: 1.5 h of fixed metal, 2 h of moving metal
 * (Oklahoma State University FAPC-105).
 */
export const metalFreeZoneMm = (openingHeightMm: number): { fixedMm: number; movingMm: number } => ({
  fixedMm: 1.5 * openingHeightMm,
  movingMm: 2 * openingHeightMm,
})

/** Gap between packs so that one has left both lobes before the next comes, mm: 2 × 0.6 h (computed). */
export const packGapMm = (openingHeightMm: number): number => 2 * SENSING_LENGTH_RATIO * openingHeightMm

/** The gap the coil wants and the one that speed, rate and lanes leave (null without a rate of packs). */
export function packGap(
  point: Pick<Point, 'stage' | 'packsPerMin' | 'speedMPerMin' | 'lanes' | 'lengthMm'>,
  openingHeightMm: number,
): { neededMm: number; givenMm: number | null } {
  const neededMm = packGapMm(openingHeightMm)
  if (point.packsPerMin === null || point.stage !== 'packed') return { neededMm, givenMm: null }
  const pitchMm = (point.speedMPerMin * 1000 * point.lanes) / point.packsPerMin
  return { neededMm, givenMm: Math.max(0, pitchMm - point.lengthMm) }
}
