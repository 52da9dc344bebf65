import { FISH, MEAT_OR_POULTRY } from '../../../brief/usual/food-classes.ts'
import type { Brief } from '../../../contract/index.ts'
import { FOOD_CLASSES } from '../../../contract/index.ts'

/** Classes of food the law tells apart; animal food is one by its consumer, whatever it is made of. */
export const LAW_CLASSES = [...FOOD_CLASSES, 'animal-food'] as const
export type LawClass = (typeof LAW_CLASSES)[number]

/** Foods (reference ids) that may hold meat or fish or neither; the brief has to say. */
const OPEN = ['custom', 'ready_meal', 'soup']

/** Class of the food a brief is about; null where neither list nor brief tells. */
export function lawClass({
  given: { product },
  consumer,
}: Pick<Brief, 'given' | 'consumer'>): LawClass | null {
  if (consumer === 'animals') return 'animal-food'
  if (product.foodClass) return product.foodClass
  if (MEAT_OR_POULTRY.includes(product.food)) return 'meat-or-poultry'
  if (FISH.includes(product.food)) return 'fish'
  return OPEN.includes(product.food) ? null : 'other'
}

/** True when a claim on the label says organic, in one of the words for it. */
export const saysOrganic = (claims: readonly string[]): boolean =>
  claims.some((claim) => /\b(organic|organically|bio|biologique|ökologisch|eko)\b/i.test(claim))
