import { dataFile } from './data-file.ts'
import type { Mark } from './material.ts'
import type { SourceText } from './sources.ts'

/** A metal to a coil, at 20 °C. */
export interface MetalElectrical {
  /** Id in `materials` (three test-piece metals are listed here only). */
  readonly id: string
  readonly conductivitySPerM: number
  readonly conductivityRange: readonly [number, number]
  readonly relativePermeability: number
  readonly permeabilityRange: readonly [number, number]
  /** ferromagnetic: a magnet holds it; weak: permeability a little above 1. */
  readonly magnetism: 'ferromagnetic' | 'weak' | 'none'
  /** Which of the three usual test pieces stands for it. */
  readonly testPiece: 'ferrous' | 'non-ferrous' | 'austenitic'
  /** Ids in `electricalSources`. */
  readonly sources: readonly string[]
  readonly mark: Mark
  readonly note: string
}

/** A conducting layer whose thickness says nothing of its conductance. */
export interface LayerElectrical {
  readonly id: string
  readonly sheetOhmPerSquare: number
  readonly sheetOhmRange: readonly [number, number]
  readonly sources: readonly string[]
  readonly mark: Mark
  readonly note: string
}

interface SourcedRange {
  readonly valueSPerM: number
  readonly range: readonly [number, number]
  readonly source: string
  readonly mark: Mark
}

/** A food that does not count as a conductor. */
export interface DryFoodConductivity {
  readonly id: string
  readonly class: 'dry'
  readonly source: string
  readonly mark: Mark
  readonly note?: string
}

/** A food that conducts: value at 25 °C, thawed, with its own salt. */
export interface WetFoodConductivity extends SourcedRange {
  readonly id: string
  readonly class: 'wet'
  readonly saltPct: number
  /** piece: of the solid piece, a heap conducts less; as-lies: of the food as it is. */
  readonly of: 'piece' | 'as-lies'
  readonly note?: string
}

export type FoodConductivityRow = DryFoodConductivity | WetFoodConductivity

/** Rules that carry a food's value to its salt and temperature; each names its source. */
export interface ConductivityRules {
  readonly temperature: { slopePerK: number; referenceC: number; source: string; mark: Mark }
  readonly freezing: { startsC: number; throughC: number; source: string; mark: Mark }
  readonly frozen: SourcedRange
  readonly frozenSalted: SourcedRange & { readonly fromSaltPct: number }
  /** Exponent of the water share, share of the ash that counts as salt, range as factors. */
  readonly waterPhase: {
    exponent: number
    ashAsSalt: number
    range: readonly [number, number]
    source: string
    mark: Mark
  }
  readonly moisture: { dryBelowPct: number; wetFromPct: number; source: string; mark: Mark }
  readonly dry: SourcedRange
  readonly lowMoisture: SourcedRange
}

export interface BrineTable {
  readonly temperatureC: number
  readonly saltPct: readonly number[]
  readonly conductivitySPerM: readonly number[]
  readonly source: string
  readonly mark: Mark
}

const metalFile = dataFile<{
  metals: readonly MetalElectrical[]
  layers: readonly LayerElectrical[]
  sources: readonly SourceText[]
}>('metals.json')

const foodFile = dataFile<{
  rules: ConductivityRules
  brine: BrineTable
  foods: readonly FoodConductivityRow[]
  sources: readonly SourceText[]
}>('food-conductivity.json')

/** Metals (and ferrite) a coil can answer to, by material id. */
export const metals: ReadonlyMap<string, MetalElectrical> = new Map(
  metalFile.metals.map((row) => [row.id, row]),
)

/** Packaging layers with a sheet resistance of their own, by material id. */
export const conductingLayers: ReadonlyMap<string, LayerElectrical> = new Map(
  metalFile.layers.map((row) => [row.id, row]),
)

/** Conductivity of the catalogue's foods, by food id. */
export const foodConductivities: ReadonlyMap<string, FoodConductivityRow> = new Map(
  foodFile.foods.map((row) => [row.id, row]),
)

export const conductivityRules: ConductivityRules = foodFile.rules

export const brine: BrineTable = foodFile.brine

/** Sources of both files and of the equations of the coil. */
export const electricalSources: ReadonlyMap<string, SourceText> = new Map(
  [...metalFile.sources, ...foodFile.sources].map((row) => [row.id, row]),
)
