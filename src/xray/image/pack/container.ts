import type { Part, Point } from '../../../contract/index.ts'
import { containerKind } from '../../places/container.ts'
import { materialAttenuation } from '../../places/pack-in-beam.ts'
import { THICKENING } from '../../places/thickening.ts'
import { wallChordMm } from '../../places/wall-chord.ts'
import { columnMm, type Raster, rowMm } from '../food/raster.ts'
import { edgeDistanceMm, HEEL_MM, type View } from './view.ts'

/** Millimetres of one material along the beam in every cell of a grid. */
export interface MaterialMap {
  readonly muPerMm: Float64Array
  readonly mm: Float32Array
}

/** What a container adds to the beam beyond the layers that lie in every ray. */
export interface ContainerMaps {
  /** Wall of a round container from the side: too thick and too uneven across to be one figure. */
  readonly wall: MaterialMap | null
  /** Rims, bases, closures: outside the part that is read. */
  readonly trims: readonly MaterialMap[]
}

/** Air above the food in a closed round container, mm, and height of its closure (judgement, drawing only). */
export function headspaceMm(view: View): number {
  return Math.min(14, Math.max(6, 0.1 * view.vMm))
}
export const CLOSURE_HEIGHT_MM = 12
/** A can is closed by a seam at either end: so high, standing out so far, and so many layers of sheet; its ends lie sunk (from memory, mark M). */
const SEAM = { heightMm: 3.2, outMm: 1.3, layers: 5, sunkMm: 4.5 } as const
/** Beads around the middle of a can: pitch and how far they stand in and out, mm (drawn at its outline alone; mark M). */
const BEADS = { pitchMm: 7, deepMm: 0.7, fromShare: 0.22, toShare: 0.78 } as const

/** Room around the food in the picture, mm. */
export function frameMm(point: Point, view: View): { sides: number; top: number; bottom: number } {
  const part = (place: Part['place']) => point.parts.find((p) => p.place === place)?.mm ?? 0
  if (view.outline === 'stream') return { sides: 0, top: 4, bottom: 4 }
  const overhang = point.product.grainMm > 0 ? Math.min(point.product.grainMm, 20) / 2 : 0
  const sides = 5 + overhang + Math.max(part('wall'), part('tray'))
  if (view.outline !== 'standing cylinder') return { sides, top: sides, bottom: sides }
  const closed = part('closure') > 0 || part('lid') > 0
  if (containerKind(point) === 'can')
    return { sides: sides + SEAM.outMm, top: 5 + headspaceMm(view) + SEAM.sunkMm, bottom: 5 + SEAM.sunkMm }
  return { sides, top: 5 + (closed ? headspaceMm(view) + CLOSURE_HEIGHT_MM : 0), bottom: 4 + part('base') }
}

function mapOf(raster: Raster, mm: (u: number, v: number) => number): Float32Array {
  const map = new Float32Array(raster.columns * raster.rows)
  for (let row = 0, at = 0; row < raster.rows; row++) {
    const v = rowMm(raster, row)
    for (let column = 0; column < raster.columns; column++, at++) map[at] = mm(columnMm(raster, column), v)
  }
  return map
}

/** Walls, bases and closures of a point's container on a grid. */
export function containerMaps(point: Point, view: View, raster: Raster): ContainerMaps {
  const wall = point.parts.find((p) => p.place === 'wall')
  if (view.outline === 'standing cylinder') return standing(point, view, raster, wall)
  const rim = wall ?? point.parts.find((p) => p.place === 'tray')
  if (!rim || view.outline === 'stream') return { wall: null, trims: [] }
  const mm = mapOf(raster, (u, v) => {
    const outside = -edgeDistanceMm(view, u, v)
    return outside > 0 && outside <= Math.max(rim.mm, raster.pitchMm) ? view.depthMm : 0
  })
  return { wall: null, trims: [{ muPerMm: materialAttenuation(rim.material), mm }] }
}

