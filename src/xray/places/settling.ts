import type { Contaminant, Point } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import type { PackPlace } from './place.ts'

/** Where a piece ends up in the food of a pack. */
export type Settling = 'sinks' | 'floats' | 'stays'

/** Densities closer than this (as a share) leave a piece where it is (judgement: currents and pieces carry it). */
const SAME_DENSITY = 0.02

/**
 * What a piece does in the food: in a liquid, with pieces in it or not, and unless it is stiff, a denser one sinks
 * and a lighter one floats; in everything else it lies where it fell. Densities in g/cm³.
 */
export function settlingOf(point: Pick<Point, 'stage' | 'product'>, contaminant: Contaminant): Settling {
  const { structure, stiff, densityGPerCm3 } = point.product
  const flows = (structure === 'liquid' || structure === 'pieces-in-liquid') && !stiff
  const own = materials.get(contaminant.material)?.densityGPerCm3
  if (!flows || point.stage !== 'packed' || contaminant.placement === 'outside' || own === undefined)
    return 'stays'
  const ratio = own / densityGPerCm3
  if (ratio > 1 + SAME_DENSITY) return 'sinks'
  return ratio < 1 - SAME_DENSITY ? 'floats' : 'stays'
}

const LEVEL = { sinks: 'bottom', floats: 'top' } as const

/** True where this place is one that the piece sinks or floats to. */
export const settlesIn = (place: Pick<PackPlace, 'level'>, settling: Settling): boolean =>
  settling !== 'stays' && place.level === LEVEL[settling]

/** Whether a piece can lie at each place: what settles lies where it settles and nowhere else. */
export function canLieAt(
  places: readonly Pick<PackPlace, 'level'>[],
  settling: Settling,
): (place: Pick<PackPlace, 'level'>) => boolean {
  const settles = places.some((place) => settlesIn(place, settling))
  return (place) => !settles || settlesIn(place, settling)
}
