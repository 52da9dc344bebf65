import type { Part, Point } from '../../contract/index.ts'
import type { CrossedPart, PackInBeam } from '../detector/channels.ts'
import { type ContainerKind, isDense, partAt } from './container.ts'
import { crossed, crossedAslant } from './pack-in-beam.ts'
import { hiddenPlace, type PackPlace, seenPlace, withoutFood } from './place.ts'
import { EDGE_MM, endShares } from './shares.ts'
import { THICKENING, THICKENING_WORDS } from './thickening.ts'
import { grazingSlant, grazingWallMm, wallEdgeShare } from './wall-chord.ts'

/** A standing container in a beam from the side, level or looking down at an angle. */
interface Standing {
  readonly point: Point
  readonly pack: PackInBeam
  readonly wall: Part
  /** Further layers around it, such as a sleeve: crossed like the wall, nowhere thicker. */
  readonly around: readonly CrossedPart[]
  /** Angle of the beam to the level, radians. */
  readonly tilt: number
  /** Food across the whole inside along the beam, mm. */
  readonly foodMm: number
}

const standingIn = (point: Point, pack: PackInBeam, tiltDeg: number): Standing => {
  const tilt = (tiltDeg * Math.PI) / 180
  const wall = partAt(point, 'wall')!
  const around = point.parts
    .filter((part) => part !== wall && ['wall', 'wrap', 'sleeve'].includes(part.place))
    .map((part) => crossed(part, 2, 1 / Math.cos(tilt)))
  return { point, pack, wall, around, tilt, foodMm: pack.pathMm / Math.cos(tilt) }
}

/** The wall crossed once, so many times as thick as it is. */
const wallOnce = ({ wall, tilt }: Standing, times = 1): CrossedPart => {
  const once = crossed(wall, 1, 1 / Math.cos(tilt))
  return { ...once, mm: once.mm * times }
}

const through = (s: Standing, parts: readonly CrossedPart[]): PackInBeam => ({
  ...s.pack,
  pathMm: s.foodMm,
  parts: [...parts, ...s.around],
})

function wallEdge(s: Standing, between: number): PackPlace {
  const { point, wall, tilt } = s
  if (point.outline === 'cylinder') {
    const radiusMm = point.widthMm / 2
    const slant = grazingSlant(radiusMm, wall.mm) / Math.cos(tilt)
    const edge: CrossedPart = {
      ...crossed(wall, 2, slant),
      mm: grazingWallMm(radiusMm, wall.mm) / 2 / Math.cos(tilt),
    }
    const share = between * wallEdgeShare(radiusMm, wall.mm)
    const why = 'the ray that grazes the inside of the wall crosses the most of it and no food'
    return seenPlace('wall edge', 'beside', share, withoutFood(s.pack, [edge, ...s.around]), why)
  }
  const share = between * Math.min(1, (2 * EDGE_MM) / point.lengthMm)
  if (isDense(wall))
    return hiddenPlace('wall edge', 'beside', share, point.widthMm, 'the beam runs along the flat wall')
  const along = { ...crossed(wall, 1), mm: s.foodMm }
  return seenPlace(
    'wall edge',
    'beside',
    share,
    withoutFood(s.pack, [along, ...s.around]),
    'the beam runs along the flat wall, which lets it through',
  )
}

/** A plate across the container, at its foot or its top: along a level beam, crossed once by a tilted one. */
function plate(s: Standing, name: string, part: Part, level: 'bottom' | 'top', share: number): PackPlace {
  if (s.tilt > 0) {
    const parts = [wallOnce(s), crossedAslant(part, s.tilt)]
    const why = `the tilted beam crosses one wall and the ${name} at a slant`
    return seenPlace(name, level, share, through(s, parts), why)
  }
  if (isDense(part) || isDense(s.wall)) {
    const why = `a level beam runs along the ${name} and its rim: what lies in its hollow or against it is hidden`
    return hiddenPlace(name, level, share, s.point.widthMm, why)
  }
  const along = { ...crossed(part, 1), mm: s.foodMm }
  const parts = [along, wallOnce(s), wallOnce(s), ...s.around]
  const why = `a level beam runs along the ${name}, which lets it through`
  return seenPlace(name, level, share, withoutFood(s.pack, parts), why)
}

/** Where the wall turns into foot or neck: thicker on both sides of a level beam, on one of a tilted one. */
function turn(s: Standing, name: string, level: 'bottom' | 'top', share: number): PackPlace {
  const near = wallOnce(s, s.tilt > 0 ? 1 : THICKENING)
  return seenPlace(name, level, share, through(s, [near, wallOnce(s, THICKENING)]), THICKENING_WORDS)
}

/**
 * Places of a standing jar, can or pot in a beam from the side, `tiltDeg` below the level. Tilted, the beam crosses
 * food ÷ cos, walls ÷ cos, and base and closure ÷ sin of the angle.
 */
export function standingFromTheSide(
  point: Point,
  pack: PackInBeam,
  kind: ContainerKind,
  tiltDeg: number,
): PackPlace[] {
  const s = standingIn(point, pack, tiltDeg)
  const { middle, ring, between } = endShares(point, point.heightMm)
  const base = partAt(point, 'base')
  const closure = partAt(point, 'closure', 'lid')
  const edge = wallEdge(s, between)
  const why = s.tilt > 0 ? 'middle of the container, at a slant' : 'middle of the container'
  return [
    seenPlace('body', 'middle', between - (edge.share ?? 0), through(s, [wallOnce(s), wallOnce(s)]), why),
    edge,
    turn(s, kind === 'can' ? 'seam' : 'heel', 'bottom', ring),
    ...(base ? [plate(s, 'base', base, 'bottom', middle)] : []),
    ...(kind === 'jar' ? [turn(s, 'shoulder', 'top', ring)] : []),
    ...(closure ? [plate(s, 'closure', closure, 'top', kind === 'jar' ? middle : middle + ring)] : []),
  ]
}
