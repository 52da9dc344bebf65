import type { Point } from '../../contract/index.ts'
import { metals } from '../../reference/electrical.ts'
import { figures } from '../../reference/separation.ts'
import { mm, plain } from '../plain-number.ts'
import type { VariantShare } from '../removal-model.ts'
import type { Trail } from '../trail.ts'
import type { Variant } from '../variant.ts'
import type { Magnet } from './magnet-field.ts'
import type { SurroundingsRange } from './magnet-surroundings.ts'

/** What no magnet of this kind takes out. */
export const NEVER_MAGNETIC =
  'Annealed austenitic stainless steel such as 316, brass, aluminium, copper, lead, and everything that is not a metal (ferrite apart).'

/** Added iron as a share of the product, and a sentence on what it does to the magnet. */
export function addedIron(point: Point, trail: Trail): { share: number; words: string } | null {
  const { ironMgPerKg } = point.product
  if (ironMgPerKg <= 0) return null
  const share = ironMgPerKg * 1e-6
  trail.add('added-iron', {
    label: 'added iron the magnet may collect',
    value: share,
    unit: 'share of the product',
    formula: 'mg/kg · 1e-6, all of it as metal powder',
    inputs: [trail.entered('iron', 'added iron', '', ironMgPerKg, 'mg/kg')],
  })
  const grams = point.kgPerHour === null ? null : share * point.kgPerHour * 1000
  const rate = grams === null ? '' : `, up to ${plain(grams)} g an hour`
  return {
    share,
    words: ` It also collects the iron powder added to the product${rate}: it fills up and the label claim suffers.`,
  }
}

const isFerromagnetic = ({ material }: Variant): boolean =>
  metals.get(material.id)?.magnetism === 'ferromagnetic'

/** True where neither a stronger magnet nor a thinner layer would help. */
export const beyondMagnets = (shares: readonly VariantShare[], variants: readonly Variant[]): boolean =>
  shares.every((s) => s.ceiling === 0) && !variants.some(isFerromagnetic)

/** How the magnet must stand, and how near the food comes to it. */
export function magnetCondition(magnet: Magnet, around: SurroundingsRange, point: Point): string {
  const reach = magnet.reachPossible
    ? ''
    : ' The reach stated is more than this flux density at the surface can do.'
  const clean = 'Cleaned before it is full; its pull checked.'
  const depth = mm(around.depthMm)
  if (point.stage === 'loose')
    return `The magnet touches or nearly touches the layer, ${depth} deep here; a thinner or slower layer helps. ${clean}${reach}`
  if (!around.grate)
    return `The food would clog a grate, so one bar or magnets at the wall must do, with food up to ${depth} away. ${clean}${reach}`
  const gap = mm(2 * figures['magnet-half-gap'].value)
  return `Bars stand across the whole stream, no gap wider than ${gap}; one bar in the middle leaves ${depth} on each side. ${clean}${reach}`
}

/** Why it is kept or not. */
export function magnetWords(
  around: SurroundingsRange,
  shares: readonly VariantShare[],
  variants: readonly Variant[],
): string {
  const named = variants[0]!.contaminant.material
  const ceiling = Math.max(...shares.map((s) => s.ceiling))
  if (ceiling === 0 && variants.some(isFerromagnetic))
    return 'The magnet is too weak: at its surface it pulls too few times the weight of the piece to keep it.'
  if (ceiling === 0)
    return variants.some((v) => v.material.kind === 'metal')
      ? `A magnet does not hold ${variants[0]!.material.label}: it is not magnetic enough to be drawn out of food.`
      : 'It is not magnetic.'
  if (named === 'ss304' || shares.some((s) => s.ceiling === 0))
    return 'Only magnetic grades and strongly cold-worked pieces are drawn; annealed austenitic steel is not.'
  return around.worst.resistancePa > 0
    ? 'It is magnetic: pull over weight decides, so reach, depth of the layer and speed count; through this food a larger piece moves more easily.'
    : 'It is magnetic: pull over weight decides, so reach, depth of the layer and speed count, not the size.'
}
