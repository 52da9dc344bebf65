import { BIN_COUNT, binKeV, massEnergyAbsorption } from './energy-bins.ts'
import { AIR, filterAttenuation } from './filters.ts'

const JOULE_PER_KEV = 1.602177e-16
let airAbsorption: Float64Array | null = null

/** Air kerma of a spectrum in photons/mm² per keV bin: µGy (per mAs at 1 m if the spectrum is). */
export function airKermaMicroGy(spectrum: Float64Array): number {
  airAbsorption ??= massEnergyAbsorption(AIR)
  let sum = 0
  for (let i = 0; i < BIN_COUNT; i++) sum += spectrum[i]! * 100 * binKeV(i) * airAbsorption[i]!
  return sum * JOULE_PER_KEV * 1e3 * 1e6
}

/** Photons / mm² of a spectrum (1 keV bins). */
export function fluencePerMm2(spectrum: Float64Array): number {
  return spectrum.reduce((sum, n) => sum + n, 0)
}

/** Mean photon energy, keV. */
export function meanEnergyKeV(spectrum: Float64Array): number {
  let weighted = 0
  for (let i = 0; i < BIN_COUNT; i++) weighted += spectrum[i]! * binKeV(i)
  return weighted / fluencePerMm2(spectrum)
}

function aluminiumReducingTo(spectrum: Float64Array, share: number): number {
  const mu = filterAttenuation('aluminium')
  const open = airKermaMicroGy(spectrum)
  let low = 0
  let high = 60
  for (let k = 0; k < 50; k++) {
    const mm = (low + high) / 2
    const behind = spectrum.map((n, i) => n * Math.exp(-mu[i]! * mm))
    if (airKermaMicroGy(behind) > share * open) low = mm
    else high = mm
  }
  return (low + high) / 2
}

/** First half-value layer (aluminium halving the air kerma) and second, mm Al, up to 60 mm. */
export function halfValueLayersMmAl(spectrum: Float64Array): { first: number; second: number } {
  const first = aluminiumReducingTo(spectrum, 0.5)
  return { first, second: aluminiumReducingTo(spectrum, 0.25) - first }
}
