import type { MassFractions } from './attenuation.ts'
import { airKermaMicroGy } from './beam-quality.ts'
import { BIN_COUNT, binKeV, massEnergyAbsorption } from './energy-bins.ts'
import { speedMmPerS, type XrayBuild } from './exposure.ts'
import { AIR, behindFilters } from './filters.ts'
import { tubeSpectrum } from './spectrum.ts'

/** Share by which the absolute output of a tube may be off (model against measured tubes). */
export const OUTPUT_MAY_BE_OFF = 0.25

/** What one pass leaves in the food, and the steps to it. */
export interface Dose {
  /** Distance from the focal spot to the plane of the food, mm. */
  readonly foodDistanceMm: number
  /** Air kerma of the beam at 1 m, µGy/mAs, behind window, filter and the air down to the food. */
  readonly kermaPerMasMicroGy: number
  /** Time a place of the food spends in the beam, s: beam width / belt speed, once per view. */
  readonly inBeamS: number
  /** Air kerma of one pass in the plane of the food, all views together, µGy. */
  readonly kermaMicroGy: number
  /** Absorbed dose over air kerma for this food (μ_en/ρ weighted with the beam). */
  readonly foodOverAir: number
  /** Absorbed dose of one pass, µGy, and the range that the tube's output leaves open. */
  readonly doseMicroGy: number
  readonly rangeMicroGy: readonly [number, number]
}

/** Energy fluence weighted mean of μ_en/ρ of a mixture, over that of air. */
function absorbedOverAir(spectrum: Float64Array, food: MassFractions): number {
  const inFood = massEnergyAbsorption(food)
  const inAir = massEnergyAbsorption(AIR)
  let above = 0
  let below = 0
  for (let i = 0; i < BIN_COUNT; i++) {
    const energyFluence = spectrum[i]! * binKeV(i)
    above += energyFluence * inFood[i]!
    below += energyFluence * inAir[i]!
  }
  return below > 0 ? above / below : 0
}

/**
 * Absorbed dose of the food in one pass: air kerma rate in the plane of the food × beam width / belt speed ×
 * (μ_en/ρ of the food / μ_en/ρ of air) × views.
 *
 * setting in kV and mA; speedMPerMin in m/min; food as mass fractions of its elements. Taken at the food's
 * plane (source to detector / magnification) with nothing taken off for packaging or for food above, so what
 * lies deeper gets less; a face nearer to the tube gets more, by the square of the distances. Electrons stop
 * where they start (below 150 keV within 0.3 mm); scatter is left out. Absolute tube output ±25 %.
 * Kerma and μ_en/ρ: see beam-quality.ts; F. H. Attix 1986, Introduction to Radiological Physics, ch. 2 (from
 * memory) for dose = kerma × ratio of μ_en/ρ under charged-particle equilibrium.
 */
export function doseOf(
  build: XrayBuild,
  setting: { readonly kV: number; readonly mA: number },
  speedMPerMin: number,
  food: MassFractions,
): Dose {
  const foodDistanceMm = build.sourceToDetectorMm / build.magnification
  const spectrum = behindFilters(tubeSpectrum(setting.kV, build.anodeAngleDeg), [
    ['aluminium', build.filterAlMm],
    ['beryllium', build.windowBeMm],
    ['air', foodDistanceMm],
  ])
  const kermaPerMasMicroGy = airKermaMicroGy(spectrum)
  const inBeamS = (build.views * build.beamWidthMm) / speedMmPerS(speedMPerMin)
  const kermaMicroGy = kermaPerMasMicroGy * (1000 / foodDistanceMm) ** 2 * setting.mA * inBeamS
  const foodOverAir = absorbedOverAir(spectrum, food)
  const doseMicroGy = kermaMicroGy * foodOverAir
  return {
    foodDistanceMm,
    kermaPerMasMicroGy,
    inBeamS,
    kermaMicroGy,
    foodOverAir,
    doseMicroGy,
    rangeMicroGy: [doseMicroGy * (1 - OUTPUT_MAY_BE_OFF), doseMicroGy * (1 + OUTPUT_MAY_BE_OFF)],
  }
}
