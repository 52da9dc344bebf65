import type { Product } from '../contract/index.ts'
import { materials } from '../reference/index.ts'
import { elementalFractions } from './composition.ts'

/** Elemental mass fractions of a product: its own composition where given, else the food table. */
export function productFractions(
  product: Pick<Product, 'food' | 'composition' | 'saltPct'>,
): Readonly<Record<string, number>> {
  if (product.composition) return elementalFractions(product.composition, product.saltPct ?? 0)
  const material = materials.get(product.food)
  if (!material) throw new RangeError(`no such food: ${product.food}`)
  return material.massFractions
}