/** A can from the side: a beaded body between two seams, each with an end that lies sunk in it. */
function can(point: Point, view: View, raster: Raster, wall: Part | undefined): ContainerMaps {
  const sheetOf = (places: readonly Part['place'][]) =>
    point.parts.find(({ place }) => places.includes(place))
  const inner = view.uMm / 2
  const thick = wall?.mm ?? 0
  const top = -headspaceMm(view) - SEAM.sunkMm
  const bottom = view.vMm + SEAM.sunkMm
  const middle = view.uMm / 2
  /** Outside of the body at a height: beads stand out at its outline. */
  const outerAt = (v: number) => {
    const share = v / view.vMm
    if (share < BEADS.fromShare || share > BEADS.toShare) return inner + thick
    return (
      inner +
      thick +
      (BEADS.deepMm / 2) * (1 - Math.cos((2 * Math.PI * (v - BEADS.fromShare * view.vMm)) / BEADS.pitchMm))
    )
  }
  const chord = (outer: number, mm: number, u: number) => {
    const offsetMm = Math.abs(u - middle)
    return offsetMm < outer && mm > 0 ? wallChordMm(outer, mm, offsetMm) : 0
  }
  const ends = [
    { part: sheetOf(['lid', 'closure']), seamFrom: top, plateAt: -headspaceMm(view) },
    { part: sheetOf(['base']), seamFrom: bottom - SEAM.heightMm, plateAt: view.vMm },
  ]
  const trims = ends.flatMap(({ part, seamFrom, plateAt }) => {
    if (!part) return []
    const plateMm = Math.max(part.mm, raster.pitchMm)
    const outer = inner + thick + SEAM.outMm
    const mm = mapOf(raster, (u, v) => {
      const seam = v >= seamFrom && v < seamFrom + SEAM.heightMm ? chord(outer, SEAM.layers * part.mm, u) : 0
      const plate = Math.abs(v - plateAt) < plateMm / 2 ? chord(inner, inner, u) * (part.mm / plateMm) : 0
      return seam + plate
    })
    return [{ muPerMm: materialAttenuation(part.material), mm }]
  })
  if (!wall) return { wall: null, trims }
  const mm = mapOf(raster, (u, v) => (v < top || v > bottom ? 0 : chord(outerAt(v), thick, u)))
  return { wall: { muPerMm: materialAttenuation(wall.material), mm }, trims }
}

/** A jar or tub from the side: body, heel, shoulder, base and closure. */
function standing(point: Point, view: View, raster: Raster, wall: Part | undefined): ContainerMaps {
  const jar = containerKind(point) === 'jar'
  if (containerKind(point) === 'can') return can(point, view, raster, wall)
  const base = point.parts.find((p) => p.place === 'base')
  const closure = point.parts.find((p) => p.place === 'closure' || p.place === 'lid')
  const head = closure ? headspaceMm(view) : 0
  const inner = view.uMm / 2
  const thick = wall?.mm ?? 0
  const innerAt = (v: number) => (jar && v < 0 ? inner * (1 - 0.2 * Math.min(1, v / -head) ** 2) : inner)
  const foot = base?.mm ?? 0
  /** Wall at a height: thicker towards the heel of a jar and in the seams of a can. */
  const thickAt = (v: number) => {
    if (v < -head || v > view.vMm) return 0
    if (jar) {
      const heel = Math.min(1, Math.max(0, (v - view.vMm + HEEL_MM) / HEEL_MM))
      const shoulder = v < 0 ? Math.min(1, v / -head) : 0
      return thick * (1 + (THICKENING - 1) * Math.max(heel * heel, 0.5 * shoulder))
    }
    return v < -head + 3 || v > view.vMm - 3 ? thick * THICKENING : thick
  }
  const chord = (outer: number, mm: number, u: number) => {
    const offsetMm = Math.abs(u - view.uMm / 2)
    return offsetMm < outer && mm > 0 ? wallChordMm(outer, mm, offsetMm) : 0
  }
  const trims: MaterialMap[] = []
  if (base) {
    const mm = mapOf(raster, (u, v) =>
      v > view.vMm && v <= view.vMm + foot ? chord(inner + thick, inner + thick, u) : 0,
    )
    trims.push({ muPerMm: materialAttenuation(base.material), mm })
  }
  if (closure) {
    const outer = innerAt(-head) + thick + 1
    const mm = mapOf(raster, (u, v) => {
      const above = -head - v
      if (above < -CLOSURE_HEIGHT_MM / 2 || above > CLOSURE_HEIGHT_MM / 2) return 0
      const plate = above > CLOSURE_HEIGHT_MM / 2 - Math.max(closure.mm, raster.pitchMm)
      return chord(outer, plate ? outer : closure.mm, u)
    })
    trims.push({ muPerMm: materialAttenuation(closure.material), mm })
  }
  if (!wall) return { wall: null, trims }
  const mm = mapOf(raster, (u, v) => chord(innerAt(v) + thick, thickAt(v), u))
  return { wall: { muPerMm: materialAttenuation(wall.material), mm }, trims }
}
