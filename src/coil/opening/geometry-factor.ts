/** Beyond this width over height the width costs nothing more (c is flat there). */
export const WIDEST_RATIO = 3

/** c = 0.19 + 0.20·(h/w)²: fit to max G·h² of the three-loop coil, s = 0.4h, within 3 % for w/h 1 to 3. */
export function couplingConstant(widthOverHeight: number): number {
  const ratio = Math.min(WIDEST_RATIO, Math.max(1, widthOverHeight))
  return 0.19 + 0.2 / ratio ** 2
}

/** g = c(2)/c(w/h): how much more signal a target must give than in an opening twice as wide as high. */
export function geometryFactor(widthOverHeight: number): number {
  return couplingConstant(2) / couplingConstant(widthOverHeight)
}

/**
 * Square of the vertical field a flat sheet at height y above the axis meets, over the axial field's:
 * β² = 4.2(y/h)²·[1 + 8(y/h)²] (fit for y/h ≤ 0.25), at most 1.3.
 */
export function sheetCoupling(heightAboveAxisM: number, openingHeightM: number): number {
  const r2 = (heightAboveAxisM / openingHeightM) ** 2
  return Math.min(1.3, 4.2 * r2 * (1 + 8 * r2))
}

/** Coupling relative to the centre at 0.3 of the opening's height away from it, w/h = 2 (computed). */
export const NEAR_WALL_GAIN = 1.34
