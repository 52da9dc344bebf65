import { granularTexture } from '../../reference/index.ts'

/**
 * Path-length noise power of the food itself, mm⁴, at spatial frequency f in 1/mm.
 *
 * Grain: φ(1−φ)·path·D³·g(f·D; φ), g from simulated hard-sphere packings (computed for packing 0.60 and
 * 0.45, linear between, clamped outside) with a Porod tail (f·D)⁻⁴ beyond the table.
 * Unevenness: rms σ mm over wavelengths 2 to 20 mm, σ²/(36π)/f³, flat below 1/20 per mm (assumption).
 */
const { fD, g60, g45, packingHigh, packingLow } = granularTexture
const LAST = fD.length - 1

/** Frequencies (in units of 1/grain) where the tabulated curve has a kink. */
export const grainKnots: readonly number[] = fD

/** Longest wavelength of unevenness, mm. */
export const UNEVENNESS_LONGEST_MM = 20

function alongTable(values: readonly number[], x: number): number {
  if (x >= fD[LAST]!) return values[LAST]! * (fD[LAST]! / x) ** 4
  let i = 0
  while (x >= fD[i + 1]!) i++
  const share = (x - fD[i]!) / (fD[i + 1]! - fD[i]!)
  return values[i]! * (1 - share) + values[i + 1]! * share
}

/** Dimensionless grain noise power g(f·D; packing). */
export function grainNoiseShape(fTimesD: number, packing: number): number {
  const share = Math.min(1, Math.max(0, (packing - packingLow) / (packingHigh - packingLow)))
  return alongTable(g45, fTimesD) * (1 - share) + alongTable(g60, fTimesD) * share
}

/** Grain noise power, mm⁴ (texture scale 1). */
export function grainNoisePower(f: number, grainMm: number, packing: number, pathMm: number): number {
  if (packing >= 1) return 0
  return packing * (1 - packing) * pathMm * grainMm ** 3 * grainNoiseShape(f * grainMm, packing)
}

/** Noise power of a thickness that varies by rms σ mm, mm⁴. */
export function unevennessNoisePower(f: number, sigmaMm: number): number {
  return sigmaMm ** 2 / (36 * Math.PI) / Math.max(f, 1 / UNEVENNESS_LONGEST_MM) ** 3
}
