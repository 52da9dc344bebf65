import type { MassFractions } from './attenuation.ts'
import { BIN_COUNT, linearAttenuation } from './energy-bins.ts'

/** What every beam crosses before the pack: densities in g/cm³ and mass fractions (NIST handbook values). */
const FILTERS = {
  aluminium: { densityGPerCm3: 2.699, massFractions: { Al: 1 } },
  beryllium: { densityGPerCm3: 1.848, massFractions: { Be: 1 } },
  copper: { densityGPerCm3: 8.96, massFractions: { Cu: 1 } },
  kapton: {
    densityGPerCm3: 1.42,
    massFractions: { H: 0.026362, C: 0.691133, N: 0.07327, O: 0.209235 },
  },
  air: {
    densityGPerCm3: 1.205e-3,
    massFractions: { C: 0.000124, N: 0.755268, O: 0.231781, Ar: 0.012827 },
  },
} satisfies Record<string, { densityGPerCm3: number; massFractions: MassFractions }>

export type FilterName = keyof typeof FILTERS
export const AIR = FILTERS.air.massFractions

const kept = new Map<FilterName, Float64Array>()

/** Linear attenuation coefficient of a beam filter on the energy bins, 1/mm. */
export function filterAttenuation(name: FilterName): Float64Array {
  let mu = kept.get(name)
  if (!mu) {
    mu = linearAttenuation(FILTERS[name].massFractions, FILTERS[name].densityGPerCm3)
    kept.set(name, mu)
  }
  return mu
}

/** A spectrum behind layers of filter, thicknesses in mm. Same unit as the spectrum given. */
export function behindFilters(
  spectrum: Float64Array,
  layers: readonly (readonly [FilterName, number])[],
): Float64Array {
  const result = Float64Array.from(spectrum)
  for (const [name, mm] of layers) {
    if (mm === 0) continue
    const mu = filterAttenuation(name)
    for (let i = 0; i < BIN_COUNT; i++) result[i]! *= Math.exp(-mu[i]! * mm)
  }
  return result
}
