/** Standard acceleration of gravity, m/s². */
const GRAVITY = 9.80665

/** Speed after a fall from rest, m/s: √(2·g·H). Air drag is left out (grains fall slower, so the stream is thicker). */
export const fallSpeedMPerS = (fallHeightMm: number): number => Math.sqrt((2 * GRAVITY * fallHeightMm) / 1000)

/** Section of a stream that carries the throughput at this speed, mm²: kg/h ÷ (bulk density × speed). */
export function streamAreaMm2(kgPerHour: number, bulkDensityGPerCm3: number, speedMPerS: number): number {
  const m3PerS = kgPerHour / 3600 / (bulkDensityGPerCm3 * 1000)
  return (m3PerS / speedMPerS) * 1e6
}

/**
 * Side (mm) of the square bar whose torsion constant is that of a round stream of the same section,
 * A²/2π: the bar s⁴·0.1406 loops the same current.
 */
export function squareOfStreamMm(areaMm2: number): number {
  return (areaMm2 ** 2 / (2 * Math.PI * 0.1406)) ** 0.25
}
