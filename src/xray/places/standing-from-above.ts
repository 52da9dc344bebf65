import type { Part, Point } from '../../contract/index.ts'
import type { CrossedPart, PackInBeam } from '../detector/channels.ts'
import { type ContainerKind, isDense, partAt } from './container.ts'
import { crossed, crossedAslant } from './pack-in-beam.ts'
import { hiddenPlace, type PackPlace, seenPlace, slanted, withoutFood } from './place.ts'
import { endShares } from './shares.ts'
import { THICKENING, THICKENING_WORDS } from './thickening.ts'
import { wallEdgeShare } from './wall-chord.ts'

/** What a part is thicker by where it turns: its unevenness is counted with the plain layer. */
const more = (part: Part, times: number, slant: number): CrossedPart => ({
  ...crossed(part, 1, slant),
  mm: part.mm * times * slant,
  unevennessMm: 0,
})

/** Places of a standing jar, can or pot in a beam from above, `tiltDeg` off the upright. */
export function standingFromAbove(
  point: Point,
  pack: PackInBeam,
  kind: ContainerKind,
  tiltDeg: number,
): PackPlace[] {
  const tilt = (tiltDeg * Math.PI) / 180
  const slant = 1 / Math.cos(tilt)
  const straight = slanted(pack, slant)
  const wall = partAt(point, 'wall')!
  const base = partAt(point, 'base')
  const closure = partAt(point, 'closure', 'lid')
  const { middle, ring, between } = endShares(point, point.heightMm)
  const shoulder = kind === 'jar' ? [more(wall, THICKENING, slant)] : []
  const lid = kind === 'can' && closure ? [more(closure, THICKENING - 1, slant)] : []
  const foot = more(base ?? wall, THICKENING - (base ? 1 : 0), slant)
  const turned = { ...straight, parts: [...straight.parts, foot, ...shoulder, ...lid] }
  const edgeShare = between * (point.outline === 'cylinder' ? wallEdgeShare(point.widthMm / 2, wall.mm) : 0)
  return [
    seenPlace('body', 'middle', between - edgeShare, straight, 'middle of the container'),
    seenPlace('base', 'bottom', middle, straight, 'the beam crosses the base once, as in the middle'),
    seenPlace(kind === 'can' ? 'seam' : 'heel', 'bottom', ring, turned, THICKENING_WORDS),
    wallEdge(point, straight, wall, tilt, edgeShare),
    ...(closure
      ? [
          seenPlace(
            'closure',
            'top',
            middle + ring,
            straight,
            'the beam crosses the closure, as in the middle',
          ),
        ]
      : []),
  ]
}

/** Beside the wall: a dense one stands along an upright beam and hides a strip; a tilted beam crosses it once. */
function wallEdge(point: Point, pack: PackInBeam, wall: Part, tilt: number, share: number): PackPlace {
  if (tilt > 0) {
    const parts = [...pack.parts, crossedAslant(wall, tilt)]
    return seenPlace(
      'wall edge',
      'beside',
      share,
      { ...pack, parts },
      'the tilted beam crosses the wall at a slant',
    )
  }
  if (isDense(wall)) {
    const why = 'the beam runs down along the wall and leaves its shadow beside it'
    return hiddenPlace('wall edge', 'beside', share, point.heightMm, why)
  }
  const along = { ...crossed(wall, 1), mm: pack.pathMm }
  const why = 'the beam runs down along the wall, which lets it through'
  return seenPlace('wall edge', 'beside', share, withoutFood(pack, [...pack.parts, along]), why)
}
