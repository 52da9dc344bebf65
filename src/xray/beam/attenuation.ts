import { type ElementTable, elements } from '../../reference/index.ts'

/**
 * Mass attenuation of elements and mixtures, 1 to 200 keV.
 * Element tables: see the reference room. Interpolation is log-log inside an interval; an absorption
 * edge is a repeated energy, and at the edge itself the value above it is taken.
 */
function interpolate(table: ElementTable, values: Float64Array, keV: number): number {
  const energies = table.energiesKeV
  const last = energies.length - 1
  if (!(keV >= energies[0]! && keV <= energies[last]!)) {
    throw new RangeError(
      `attenuation of ${table.symbol} is tabulated from ${energies[0]} to ${energies[last]} keV; ${keV} keV was asked`,
    )
  }
  let low = 0
  let high = last
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (energies[middle]! <= keV) low = middle
    else high = middle
  }
  if (keV >= energies[last]!) return values[last]!
  const e0 = energies[low]!
  const e1 = energies[high]!
  const share = (Math.log(keV) - Math.log(e0)) / (Math.log(e1) - Math.log(e0))
  return Math.exp(Math.log(values[low]!) * (1 - share) + Math.log(values[high]!) * share)
}

function elementTable(symbol: string): ElementTable {
  const table = elements.get(symbol)
  if (!table) throw new RangeError(`no attenuation table for element ${symbol}`)
  return table
}

/** Total mass attenuation coefficient μ/ρ of an element, cm²/g, at an energy in keV (1 to 200). */
export function muRhoElement(symbol: string, keV: number): number {
  const table = elementTable(symbol)
  return interpolate(table, table.muRhoCm2PerG, keV)
}

/** Mass energy-absorption coefficient μ_en/ρ of an element, cm²/g, at an energy in keV (1 to 200). */
export function muEnRhoElement(symbol: string, keV: number): number {
  const table = elementTable(symbol)
  return interpolate(table, table.muEnRhoCm2PerG, keV)
}

export type MassFractions = Readonly<Record<string, number>>

/** μ/ρ of a mixture, cm²/g: the elements' values weighted by mass fraction. */
export function muRhoMixture(massFractions: MassFractions, keV: number): number {
  let sum = 0
  for (const symbol in massFractions) sum += massFractions[symbol]! * muRhoElement(symbol, keV)
  return sum
}

/** μ_en/ρ of a mixture, cm²/g. */
export function muEnRhoMixture(massFractions: MassFractions, keV: number): number {
  let sum = 0
  for (const symbol in massFractions) sum += massFractions[symbol]! * muEnRhoElement(symbol, keV)
  return sum
}
