import type { Point } from '../../../contract/index.ts'
import { filletHalfWidth, isFillet } from '../food/own-shape.ts'

/**
 * A pack as the picture shows it. u runs along travel; v runs across the belt for a beam from above and
 * from the top downwards for a beam from the side. The food fills 0…uMm and 0…vMm. Lengths in mm.
 */
export interface View {
  readonly beam: 'down' | 'side'
  readonly outline: 'box' | 'disc' | 'standing cylinder' | 'stream' | 'fillet'
  readonly uMm: number
  readonly vMm: number
  /** Food in the beam where it is thickest. */
  readonly depthMm: number
  /** Width of the rim over which the depth falls to nothing. */
  readonly edgeMm: number
  /** Radius of the corners in the picture. */
  readonly cornerMm: number
}

/** Blind margin inside the rim where nothing is read, mm (judgement: a filter needs a few mm of food around). */
export const READ_MARGIN_MM = 5
/** A round container from the side is read up to this share of its radius; beyond, the beam runs along the wall. */
export const READ_RADIUS_SHARE = 0.85
/** Height above the base of a container from the side that its heel hides, mm (judgement). */
export const HEEL_MM = 8

/** Rim of food that stands against a container's wall, mm. */
const HELD_EDGE_MM = 0.5

/** How far the rim reaches in: a bag or heap tapers, a cut block hardly does, a fillet is rounded (judgement). */
function rim(point: Point, shortest: number, depthMm: number): { edgeMm: number; cornerMm: number } {
  const { structure, unevennessMm } = point.product
  switch (structure) {
    case 'granular':
    case 'powder':
    case 'plates':
      return { edgeMm: Math.min(0.5 * depthMm, 0.11 * shortest), cornerMm: 0.14 * shortest }
    case 'liquid':
    case 'pieces-in-liquid':
      return { edgeMm: Math.min(0.3 * depthMm, 4), cornerMm: 0.1 * shortest }
    case 'solid':
    case 'inclusions':
      return unevennessMm < 0.7
        ? { edgeMm: Math.min(0.3 * depthMm, 2), cornerMm: 2 }
        : { edgeMm: Math.min(0.5 * depthMm, 8), cornerMm: 0.3 * shortest }
    default:
      return structure satisfies never
  }
}

/** The view of a point's pack (or length of flow) under a beam. */
export function viewOf(point: Point, beam: 'down' | 'side'): View {
  const uMm = point.lengthMm
  const vMm = beam === 'down' ? point.widthMm : point.filledMm
  const depthMm = beam === 'down' ? point.filledMm : point.widthMm
  const round = point.outline === 'cylinder'
  const granular = point.product.grainMm > 0
  const outline = round
    ? beam === 'down'
      ? 'disc'
      : 'standing cylinder'
    : point.stage === 'pumped' || (point.stage !== 'packed' && granular)
      ? 'stream'
      : 'box'
  if (outline === 'standing cylinder') return { beam, outline, uMm, vMm, depthMm, edgeMm: 0, cornerMm: 0 }
  const own = rim(point, Math.min(uMm, vMm), depthMm)
  if (outline === 'box' && beam === 'down' && point.stage !== 'packed' && isFillet(point.product.food))
    return { beam, outline: 'fillet', uMm, vMm, depthMm, ...own }
  const held = point.parts.some((part) => part.place === 'wall')
  return { beam, outline, uMm, vMm, depthMm, ...own, ...(held ? { edgeMm: HELD_EDGE_MM } : {}) }
}

/** Distance from a place to the nearest edge of the food in the picture, mm; negative outside. */
export function edgeDistanceMm(view: View, u: number, v: number): number {
  const { uMm, vMm } = view
  if (view.outline === 'disc') return uMm / 2 - Math.hypot(u - uMm / 2, ((v - vMm / 2) * uMm) / vMm)
  if (view.outline === 'stream') return Math.min(v, vMm - v)
  if (view.outline === 'fillet') return filletEdgeMm(view, u, v)
  if (view.outline === 'standing cylinder') return Math.min(u, uMm - u, v, vMm - v)
  const corner = Math.min(view.cornerMm, uMm / 2, vMm / 2)
  const du = Math.abs(u - uMm / 2) - (uMm / 2 - corner)
  const dv = Math.abs(v - vMm / 2) - (vMm / 2 - corner)
  if (du <= 0 || dv <= 0) return corner - Math.max(du, dv)
  const outside = Math.sqrt(du * du + dv * dv)
  return corner - outside
}

