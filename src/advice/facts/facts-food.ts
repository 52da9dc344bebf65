import type { Product } from '../../contract/index.ts'
import { foodConductivities } from '../../reference/electrical.ts'
import type { FactWriter } from './fact-sheet.ts'
import type { Materials } from './kinds/pack-kind.ts'

/** Salt of a listed food where the brief gives none, %; null for a food without an entry. */
function usualSaltPct(food: string): number | null {
  const row = foodConductivities.get(food)
  return row?.class === 'wet' ? row.saltPct : null
}

/** Facts of the food at a point: the point's own where it differs, else the brief's. */
export function writeFood(write: FactWriter, product: Product, index: number, materials: Materials): void {
  const from = (id: string, key: keyof Product, value = product[key] as string | number | boolean | null) =>
    write.fromBrief(id, value, `points.${index}.product.${key}`, `product.${key}`)
  const material = materials.get(product.food)
  from('food.label', 'food', material?.label ?? (product.food === 'custom' ? 'this food' : product.food))
  from('food.structure', 'structure')
  write.computed('food.holdsPieces', product.stiff)
  if (product.grainMm > 0) from('food.grainMm', 'grainMm')
  from('food.packing', 'packing')
  from('food.unevennessMm', 'unevennessMm')
  from('food.voidFree', 'voidFree')
  from('food.boneIn', 'boneIn')
  from('food.temperatureC', 'temperatureC')
  from('food.densityGPerCm3', 'densityGPerCm3')
  const water = product.composition?.waterPct ?? material?.food?.proximate?.waterPct ?? null
  from('food.waterPct', 'composition', water)
  from('food.saltPct', 'saltPct', product.saltPct ?? usualSaltPct(product.food))
  from('food.ironMgPerKg', 'ironMgPerKg')
}
