import { conductivityRules as rules } from '../../reference/electrical.ts'
import { temperatureFactor } from './brine.ts'
import { type FoodState, type Thawed, type Triple, thawedAt25 } from './thawed-conductivity.ts'

export type ConductivityState = 'entered' | 'dry' | 'thawed' | 'partly-frozen' | 'frozen'

/** Conductivity of the food as it lies, S/m, with its range and how it came about. */
export interface FoodConductivity {
  readonly valueSPerM: number
  readonly lowSPerM: number
  readonly highSPerM: number
  readonly state: ConductivityState
  /** At 25 °C and thawed, before temperature and packing; null where it plays no part. */
  readonly at25SPerM: number | null
  readonly temperatureFactor: number
  readonly packingFactor: number
  readonly mark: string
  readonly sources: readonly string[]
  readonly formula: string
}

/** Thawed above −1 °C, frozen through below −9.5 °C, between them straight in ln σ. */
function atTemperature(thawed: Thawed, temperatureC: number): { values: Triple; state: ConductivityState } {
  const { startsC, throughC } = rules.freezing
  const warm = (c: number): Triple => {
    const factor = temperatureFactor(c)
    return [thawed.at25[0] * factor, thawed.at25[1] * factor, thawed.at25[2] * factor]
  }
  if (temperatureC > startsC) return { values: warm(temperatureC), state: 'thawed' }
  const salted = thawed.saltPct >= rules.frozenSalted.fromSaltPct
  const { valueSPerM, range } = salted ? rules.frozenSalted : rules.frozen
  const edge = warm(startsC)
  const hard = [valueSPerM, ...range].map((value, k) => Math.min(value, edge[k]!)) as unknown as Triple
  if (temperatureC <= throughC) return { values: hard, state: 'frozen' }
  const t = (temperatureC - throughC) / (startsC - throughC)
  const values = hard.map((value, k) => value ** (1 - t) * edge[k]! ** t) as unknown as Triple
  return { values, state: 'partly-frozen' }
}

/**
 * Conductivity of a food as it lies: the entered one; else the table's value at 25 °C, moved by the salt in
 * the water phase and the temperature (2 %/K), frozen below −1 °C. A heap of separate wet pieces counts with
 * its fill fraction: no arrangement of conductor and air conducts better than that (Wiener's bound).
 */
export function foodConductivity(state: FoodState): FoodConductivity {
  if (state.enteredSPerM !== null) {
    return {
      valueSPerM: state.enteredSPerM,
      lowSPerM: state.enteredSPerM,
      highSPerM: state.enteredSPerM,
      state: 'entered',
      at25SPerM: null,
      temperatureFactor: 1,
      packingFactor: 1,
      mark: 'given',
      sources: [],
      formula: 'as entered',
    }
  }
  const thawed = thawedAt25(state)
  if (!thawed) {
    const { valueSPerM, range, source, mark } = rules.dry
    return {
      valueSPerM,
      lowSPerM: range[0],
      highSPerM: range[1],
      state: 'dry',
      at25SPerM: null,
      temperatureFactor: 1,
      packingFactor: 1,
      mark,
      sources: [source],
      formula: 'dry food: class value',
    }
  }
  const { values, state: phase } = atTemperature(thawed, state.temperatureC)
  const packing = thawed.pieces ? Math.min(1, state.packing) : 1
  return {
    valueSPerM: values[0] * packing,
    lowSPerM: values[1] * packing,
    highSPerM: values[2] * packing,
    state: phase,
    at25SPerM: thawed.at25[0],
    temperatureFactor: values[0] / thawed.at25[0],
    packingFactor: packing,
    mark: thawed.mark,
    sources: [...thawed.sources, phase === 'thawed' ? rules.temperature.source : rules.frozen.source],
    formula: `${thawed.formula}; temperature; packing`,
  }
}
