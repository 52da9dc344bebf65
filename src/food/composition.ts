/** Proximate composition of a food, g per 100 g. */
export interface Proximate {
  readonly waterPct: number
  readonly proteinPct: number
  readonly fatPct: number
  readonly carbohydratePct: number
  readonly ashPct: number
}

/**
 * Elemental make-up of food constituents, mass fractions. Protein, fat and carbohydrate after Woodard &
 * White 1986, Br. J. Radiol. 59:1209 (percentages from memory); water by formula. Ash is an assumption:
 * a plant-and-meat average mineral mix, its remainder oxygen.
 */
const CONSTITUENTS = {
  waterPct: { H: 0.1119, O: 0.8881 },
  proteinPct: { H: 0.066, C: 0.534, N: 0.17, O: 0.22, S: 0.01 },
  fatPct: { H: 0.118, C: 0.773, O: 0.109 },
  carbohydratePct: { H: 0.062, C: 0.444, O: 0.494 },
  ashPct: { Na: 0.12, Mg: 0.04, P: 0.17, Cl: 0.17, K: 0.3, Ca: 0.06, O: 0.14 },
} satisfies Record<keyof Proximate, Record<string, number>>

/** True densities at 20 °C, g/cm³ (Choi & Okos 1986; coefficients from memory). */
const DENSITIES = {
  waterPct: 0.998,
  proteinPct: 1.32,
  fatPct: 0.917,
  carbohydratePct: 1.593,
  ashPct: 2.418,
} satisfies Record<keyof Proximate, number>

const NAMES = Object.keys(CONSTITUENTS) as (keyof Proximate)[]

/** Sum of the five constituents, per cent. */
export function proximateTotalPct(food: Proximate): number {
  return NAMES.reduce((sum, name) => sum + food[name], 0)
}

/**
 * Elemental mass fractions of a food from its proximate composition (normalised to 1) and, where known,
 * its added salt in per cent (already part of the ash: it replaces that much of the average mineral mix).
 */
export function elementalFractions(food: Proximate, saltPct = 0): Record<string, number> {
  const total = proximateTotalPct(food)
  const salt = Math.min(saltPct, food.ashPct)
  const sum: Record<string, number> = {}
  const add = (elements: Record<string, number>, share: number) => {
    for (const [symbol, fraction] of Object.entries(elements)) {
      sum[symbol] = (sum[symbol] ?? 0) + (fraction * share) / total
    }
  }
  for (const name of NAMES) add(CONSTITUENTS[name], name === 'ashPct' ? food.ashPct - salt : food[name])
  if (salt > 0) add({ Na: 0.3934, Cl: 0.6066 }, salt)
  return sum
}

/** Density of the solid food without pores, g/cm³: the constituents' volumes added (Choi & Okos 1986). */
export function solidDensityGPerCm3(food: Proximate): number {
  const volume = NAMES.reduce((sum, name) => sum + food[name] / DENSITIES[name], 0)
  return proximateTotalPct(food) / volume
}
