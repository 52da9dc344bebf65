import type { Part, Point } from '../../../contract/index.ts'
import type { Material } from '../../../reference/index.ts'

/** Kinds of pack the rules know; "none" where the food is not packed. */
export const PACK_KINDS = ['none', 'bag', 'tray', 'carton', 'jar', 'can', 'tub', 'other'] as const
export type PackKind = (typeof PACK_KINDS)[number]

export type Materials = ReadonlyMap<string, Material>

/** Aluminium share from which a sheet counts as aluminium foil and not as a coated film. */
const ALUMINIUM_SHARE = 0.9

const kindOf = (part: Part, materials: Materials) => materials.get(part.material)?.kind

/** Foil: an aluminium sheet as wrap, lid, sleeve or tray. A can's wall or a twist-off closure is not foil. */
export function isFoil(part: Part, materials: Materials): boolean {
  const aluminium = materials.get(part.material)?.massFractions.Al ?? 0
  return aluminium >= ALUMINIUM_SHARE && ['wrap', 'lid', 'sleeve', 'tray'].includes(part.place)
}

/** Metallised film: a plastic film with a metal layer tens of nanometres thick. It is not foil. */
export function isMetallisedFilm(part: Part, materials: Materials): boolean {
  const material = materials.get(part.material)
  const named = /metalli[sz]ed/i.test(`${part.material} ${material?.label ?? ''}`)
  return named || (material?.kind === 'polymer' && part.sheetOhmPerSquare !== undefined)
}

/** Which kind of pack the parts of a point make. */
export function packKind(point: Point, materials: Materials): PackKind {
  if (point.stage !== 'packed') return 'none'
  const at = (...places: Part['place'][]) => point.parts.filter((part) => places.includes(part.place))
  const body = at('wall', 'base')
  if (body.some((part) => kindOf(part, materials) === 'glass')) return 'jar'
  if (body.some((part) => kindOf(part, materials) === 'metal')) return 'can'
  if (at('tray').length > 0) return 'tray'
  if (at('wall').length > 0) return 'tub'
  if (at('wrap', 'sleeve').some((part) => kindOf(part, materials) === 'paper')) return 'carton'
  if (at('wrap').length > 0) return 'bag'
  return 'other'
}

/** Containers that keep their shape on the belt. */
export const isRigid = (kind: PackKind): boolean => ['jar', 'can', 'tub'].includes(kind)
