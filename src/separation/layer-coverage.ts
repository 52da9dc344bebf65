import type { Point } from '../contract/index.ts'

/** Bulk density of the food as it lies, kg/m³. */
export const bulkDensityKgPerM3 = (point: Point): number =>
  point.product.densityGPerCm3 * 1000 * point.product.packing

/** Food per area of belt, kg/m²: throughput over width and speed. */
export const arealMassKgPerM2 = (kgPerHour: number, widthMm: number, speedMPerMin: number): number =>
  kgPerHour / 3600 / ((widthMm / 1000) * (speedMPerMin / 60))

/**
 * κ: area the grains would cover, over the area of the belt; above 1 they must lie on each other.
 * κ = m/(ρ·t), t the mean thickness of a grain seen from above: 2/3 of the diameter of a sphere, the
 * thickness of a plate. m: kg/m²; ρ: density of the grain, kg/m³; t: mm. Source: `layer-coverage`.
 */
export const coverage = (arealKgPerM2: number, densityKgPerM3: number, meanThicknessMm: number): number =>
  arealKgPerM2 / (densityKgPerM3 * (meanThicknessMm / 1000))

/**
 * Share of foreign pieces that lie open to a camera above a layer of coverage κ. Worst: grains fall at random
 * and any of them may lie on top, exp(−κ). Best: spread so that none covers another while there is room,
 * min(1, 1/κ). Source: `layer-coverage`.
 */
export const openShare = (kappa: number): readonly [number, number] => [
  Math.exp(-kappa),
  Math.min(1, 1 / kappa),
]