/** Step by which the slope of a fillet's outline is read. */
const OUTLINE_STEP = 1e-3

/** Distance to a fillet's outline, mm, to first order in its slope. */
function filletEdgeMm(view: View, u: number, v: number): number {
  const { uMm, vMm } = view
  const x = (2 * u) / uMm - 1
  if (Math.abs(x) >= 1) return -(Math.abs(x) - 1) * (uMm / 2) - 1e-6
  const { halfMm, lean } = outlineAt(view, x)
  return (halfMm - Math.abs(v - vMm / 2)) / lean
}

interface OutlinePlace {
  readonly halfMm: number
  /** Length of the normal to its slope. */
  readonly lean: number
}

/** Every row of a picture asks for the same places again. */
const outlines = new WeakMap<View, Map<number, OutlinePlace>>()

/** A fillet's outline at x from its blunt (−1) to its pointed end (1). */
function outlineAt(view: View, x: number): OutlinePlace {
  const known = outlines.get(view) ?? new Map<number, OutlinePlace>()
  outlines.set(view, known)
  const before = known.get(x)
  if (before) return before
  const at = (place: number) => (filletHalfWidth(place) * view.vMm) / 2
  const slope = (at(x + OUTLINE_STEP) - at(x - OUTLINE_STEP)) / (OUTLINE_STEP * view.uMm)
  const place = { halfMm: at(x), lean: Math.sqrt(1 + slope * slope) }
  known.set(x, place)
  return place
}

/** A rectangle in the picture, mm. */
export interface Rectangle {
  readonly fromU: number
  readonly toU: number
  readonly fromV: number
  readonly toV: number
}

/** A rectangle in which every place lies at least so far inside the food's edge; empty where there is none. */
export function innerRectangle(view: View, insideMm: number): Rectangle {
  const { uMm, vMm, outline } = view
  if (outline === 'stream')
    return { fromU: insideMm, toU: uMm - insideMm, fromV: insideMm, toV: vMm - insideMm }
  if (outline !== 'box') return { fromU: 1, toU: 0, fromV: 1, toV: 0 }
  const corner = 0.3 * Math.min(view.cornerMm, uMm / 2, vMm / 2)
  const inside = insideMm + corner
  return { fromU: inside, toU: uMm - inside, fromV: inside, toV: vMm - inside }
}

export function holds(r: Rectangle, u: number, v: number): boolean {
  return u >= r.fromU && u <= r.toU && v >= r.fromV && v <= r.toV
}

/** Food along the beam at a place, mm, surfaces even: full inside, a rounded rim, nothing outside. */
export function depthAtMm(view: View, u: number, v: number): number {
  const distance = edgeDistanceMm(view, u, v)
  if (distance <= 0) return 0
  if (view.outline === 'standing cylinder') {
    const x = (u - view.uMm / 2) / (view.uMm / 2)
    return view.depthMm * Math.sqrt(Math.max(0, 1 - x * x))
  }
  if (distance >= view.edgeMm) return view.depthMm
  const inward = 1 - distance / view.edgeMm
  return view.depthMm * Math.sqrt(1 - inward * inward)
}

/**
 * How far inside the edge of what is read a place lies, mm (negative outside): within the rim and the blind
 * margin, off the wall, the heel and the fill line.
 */
export function readDepthMm(view: View, u: number, v: number): number {
  if (view.outline === 'standing cylinder') {
    const x = Math.abs(u - view.uMm / 2)
    const side = (READ_RADIUS_SHARE * view.uMm) / 2 - x
    return Math.min(side, v - READ_MARGIN_MM, view.vMm - HEEL_MM - v)
  }
  const ends =
    view.outline === 'stream' ? Math.min(u, view.uMm - u) - READ_MARGIN_MM : Number.POSITIVE_INFINITY
  return Math.min(ends, edgeDistanceMm(view, u, v) - view.edgeMm - READ_MARGIN_MM)
}

/** Whether a place is read. */
export function isRead(view: View, u: number, v: number): boolean {
  return readDepthMm(view, u, v) >= 0
}
