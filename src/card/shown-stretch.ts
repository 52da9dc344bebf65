import type { Point } from '../contract/index.ts'

/** A flow has no ends: as much of it as a card needs is drawn, mm. */
const STRETCH_MM = 200

/** A pack as it is; of a belt's or pipe's flow a stretch. */
export function shownStretch(point: Point): Point {
  if (point.stage === 'packed' || point.product.grainMm === 0 || point.outline === 'cylinder') return point
  return {
    ...point,
    lengthMm: Math.min(point.lengthMm, STRETCH_MM),
    widthMm: Math.min(point.widthMm, STRETCH_MM),
  }
}
