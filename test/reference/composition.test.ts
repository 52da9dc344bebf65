import { describe, expect, it } from 'vitest'
import { compoundFractions } from '../../src/reference/build/compound.ts'
import { foodDensity, foodFractions, type NutrientRecipe } from '../../src/reference/build/nutrients.ts'
import { rawJson } from '../../src/reference/build/raw-files.ts'
import { materials } from '../../src/reference/index.ts'

const { weights } = rawJson<{ weights: Record<string, number> }>('atomic-weights.json')
const recipe = rawJson<NutrientRecipe>('nutrient-recipe.json')
const measured = [...materials.values()].filter((m) => m.source === 'usda-sr27')

describe('compounds', () => {
  /** Mass fractions of pure substances, handbook values. */
  it.each([
    ['H2O', 'H', 0.1119],
    ['SiO2', 'Si', 0.4674],
    ['CaCO3', 'Ca', 0.4004],
    ['C6H10O5', 'C', 0.4445],
    ['WC', 'W', 0.9387],
  ])('%s holds its share of %s', (formula, symbol, share) => {
    expect(compoundFractions(formula, weights)[symbol]).toBeCloseTo(share, 3)
  })

  it('counts broken numbers of atoms', () => {
    const half = compoundFractions('Mn0.5Fe2.5O4', weights)
    expect(half.Mn! / half.Fe!).toBeCloseTo((0.5 * weights.Mn!) / (2.5 * weights.Fe!), 9)
  })

  it('refuses what it cannot read', () => {
    expect(() => compoundFractions('Ca(OH)2', weights)).toThrow(/something other/)
    expect(() => compoundFractions('Xx2', weights)).toThrow(/no atomic weight for Xx/)
  })
})

describe('nutrient recipe, held against the foods with a measured table', () => {
  const minerals = ['Na', 'K', 'Ca', 'P', 'Mg', 'Fe', 'Zn']

  it.each(measured)('$id: its elements follow from its nutrients', (m) => {
    const mg = Object.fromEntries(minerals.map((s) => [s, (m.massFractions[s] ?? 0) * 1e5]))
    const made = foodFractions(m.food!.proximate!, mg, recipe, weights)
    for (const symbol of ['H', 'C', 'N', 'O', 'S'])
      expect(Math.abs((made[symbol] ?? 0) - (m.massFractions[symbol] ?? 0)), symbol).toBeLessThan(5e-4)
  })

  it.each(measured.filter((m) => m.id !== 'bread'))('$id: its density follows from its nutrients', (m) => {
    const frozen = /_frozen$/.test(m.id) ? 0.85 : 0
    expect(Math.abs(foodDensity(m.food!.proximate!, frozen, recipe) - m.densityGPerCm3)).toBeLessThan(0.004)
  })
})
