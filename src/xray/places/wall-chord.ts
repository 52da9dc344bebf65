/**
 * Material of a round wall in a ray that passes the axis at a distance, mm:
 * 2(√(R² − x²) − √(r² − x²)), R the outer radius, r = R − wall the inner one; beyond r only wall is crossed.
 */
export function wallChordMm(outerRadiusMm: number, wallMm: number, offsetMm: number): number {
  const innerRadiusMm = outerRadiusMm - wallMm
  const outer = Math.sqrt(Math.max(0, outerRadiusMm ** 2 - offsetMm ** 2))
  const inner = Math.sqrt(Math.max(0, innerRadiusMm ** 2 - offsetMm ** 2))
  return 2 * (outer - inner)
}

/** The most wall any ray through the inside crosses, mm: the one that grazes the inside wall, 2√(R² − r²). */
export const grazingWallMm = (innerRadiusMm: number, wallMm: number): number =>
  wallChordMm(innerRadiusMm + wallMm, wallMm, innerRadiusMm)

/** How much longer a ray's way through the outer surface is there than straight through: R / √(R² − r²). */
export const grazingSlant = (innerRadiusMm: number, wallMm: number): number =>
  (2 * (innerRadiusMm + wallMm)) / grazingWallMm(innerRadiusMm, wallMm)

/**
 * Share of the inside whose ray crosses at least half the wall of the grazing one. With g = √(R² − r²) the ray at
 * √(R² − 1.5625 g²) crosses half; beyond it lie two segments of the circle.
 */
export function wallEdgeShare(innerRadiusMm: number, wallMm: number): number {
  const outerRadiusMm = innerRadiusMm + wallMm
  const halfGrazing = grazingWallMm(innerRadiusMm, wallMm) / 2
  const fromMm = Math.sqrt(Math.max(0, outerRadiusMm ** 2 - 1.5625 * halfGrazing ** 2))
  const u = Math.min(1, fromMm / innerRadiusMm)
  return (2 / Math.PI) * (Math.acos(u) - u * Math.sqrt(1 - u * u))
}
