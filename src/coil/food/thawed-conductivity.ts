import { foodConductivities, conductivityRules as rules } from '../../reference/electrical.ts'
import { saltConductivitySPerM } from './brine.ts'

/** What is known of the food. Percentages by mass; null where not known. */
export interface FoodState {
  readonly food: string
  readonly waterPct: number | null
  readonly ashPct: number | null
  /** Salt declared in the brief; null: as usual for the food. */
  readonly saltPct: number | null
  readonly temperatureC: number
  /** Share of the volume that is food, below 1 for a heap of pieces. */
  readonly packing: number
  /** Conductivity entered in the brief, of the food as it lies at its temperature. */
  readonly enteredSPerM: number | null
}

/** Central value, low and high end of the range. */
export type Triple = readonly [value: number, low: number, high: number]

/** Water of a food of unknown composition, % (assumption: as meat or a ready meal). */
const FALLBACK_WATER_PCT = 65

export interface Thawed {
  readonly at25: Triple
  readonly saltPct: number
  readonly pieces: boolean
  readonly mark: string
  readonly sources: readonly string[]
  readonly formula: string
}

/** Value and range at 25 °C for a food of the catalogue or of its own composition; null for a dry food. */
export function thawedAt25(state: FoodState): Thawed | null {
  const row = foodConductivities.get(state.food)
  const water = state.waterPct ?? FALLBACK_WATER_PCT
  if (row?.class === 'dry') return null
  if (row) {
    const [low, high] = row.range
    const declared = state.saltPct ?? row.saltPct
    const change =
      declared === row.saltPct
        ? 0
        : saltConductivitySPerM(declared, water) - saltConductivitySPerM(row.saltPct, water)
    const floor = row.saltPct > 0 ? low / 5 : low
    const moved = (value: number, factor: number) => Math.max(floor, value + change * factor)
    const [less, more] = rules.waterPhase.range
    return {
      at25: [moved(row.valueSPerM, 1), moved(low, change > 0 ? less : 1), moved(high, change > 0 ? more : 1)],
      saltPct: declared,
      pieces: row.of === 'piece',
      mark: row.mark,
      sources: change === 0 ? [row.source] : [row.source, rules.waterPhase.source, 'brine-table'],
      formula: change === 0 ? 'table value' : 'table value + change of the salt in the water phase',
    }
  }
  if (water < rules.moisture.dryBelowPct) return null
  if (water < rules.moisture.wetFromPct) {
    const { valueSPerM, range, source, mark } = rules.lowMoisture
    return {
      at25: [valueSPerM, ...range],
      saltPct: state.saltPct ?? 0,
      pieces: true,
      mark,
      sources: [source],
      formula: 'little water: class value',
    }
  }
  const ash = state.ashPct ?? 1
  const salt = state.saltPct ?? 0
  const counted = salt + rules.waterPhase.ashAsSalt * Math.max(0, ash - salt)
  const value = saltConductivitySPerM(counted, water)
  const [less, more] = rules.waterPhase.range
  return {
    at25: [value, value * less, value * more],
    saltPct: salt,
    pieces: true,
    mark: rules.waterPhase.mark,
    sources: [rules.waterPhase.source, 'brine-table'],
    formula: 'σ of brine(salt in the water) × (water share)³',
  }
}
