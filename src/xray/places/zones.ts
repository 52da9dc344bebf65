import type { Contaminant, Point, Zone } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import type { XrayBuild } from '../beam/exposure.ts'
import type { CrossedPart, PackInBeam } from '../detector/channels.ts'
import { crossings } from './crossings.ts'
import { materialAttenuation } from './pack-in-beam.ts'

/** A place in a container where the beam meets more (or other) material than in the middle. */
export interface ZoneGeometry {
  readonly name: string
  /** Container material in the beam there, mm; null where it cannot be worked out. */
  readonly pathMm: number | null
  /** The pack as the beam meets it there; null where the beam is closed off by geometry. */
  readonly pack: PackInBeam | null
  readonly because: string
}

export type ContainerKind = 'jar' | 'can' | 'tray' | 'none'

/** Rim, heel and seam put 3 to 10 times the wall in the beam (common practice); the mild end is computed. */
export const THICKENING = 3
/** Where the curved wall is judged: this share of the radius. */
export const WALL_EDGE = 0.9

/** What kind of container the packaging parts make. */
export function containerKind(point: Point): ContainerKind {
  const wall = point.parts.find((part) => part.place === 'wall')
  if (wall && materials.get(wall.material)?.kind === 'glass') return 'jar'
  if (wall && materials.get(wall.material)?.kind === 'metal') return 'can'
  if (point.parts.some((part) => part.place === 'tray')) return 'tray'
  return 'none'
}

/**
 * Wall material in a side beam at a share x of the outer radius R of a round container, mm:
 * 2(√(R² − x²R²) − √((R − t)² − x²R²)); beyond the inner radius only wall is crossed.
 */
export function wallChordMm(
  outerRadiusMm: number,
  wallMm: number,
  x: number,
): { wallMm: number; foodMm: number } {
  const offset = x * outerRadiusMm
  const outer = Math.sqrt(Math.max(0, outerRadiusMm ** 2 - offset ** 2))
  const inner = Math.sqrt(Math.max(0, (outerRadiusMm - wallMm) ** 2 - offset ** 2))
  return { wallMm: 2 * (outer - inner), foodMm: 2 * inner }
}

function withWall(pack: PackInBeam, wall: CrossedPart, wallMm: number, foodMm: number): PackInBeam {
  return {
    ...pack,
    pathMm: foodMm,
    parts: [...pack.parts.filter((part) => part !== wall), { ...wall, mm: wallMm / wall.crossings }],
  }
}

function jarOrCan(point: Point, build: XrayBuild, pack: PackInBeam, kind: 'jar' | 'can'): ZoneGeometry[] {
  const part = point.parts.find((p) => p.place === 'wall')!
  const base = point.parts.find((p) => p.place === 'base')
  const closure = point.parts.find((p) => p.place === 'closure' || p.place === 'lid')
  const outerRadius = point.widthMm / 2 + part.mm
  const wallNames = kind === 'jar' ? ['heel', 'shoulder'] : ['seam', 'countersink']
  const crossedWall = pack.parts.find((p) => p.muPerMm === materialAttenuation(part.material))
  const body: ZoneGeometry = {
    name: 'body',
    pathMm: pack.parts.reduce((sum, p) => sum + p.mm * p.crossings, 0),
    pack,
    because: 'middle of the container, as computed',
  }
  if (build.beam === 'side' && crossedWall) {
    const zones = [body]
    if (point.outline === 'cylinder') {
      const edge = wallChordMm(outerRadius, part.mm, WALL_EDGE)
      zones.push({
        name: 'wall edge',
        pathMm: edge.wallMm,
        pack: withWall(pack, crossedWall, edge.wallMm, edge.foodMm),
        because: `at ${WALL_EDGE} of the radius the beam runs along the wall`,
      })
    }
    const thick = part.mm * crossings('side', 'wall') * THICKENING
    for (const name of wallNames) {
      zones.push({
        name,
        pathMm: thick,
        pack: withWall(pack, crossedWall, thick, pack.pathMm),
        because: `taken as ${THICKENING} times the wall (common practice: 3 to 10 times)`,
      })
    }
    if (base)
      zones.push(
        closedOff(
          'base',
          point.widthMm,
          'the beam runs along the base plate: what lies in it or in its hollow is hidden',
        ),
      )
    if (closure) zones.push(closedOff('closure', null, 'the beam meets the closure edge-on'))
    return zones
  }
  return [
    body,
    closedOff(
      'wall ring',
      point.heightMm,
      'the beam runs down inside the wall: a ring as wide as the wall is hidden',
    ),
    ...wallNames.map((name) => closedOff(name, null, 'the wall turns along the beam here')),
    ...(closure ? [closedOff('closure rim', null, 'the rim of the closure stands along the beam')] : []),
  ]
}

function closedOff(name: string, pathMm: number | null, because: string): ZoneGeometry {
  return { name, pathMm, pack: null, because }
}

function tray(point: Point, build: XrayBuild, pack: PackInBeam): ZoneGeometry[] {
  const part = point.parts.find((p) => p.place === 'tray')!
  const body: ZoneGeometry = {
    name: 'floor',
    pathMm: pack.parts.reduce((sum, p) => sum + p.mm * p.crossings, 0),
    pack,
    because: 'middle of the tray, as computed',
  }
  if (build.beam === 'side') return [body]
  const thick = part.mm * THICKENING
  const crossed: CrossedPart = {
    muPerMm: materialAttenuation(part.material),
    mm: thick,
    crossings: 1,
    unevennessMm: part.unevennessMm ?? 0,
  }
  const others = pack.parts.filter((p) => p.muPerMm !== crossed.muPerMm)
  return [
    body,
    {
      name: 'corners',
      pathMm: thick,
      pack: { ...pack, parts: [...others, crossed] },
      because: `folds taken as ${THICKENING} layers`,
    },
    closedOff('rim', part.mm * 2 + point.heightMm, 'the side wall and the rolled rim stand along the beam'),
  ]
}

/** The zones of a container at a point, the ordinary middle first; none for films and bare food. */
export function zonesOf(point: Point, build: XrayBuild, pack: PackInBeam): ZoneGeometry[] {
  const kind = containerKind(point)
  if (kind === 'jar' || kind === 'can') return jarOrCan(point, build, pack, kind)
  return kind === 'tray' ? tray(point, build, pack) : []
}

/** A zone counts as findable while its size stays within this share above the middle's (judgement). */
export const DEGRADED_ABOVE = 1.15

/** State of a zone from its expected size, the middle's and the size to find, all mm. */
export function zoneOf(
  geometry: ZoneGeometry,
  sizeMm: number | null,
  middleMm: number | null,
  contaminant: Contaminant,
): Zone {
  const { name, pathMm, because } = geometry
  const base = {
    name,
    share: null,
    pathMm: pathMm === null ? null : Math.round(pathMm * 10) / 10,
    sizes: { bestMm: null, expectedMm: sizeMm, cautiousMm: null },
    canLieThere: true,
    settlesThere: false,
    why: because,
  }
  if (sizeMm === null) return { ...base, state: 'blind' }
  const asked = contaminant.mustFindMm
  const asGood = middleMm !== null && sizeMm <= middleMm * DEGRADED_ABOVE
  const stillEnough = asked === null || sizeMm <= asked || middleMm === null || middleMm > asked
  return { ...base, state: asGood && stillEnough ? 'findable' : 'degraded' }
}
