import { compoundFractions, type MassFractions, mixed } from './compound.ts'

export interface Proximate {
  readonly waterPct: number
  readonly proteinPct: number
  readonly fatPct: number
  readonly carbohydratePct: number
  readonly ashPct: number
  readonly fibrePct: number
}

export interface NutrientRecipe {
  readonly nutrients: {
    readonly water: string
    readonly protein: MassFractions
    readonly fat: MassFractions
    readonly carbohydrate: MassFractions
  }
  readonly densityGPerCm3: Readonly<
    Record<'water' | 'ice' | 'protein' | 'fat' | 'carbohydrate' | 'fibre' | 'ash', number>
  >
  readonly chloridePerSodium: {
    readonly aboveMgPer100G: number
    readonly above: number
    readonly below: number
  }
}

/**
 * Elements of a food from its nutrients (g per 100 g) and minerals (mg per 100 g).
 * Minerals stand for themselves, chlorine follows sodium, what is left of the ash counts as oxygen
 * (Woodard & White 1986 for the nutrients; the ash rule is an assumption). Carbohydrate includes fibre.
 */
export function foodFractions(
  food: Proximate,
  mineralsMgPer100G: Readonly<Record<string, number>>,
  recipe: NutrientRecipe,
  weights: Readonly<Record<string, number>>,
): MassFractions {
  const { water, protein, fat, carbohydrate } = recipe.nutrients
  const sodium = mineralsMgPer100G.Na ?? 0
  const { aboveMgPer100G, above, below } = recipe.chloridePerSodium
  const minerals: MassFractions = Object.fromEntries(
    Object.entries(mineralsMgPer100G).map(([symbol, mg]) => [symbol, mg / 1000]),
  )
  minerals.Cl = ((sodium > aboveMgPer100G ? above : below) * sodium) / 1000
  const named = Object.values(minerals).reduce((a, b) => a + b, 0)
  return mixed([
    { share: food.waterPct, fractions: compoundFractions(water, weights) },
    { share: food.proteinPct, fractions: perCent(protein) },
    { share: food.fatPct, fractions: perCent(fat) },
    { share: food.carbohydratePct, fractions: perCent(carbohydrate) },
    { share: 1, fractions: { ...minerals, O: Math.max(0, food.ashPct - named) } },
  ])
}

/**
 * Density of the pore-free food, g/cm3: 1/rho = sum x_i/rho_i (Choi & Okos 1986, 20 C).
 * `frozenShareOfWater` 0 to 1 is taken as ice.
 */
export function foodDensity(food: Proximate, frozenShareOfWater: number, recipe: NutrientRecipe): number {
  const rho = recipe.densityGPerCm3
  const terms: readonly (readonly [number, number])[] = [
    [food.waterPct * (1 - frozenShareOfWater), rho.water],
    [food.waterPct * frozenShareOfWater, rho.ice],
    [food.proteinPct, rho.protein],
    [food.fatPct, rho.fat],
    [food.carbohydratePct - food.fibrePct, rho.carbohydrate],
    [food.fibrePct, rho.fibre],
    [food.ashPct, rho.ash],
  ]
  const mass = terms.reduce((sum, [share]) => sum + share, 0)
  return mass / terms.reduce((sum, [share, density]) => sum + share / density, 0)
}

function perCent(shares: MassFractions): MassFractions {
  return Object.fromEntries(Object.entries(shares).map(([symbol, pct]) => [symbol, pct / 100]))
}
