import type { Calculation } from '../../contract/index.ts'
import { type MassFractions, muRhoElement, muRhoMixture } from '../beam/attenuation.ts'
import { entry, round } from './trail-entry.ts'

/** μ of a mixture at one energy, down to the element table; returns its id and adds what is needed. */
export function attenuationEntry(
  into: Map<string, Calculation>,
  name: string,
  label: string,
  massFractions: MassFractions,
  densityGPerCm3: number,
  keV: number,
  sources: readonly string[],
): string {
  const at = round(keV, 3)
  const id = `mu.${name}.${densityGPerCm3}.${at}`
  if (into.has(id)) return id
  const inputs = Object.keys(massFractions)
    .filter((symbol) => massFractions[symbol]! > 0.0005)
    .map((symbol) => {
      const leaf = `table.${symbol}.${at}`
      into.set(
        leaf,
        entry(
          leaf,
          `mass attenuation coefficient of ${symbol} at ${at} keV`,
          `(μ/ρ)_${symbol}`,
          muRhoElement(symbol, at),
          'cm²/g',
          'table value, log-log between table energies',
          [],
          ['xraylib'],
        ),
      )
      return leaf
    })
  const shares = Object.entries(massFractions)
    .filter(([, share]) => share > 0.0005)
    .map(([symbol, share]) => `${symbol} ${(share * 100).toFixed(1)} %`)
    .join(', ')
  const made = `${id}.made-of`
  into.set(
    made,
    entry(made, `what ${label} is made of`, 'w_i', shares, 'mass fractions', 'composition', [], sources),
  )
  const density = `${id}.density`
  into.set(
    density,
    entry(density, `density of ${label}`, 'ρ', densityGPerCm3, 'g/cm³', 'entered or listed', [], sources),
  )
  into.set(
    id,
    entry(
      id,
      `linear attenuation coefficient of ${label} at ${at} keV`,
      'μ',
      (muRhoMixture(massFractions, at) * densityGPerCm3) / 10,
      '1/mm',
      'ρ/10 · Σ w_i·(μ/ρ)_i',
      [...inputs, made, density],
    ),
  )
  return id
}
