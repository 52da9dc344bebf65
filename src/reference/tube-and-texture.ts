import { dataFile } from './data-file.ts'

/**
 * Scaled bremsstrahlung cross section of tungsten, (beta^2/Z^2) k dsigma/dk in mb: `chiMb[i][j]` at
 * electron energy i and photon fraction j = photon over electron energy. Read linearly in the fraction
 * and in ln(electron energy), 5 to 200 keV. K line shares sum to 1. Sources: `seltzer-berger`, `tucker-1991`.
 */
export interface Bremsstrahlung {
  readonly electronEnergyKeV: readonly number[]
  readonly photonFraction: readonly number[]
  readonly chiMb: readonly (readonly number[])[]
  readonly kLines: readonly { readonly energyKeV: number; readonly share: number }[]
  readonly kEdgeKeV: number
}

/**
 * Noise power g(f D) of the path through a bed of equal spheres (f per mm, D grain diameter in mm),
 * at packing 0.60 and 0.45, up to f D = 2.5. Source: `granular-simulation`.
 */
export interface GranularTexture {
  readonly fD: readonly number[]
  readonly g60: readonly number[]
  readonly g45: readonly number[]
  readonly packingHigh: 0.6
  readonly packingLow: 0.45
}

export const bremsstrahlung = dataFile<Bremsstrahlung>('bremsstrahlung.json')
export const granularTexture = dataFile<GranularTexture>('granular-texture.json')
