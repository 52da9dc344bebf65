import { compoundFractions, type MassFractions, mixed, rounded } from './compound.ts'
import { foodDensity, foodFractions, type NutrientRecipe, type Proximate } from './nutrients.ts'
import { rawJson } from './raw-files.ts'

interface MaterialRow {
  readonly id: string
  readonly label: string
  readonly kind: string
  readonly densityGPerCm3?: number
  readonly densityRange?: readonly [number, number] | null
  readonly massFractions?: MassFractions
  readonly formula?: string
  readonly parts?: readonly { share: number; formula: string }[]
  readonly sameAs?: string
  readonly source: string
  readonly mark: string
  readonly note?: string
  readonly family?: readonly string[]
}

interface FoodRow {
  readonly id: string
  readonly label: string
  readonly densityGPerCm3: number | null
  readonly bulkDensityGPerCm3?: number
  readonly packing: number
  readonly grainMm: number | null
  readonly structure: string
  readonly unevennessMm: number
  readonly unevennessRangeMm?: readonly [number, number]
  readonly proximate?: Proximate
  readonly massFractions?: MassFractions
  readonly mineralsMgPer100G?: Readonly<Record<string, number>>
  readonly frozenShareOfWater?: number
  readonly usdaNumber?: string
  readonly usdaName?: string
  readonly source: string
  readonly mark: string
  readonly note?: string
}

/** One table of all materials and foods, in the order of the raw files. */
export function buildMaterials(): unknown[] {
  const { weights } = rawJson<{ weights: Record<string, number> }>('atomic-weights.json')
  const recipe = rawJson<NutrientRecipe>('nutrient-recipe.json')
  const rows = rawJson<{ rows: MaterialRow[] }>('materials.json').rows
  const byId = new Map(rows.map((row) => [row.id, row]))
  const foods = [
    ...rawJson<{ rows: FoodRow[] }>('foods.json').rows,
    ...rawJson<{ rows: FoodRow[] }>('foods-from-memory.json').rows,
  ]
  return [
    ...rows.map((row) => material(row, byId, weights)),
    ...foods.map((row) => food(row, recipe, weights)),
  ]
}

function material(
  row: MaterialRow,
  byId: ReadonlyMap<string, MaterialRow>,
  weights: Readonly<Record<string, number>>,
): unknown {
  const like = row.sameAs === undefined ? row : byId.get(row.sameAs)
  if (!like) throw new Error(`${row.id}: same as ${row.sameAs}, which is not in the table`)
  return {
    id: row.id,
    label: row.label,
    kind: row.kind,
    densityGPerCm3: like.densityGPerCm3,
    densityRange: like.densityRange ?? null,
    massFractions: fractions(like, weights),
    source: row.source,
    mark: row.mark,
    note: row.note ?? '',
    food: null,
    family: row.family ?? [row.id],
  }
}

function fractions(row: MaterialRow, weights: Readonly<Record<string, number>>): MassFractions {
  if (row.massFractions) return row.massFractions
  if (row.formula) return rounded(compoundFractions(row.formula, weights))
  if (row.parts)
    return rounded(
      mixed(row.parts.map((p) => ({ share: p.share, fractions: compoundFractions(p.formula, weights) }))),
    )
  throw new Error(`${row.id}: give massFractions, formula, parts or sameAs`)
}

function food(row: FoodRow, recipe: NutrientRecipe, weights: Readonly<Record<string, number>>): unknown {
  const { proximate, mineralsMgPer100G = {}, frozenShareOfWater = 0 } = row
  const w =
    row.massFractions ?? (proximate && rounded(foodFractions(proximate, mineralsMgPer100G, recipe, weights)))
  const density =
    row.densityGPerCm3 ?? (proximate && thousandths(foodDensity(proximate, frozenShareOfWater, recipe)))
  if (!w || !density) throw new Error(`${row.id}: no composition and no nutrients to compute it from`)
  const origin = row.usdaNumber ? `Food ${row.usdaNumber} of the table (${row.usdaName}). ` : ''
  return {
    id: row.id,
    label: row.label,
    kind: 'food',
    densityGPerCm3: density,
    densityRange: null,
    massFractions: w,
    source: row.source,
    mark: row.mark,
    note: `${origin}${row.note ?? ''}`.trim(),
    food: {
      proximate: proximate ?? null,
      packing: row.packing,
      grainMm: row.grainMm,
      bulkDensityGPerCm3: row.bulkDensityGPerCm3 ?? thousandths(density * row.packing),
      structure: row.structure,
      unevennessMm: row.unevennessMm,
      ...(row.unevennessRangeMm ? { unevennessRangeMm: row.unevennessRangeMm } : {}),
      voidFree: false,
    },
    family: [row.id],
  }
}

const thousandths = (value: number) => Math.round(value * 1000) / 1000
