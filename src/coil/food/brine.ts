import { brine, conductivityRules } from '../../reference/electrical.ts'

/** σ at 25 °C over σ at the table's temperature, by the linear rule. */
export function temperatureFactor(temperatureC: number): number {
  const { slopePerK, referenceC } = conductivityRules.temperature
  return 1 + slopePerK * (temperatureC - referenceC)
}

/** Conductivity of salt in water at 25 °C, S/m, for 0 to 26 % salt by mass (straight between table values). */
export function brineConductivitySPerM(saltPct: number): number {
  const { saltPct: steps, conductivitySPerM: values, temperatureC } = brine
  const last = steps.length - 1
  const given = Math.min(steps[last]!, Math.max(0, saltPct))
  let k = 1
  while (k < last && steps[k]! < given) k++
  const t = (given - steps[k - 1]!) / (steps[k]! - steps[k - 1]!)
  return (values[k - 1]! + t * (values[k]! - values[k - 1]!)) / temperatureFactor(temperatureC)
}

/**
 * Conductivity that salt gives a food, S/m at 25 °C: a brine as strong as the salt in the food's water,
 * times (water share)³. Assumption; within a factor of two of what is known of ham, cheese, bread, milk.
 */
export function saltConductivitySPerM(saltPct: number, waterPct: number): number {
  if (saltPct <= 0 || waterPct <= 0) return 0
  const strength = (100 * saltPct) / (saltPct + waterPct)
  return brineConductivitySPerM(strength) * (waterPct / 100) ** conductivityRules.waterPhase.exponent
}
