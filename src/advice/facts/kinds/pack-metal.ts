import { insertKind } from '../../../brief/insert-kind.ts'
import type { Part, Point } from '../../../contract/index.ts'
import { metals } from '../../../reference/electrical.ts'
import { isFoil, isMetallisedFilm, type Materials } from './pack-kind.ts'

/** Where aluminium foil lies: around the food (wrap, sleeve, tray) it shields, as a lid it only disturbs. */
export const FOIL_PLACES = ['none', 'lid', 'around'] as const
export type FoilPlace = (typeof FOIL_PLACES)[number]

export function foilPlace(parts: readonly Part[], materials: Materials): FoilPlace {
  const places = parts.filter((part) => isFoil(part, materials)).map(({ place }) => place)
  if (places.length === 0) return 'none'
  return places.every((place) => place === 'lid') ? 'lid' : 'around'
}

const isMetal = (part: Part, materials: Materials) => materials.get(part.material)?.kind === 'metal'

/** A part that a magnet holds, such as tinplate. */
export const isMagneticPart = (part: Part): boolean =>
  metals.get(part.material)?.magnetism === 'ferromagnetic'

/** A cap, crown or lid of sheet metal; foil as a lid is foil. */
export const isMetalClosure = (part: Part, materials: Materials): boolean =>
  ['closure', 'lid'].includes(part.place) && isMetal(part, materials) && !isFoil(part, materials)

/** A closure of plastic, cork or card. */
export const isPlainClosure = (part: Part, materials: Materials): boolean =>
  part.place === 'closure' && !isMetal(part, materials) && !isMetallisedFilm(part, materials)

/** True where the pack brings metal into the opening of a coil: sheet, foil, film, closure or insert. */
export function bringsMetal(point: Pick<Point, 'parts' | 'inserts'>, materials: Materials): boolean {
  const inPart = point.parts.some((part) => isMetal(part, materials) || isMetallisedFilm(part, materials))
  return inPart || point.inserts.some((name) => ['iron', 'metal'].includes(insertKind(name)))
}

/** Metal parts and inserts by name, "aluminium foil as tray, clip". */
export function metalNames(point: Pick<Point, 'parts' | 'inserts'>, materials: Materials): string {
  const parts = point.parts
    .filter((part) => isMetal(part, materials))
    .map((part) => `${materials.get(part.material)?.label ?? part.material} as ${part.place}`)
  const inserts = point.inserts.filter((name) => ['iron', 'metal'].includes(insertKind(name)))
  return [...parts, ...inserts].join(', ')
}
