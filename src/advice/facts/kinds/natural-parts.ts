import type { Material, MaterialKind } from '../../../reference/index.ts'

/** Parts a food brings along by nature; "none" where the material is foreign to it. */
export const NATURAL_PARTS = ['none', 'bone', 'shell', 'stone'] as const
export type NaturalPart = (typeof NATURAL_PARTS)[number]

/** Foods (reference ids) and the natural part they may still hold. The project's own list. */
const FOODS: Readonly<Record<Exclude<NaturalPart, 'none'>, readonly string[]>> = {
  bone: ['chicken_breast', 'chicken_mince', 'beef_mince', 'ham', 'sausage', 'cod', 'salmon', 'tuna_canned'],
  shell: ['almond', 'hazelnut', 'walnut', 'cashew', 'peanut', 'chocolate_hazelnut'],
  stone: ['olive', 'prune'],
}

/** Words of a label that say a natural part is gone, so that one left behind is a defect. */
const CLAIMS: Readonly<Record<Exclude<NaturalPart, 'none'>, RegExp>> = {
  bone: /\b(bone-?less|bone-?free|de-?boned|without bones?|no bones?)\b/i,
  shell: /\b(shelled|shell-?less|shell-?free|without shells?|kernels?)\b/i,
  stone: /\b(pitted|pit-?less|stoned|de-?stoned|stone-?less|stone-?free|without (stones?|pits?))\b/i,
}

/** Which natural part a material would be. Nut shell and fruit stone share one entry of the reference. */
const partsOf = (material: string, kind: MaterialKind | undefined): readonly NaturalPart[] => {
  if (kind === 'bone') return ['bone']
  return material === 'nut_shell' ? ['shell', 'stone'] : []
}

/**
 * Natural part of `food` that `material` is: "none" when foreign; null when the food is a custom one, whose
 * natural parts nobody has stated.
 */
export function naturalPart(
  food: string,
  material: string,
  kind: MaterialKind | undefined,
): NaturalPart | null {
  const candidates = partsOf(material, kind)
  if (candidates.length === 0) return 'none'
  if (food === 'custom') return null
  return candidates.find((part) => part !== 'none' && FOODS[part].includes(food)) ?? 'none'
}

/** True when one of the label's claims says this natural part was taken out. */
export const saysRemoved = (part: NaturalPart, claims: readonly string[]): boolean =>
  part !== 'none' && claims.some((claim) => CLAIMS[part].test(claim))

/** Materials that bend, crush or chew and so neither cut nor break a tooth. */
const SOFT = ['cartilage', 'insect', 'silicone', 'silicone_filled', 'nr', 'rubber_filled', 'rubber_any']

/** Hard or sharp in the sense of the injury rules: glass, stone, metal, bone, shell, wood, rigid plastic. */
export const isHardOrSharp = (material: Pick<Material, 'id' | 'kind'>): boolean =>
  ['glass', 'stone', 'metal', 'bone', 'polymer', 'organic'].includes(material.kind) &&
  !SOFT.includes(material.id)
