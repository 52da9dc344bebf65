import { elements } from '../../reference/index.ts'
import { type MassFractions, muEnRhoElement, muRhoElement } from './attenuation.ts'

/** The energy grid of the whole chain: 1 keV bins centred 8.5, 9.5, … 149.5 keV. */
export const FIRST_BIN_KEV = 8.5
export const BIN_COUNT = 142

/** Number of bins whose centre lies below the tube voltage. */
export function binsBelow(kV: number): number {
  return Math.max(0, Math.min(BIN_COUNT, Math.ceil(kV - FIRST_BIN_KEV)))
}

/** Centre of a bin, keV. */
export function binKeV(index: number): number {
  return FIRST_BIN_KEV + index
}

function perElement(value: (symbol: string, keV: number) => number) {
  const kept = new Map<string, Float64Array>()
  return (symbol: string): Float64Array => {
    let curve = kept.get(symbol)
    if (!curve) {
      curve = Float64Array.from({ length: BIN_COUNT }, (_, i) => value(symbol, binKeV(i)))
      kept.set(symbol, curve)
    }
    return curve
  }
}

const muRhoOnBins = perElement(muRhoElement)
const muEnRhoOnBins = perElement(muEnRhoElement)

function mix(massFractions: MassFractions, scale: number, curveOf: (symbol: string) => Float64Array) {
  const sum = new Float64Array(BIN_COUNT)
  for (const symbol in massFractions) {
    if (!elements.has(symbol)) throw new RangeError(`no attenuation table for element ${symbol}`)
    const curve = curveOf(symbol)
    const share = massFractions[symbol]! * scale
    for (let i = 0; i < BIN_COUNT; i++) sum[i]! += share * curve[i]!
  }
  return sum
}

/** Linear attenuation coefficient μ on the bins, 1/mm, of a material at a density in g/cm³. */
export function linearAttenuation(massFractions: MassFractions, densityGPerCm3: number): Float64Array {
  return mix(massFractions, densityGPerCm3 / 10, muRhoOnBins)
}

/** μ/ρ on the bins, cm²/g. */
export function massAttenuation(massFractions: MassFractions): Float64Array {
  return mix(massFractions, 1, muRhoOnBins)
}

/** μ_en/ρ on the bins, cm²/g. */
export function massEnergyAbsorption(massFractions: MassFractions): Float64Array {
  return mix(massFractions, 1, muEnRhoOnBins)
}
