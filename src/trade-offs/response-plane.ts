import { productResponse } from '../coil/food/product-block.ts'
import { targetPolarizability } from '../coil/piece/target.ts'
import type { MetalSetup } from './metal-setup.ts'

/** A response in mm³: reactive (in step with the field) and resistive (lagging it by a quarter). */
export interface Response {
  readonly reactiveMm3: number
  readonly resistiveMm3: number
}

/** Piece and product at one frequency; product null where the food adds no signal. */
export interface PlanePoint {
  readonly frequencyKHz: number
  readonly target: Response
  readonly product: Response | null
}

const CUBIC_MM = 1e9

const responseOf = ({ re, im }: { re: number; im: number }): Response => ({
  reactiveMm3: re * CUBIC_MM,
  resistiveMm3: -im * CUBIC_MM,
})

/** Angle of a response in its plane, degrees: 0 purely resistive, 90 purely reactive (magnetic), −90 flux pushed out. */
export const angleDeg = ({ reactiveMm3, resistiveMm3 }: Response): number =>
  (Math.atan2(reactiveMm3, resistiveMm3) * 180) / Math.PI

/**
 * What a piece of a size (mm; a wire along the travel, a flake lying flat) and the product answer at given
 * frequencies, as polarizabilities in mm³. Resistive is −Im α (losses, never negative), reactive is Re α.
 */
export function responsePlane(
  { piece, scene }: Pick<MetalSetup, 'piece' | 'scene'>,
  sizeMm: number,
  frequenciesKHz: readonly number[],
): PlanePoint[] {
  return frequenciesKHz.map((frequencyKHz) => {
    const hz = frequencyKHz * 1000
    return {
      frequencyKHz,
      target: responseOf(targetPolarizability(piece.shape, sizeMm, 'along', piece.metal, hz)),
      product: scene.block && responseOf(productResponse(scene.block, scene.opening.heightM, hz)),
    }
  })
}
