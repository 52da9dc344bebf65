import type { Brief, BriefInput, ContaminantInput, ProductInput } from '../../contract/index.ts'
import { FISH, MEAT_OR_POULTRY } from './food-classes.ts'
import { wordTaken } from './material-words.ts'

/** What is looked for first where a brief names nothing (common practice, no source). */
const USUAL = ['steel', 'stainless_any', 'glass_any', 'stone_any', 'rubber_any']

/** Contaminants where a brief names none: no size is asked of them, so there are sizes and no verdict. */
export function usualContaminants({ food, foodClass, boneIn }: ProductInput): ContaminantInput[] {
  const hasBones =
    MEAT_OR_POULTRY.includes(food) ||
    FISH.includes(food) ||
    foodClass === 'meat-or-poultry' ||
    foodClass === 'fish'
  const materials = hasBones && !boneIn ? [...USUAL, 'bone_any'] : USUAL
  return materials.map((material) => ({ material }))
}

/** What was entered: without contaminants that were assumed, and with the words that name no kind of material. */
export function enteredOf({ given, assumed }: Brief): BriefInput | Omit<BriefInput, 'contaminants'> {
  const { contaminants, ...entered } = given
  if (assumed.some(({ path }) => path === 'contaminants')) return entered
  const words = new Map(assumed.map(({ path, because }) => [path, wordTaken(because)]))
  return {
    ...given,
    contaminants: contaminants.map((one, i) => ({
      ...one,
      material: words.get(`contaminants.${i}.material`) ?? one.material,
    })),
  }
}
