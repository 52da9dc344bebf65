import { SENSING_LENGTH_RATIO } from './product-block.ts'

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
