import type { Point } from '../../contract/index.ts'

/** How deep the places at ends and edges are taken, mm (judgement; common practice masks about as much). */
export const EDGE_MM = 5

/** Shares of a container's inside: the bottom and the top layer, each parted into its middle and its ring. */
export interface EndShares {
  readonly middle: number
  readonly ring: number
  /** Of the inside between the two layers. */
  readonly between: number
}

/** How an inside parts into ends and what lies between them. */
export function endShares(
  point: Pick<Point, 'widthMm' | 'lengthMm' | 'outline'>,
  heightMm: number,
): EndShares {
  const left = (mm: number) => Math.max(0, 1 - (2 * EDGE_MM) / mm)
  const middleShare =
    point.outline === 'cylinder' ? left(point.widthMm) ** 2 : left(point.widthMm) * left(point.lengthMm)
  const layer = Math.min(0.5, EDGE_MM / heightMm)
  return { middle: layer * middleShare, ring: layer * (1 - middleShare), between: 1 - 2 * layer }
}
