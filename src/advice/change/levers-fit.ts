import type { Machine, Point } from '../../contract/index.ts'
import { down, LEVER_LIMITS, type Lever } from './lever.ts'

/** The packs turned on the belt, long side across or along: another path for a side beam, another width for a fan. */
export function turned(point: Point, path: string, machine: Machine): Lever | null {
  const round = point.outline === 'cylinder' || point.widthMm === point.lengthMm
  if (point.stage !== 'packed' || round) return null
  const sideBeam = machine.family === 'xray' && machine.beam === 'side'
  const narrower = point.lengthMm < point.widthMm
  if (!narrower && !sideBeam) return null
  return {
    id: 'turned',
    dosed: false,
    at: () => [
      { path: `${path}.widthMm`, from: point.widthMm, to: point.lengthMm },
      { path: `${path}.lengthMm`, from: point.lengthMm, to: point.widthMm },
    ],
  }
}

/** The packs in one lane: half and less of the width, where the belt leaves room for all of them in a row. */
export function oneLane(point: Point, path: string): Lever | null {
  if (point.stage !== 'packed' || point.lanes < 2) return null
  return {
    id: 'one-lane',
    dosed: false,
    at: () => [{ path: `${path}.lanes`, from: point.lanes, to: 1 }],
  }
}

/** A wider belt that carries the same flow in a shallower bed. */
export function widerBelt(point: Point, path: string): Lever | null {
  if (point.stage !== 'loose') return null
  const most = Math.min(
    LEVER_LIMITS.widestBeltMm,
    point.widthMm / LEVER_LIMITS.shallowestShare,
    (point.widthMm * point.heightMm) / Math.max(point.product.grainMm, 1),
  )
  if (most < point.widthMm * 1.05) return null
  return {
    id: 'wider-belt',
    dosed: true,
    at: (share) => {
      const widthMm = Math.max(point.widthMm, down(point.widthMm + share * (most - point.widthMm), 10))
      const heightMm = Number(((point.heightMm * point.widthMm) / widthMm).toPrecision(3))
      return [
        { path: `${path}.widthMm`, from: point.widthMm, to: widthMm },
        { path: `${path}.heightMm`, from: point.heightMm, to: Math.max(heightMm, point.product.grainMm) },
      ]
    },
  }
}
