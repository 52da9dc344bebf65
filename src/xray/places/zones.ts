import type { Contaminant, Point, Zone } from '../../contract/index.ts'
import type { XrayBuild } from '../beam/exposure.ts'
import type { PackInBeam } from '../detector/channels.ts'
import { containerKind } from './container.ts'
import { bagPlaces, cartonPlaces, trayPlaces } from './lying-packs.ts'
import { type PackPlace, slanted } from './place.ts'
import { canLieAt, type Settling, settlesIn } from './settling.ts'
import { standingFromAbove } from './standing-from-above.ts'
import { standingFromTheSide } from './standing-from-the-side.ts'

/**
 * The places of a pack as one beam meets them, the ordinary middle first; none for bare food. `tiltDeg`: angle of a
 * second beam to the first.
 */
export function placesOf(
  point: Point,
  build: Pick<XrayBuild, 'beam'>,
  pack: PackInBeam,
  tiltDeg = 0,
): PackPlace[] {
  const kind = containerKind(point)
  const lying = slanted(pack, 1 / Math.cos((tiltDeg * Math.PI) / 180))
  switch (kind) {
    case 'jar':
    case 'can':
    case 'pot':
      return build.beam === 'side'
        ? standingFromTheSide(point, pack, kind, tiltDeg)
        : standingFromAbove(point, pack, kind, tiltDeg)
    case 'tray':
      return trayPlaces(point, lying, build.beam)
    case 'carton':
      return cartonPlaces(point, lying)
    case 'bag':
      return bagPlaces(point, lying)
    case 'none':
      return []
  }
}

/** A place counts as findable while its size stays within this share above the middle's (judgement). */
export const DEGRADED_ABOVE = 1.15

/** Small enough for what is asked, as far as the middle is. */
const stillEnough = (sizeMm: number, middleMm: number | null, askedMm: number | null) =>
  askedMm === null || sizeMm <= askedMm || middleMm === null || middleMm > askedMm

/** State of a place from its expected size, the middle's and the size to find, all mm. */
export function stateOf(
  sizeMm: number | null,
  middleMm: number | null,
  askedMm: number | null,
): Zone['state'] {
  if (sizeMm === null) return 'blind'
  const asGood = middleMm !== null && sizeMm <= middleMm * DEGRADED_ABOVE
  return asGood && stillEnough(sizeMm, middleMm, askedMm) ? 'findable' : 'degraded'
}

const WHERE = { sinks: 'it sinks there', floats: 'it floats there', stays: '' } as const
const WHERE_NOT = { sinks: 'it sinks to the bottom', floats: 'it floats to the top', stays: '' } as const

/** A place with what was found of one contaminant there. */
export interface JudgedPlace {
  readonly place: PackPlace
  readonly sizes: Zone['sizes']
}

/** The places of one contaminant as zones, the middle first. */
export function zonesOf(
  judged: readonly JudgedPlace[],
  settling: Settling,
  contaminant: Contaminant,
): Zone[] {
  const canLie = canLieAt(
    judged.map(({ place }) => place),
    settling,
  )
  const middleMm = judged[0]?.sizes.expectedMm ?? null
  return judged.map(({ place, sizes }): Zone => {
    const canLieThere = canLie(place)
    const settlesThere = settlesIn(place, settling)
    const where = settlesThere ? WHERE[settling] : canLieThere ? '' : WHERE_NOT[settling]
    return {
      name: place.name,
      state: stateOf(sizes.expectedMm, middleMm, contaminant.mustFindMm),
      share: place.share === null ? null : Number(place.share.toPrecision(3)),
      pathMm: place.pathMm === null ? null : Math.round(place.pathMm * 10) / 10,
      sizes,
      canLieThere,
      settlesThere,
      why: where ? `${place.why}; ${where}` : place.why,
    }
  })
}
