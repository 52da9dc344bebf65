import type { Part, Place, Point } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'

/** What the packaging parts make, as a beam meets it; "none" for bare food. */
export type ContainerKind = 'jar' | 'can' | 'pot' | 'tray' | 'carton' | 'bag' | 'none'

/** The first part of a pack at one of some places. */
export const partAt = (point: Pick<Point, 'parts'>, ...places: readonly Place[]): Part | undefined =>
  point.parts.find((part) => places.includes(part.place))

const kindOf = (part: Part | undefined) => part && materials.get(part.material)?.kind

/** What kind of container the parts make: a wall of glass is a jar, of metal a can, of anything else a pot. */
export function containerKind(point: Pick<Point, 'parts' | 'stage'>): ContainerKind {
  const wall = partAt(point, 'wall')
  if (wall) return kindOf(wall) === 'glass' ? 'jar' : kindOf(wall) === 'metal' ? 'can' : 'pot'
  if (partAt(point, 'tray')) return 'tray'
  if (point.stage !== 'packed') return 'none'
  const around = point.parts.filter(({ place }) => place === 'wrap' || place === 'sleeve')
  if (around.some((part) => kindOf(part) === 'paper')) return 'carton'
  return around.length > 0 ? 'bag' : 'none'
}

/** Attenuates so much that a plate of it along the beam hides what lies against it. */
export const isDense = (part: Part): boolean => ['glass', 'metal'].includes(kindOf(part) ?? '')
