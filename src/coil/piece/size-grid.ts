/**
 * Sizes at which every curve is held: equal steps of 0.01 in ln(size), so that a spread of 0.10 or 0.15
 * shifts a curve by whole steps. From 0.01 mm to above 50 mm and four spreads more.
 */
export const SIZE_STEP = 0.01
export const SMALLEST_MM = 0.01
/** Largest size a chance is given for, mm. */
export const LARGEST_MM = 50
const HEADROOM = 4 * 0.15

export const SIZE_COUNT = Math.ceil((Math.log(LARGEST_MM / SMALLEST_MM) + HEADROOM) / SIZE_STEP) + 2

/** Size at grid position k (may lie between two sizes), mm. */
export const sizeAtMm = (k: number): number => SMALLEST_MM * Math.exp(k * SIZE_STEP)

/** Position of a size on the grid; not rounded. */
export const positionOf = (sizeMm: number): number => Math.log(sizeMm / SMALLEST_MM) / SIZE_STEP
