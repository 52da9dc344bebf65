import { encodePng } from '../charts/png.ts'
import type { Point } from '../contract/index.ts'
import { greyPicture } from '../xray/image/draw/grey-picture.ts'
import { drawFood, foodPathMm } from '../xray/image/food/food-path.ts'
import { grainBody } from '../xray/image/food/grain-body.ts'
import { plateSphereMm } from '../xray/image/food/grain-lie.ts'
import { grainShape } from '../xray/image/food/grain-shapes.ts'
import { rasterOver } from '../xray/image/food/raster.ts'

/** A bed of fewer layers shows its pieces itself (judgement, looks). */
const DEEP_LAYERS = 2.5
/** Room over the pieces of one layer, and the share of it they fill, so that they lie apart (looks). */
const ROOM = 1.2
const FILLED = 0.3
/** So many times the longest piece are shown, mm at most. */
const LENGTHS = 3.2
const MOST_MM = 160
const WIDE = 1.6
/** Finer pieces are a powder to the eye, mm. */
const LEAST_GRAIN_MM = 2
const PIXEL_MM = 0.4
/** Where a piece is thickest it is dark, not black. */
const BLACK_SHARE = 1.5

/** A bed in which the pieces of food hide one another. */
export interface DeepBed {
  readonly longMm: number
  readonly thickMm: number
  /** How many layers lie on one another. */
  readonly layers: number
}

/** How deep a bed is in its own pieces; null where it has none, or shows them itself. */
export function deepBed({ product, filledMm }: Point): DeepBed | null {
  if (product.grainMm < LEAST_GRAIN_MM) return null
  const shape = grainShape(product.food, product.structure)
  const sphereMm = product.structure === 'plates' ? plateSphereMm(shape, product.grainMm) : product.grainMm
  const { half } = grainBody(shape, sphereMm / 2)
  const [longMm, thickMm] = [2 * Math.max(...half), 2 * Math.min(...half)]
  const layers = filledMm / thickMm
  return layers < DEEP_LAYERS ? null : { longMm, thickMm, layers }
}

/** The food of a deep bed spread out in one layer as PNG, to see what lies in it: drawn, not taken by a machine. */
export function oneLayer({ product }: Point, { longMm, thickMm }: DeepBed, seed: number): Uint8Array {
  const vMm = Math.min(MOST_MM, LENGTHS * longMm)
  const uMm = WIDE * vMm
  const view = {
    beam: 'down',
    outline: 'stream',
    uMm,
    vMm,
    depthMm: ROOM * thickMm,
    edgeMm: 0,
    cornerMm: 0,
  } as const
  const raster = rasterOver(0, 0, uMm, vMm, Math.min(PIXEL_MM, thickMm / 12))
  const food = drawFood(view, { ...product, packing: FILLED, unevennessMm: 0 }, raster, seed)
  const grey = greyPicture(raster, foodPathMm(food, raster), { white: 0, black: BLACK_SHARE * thickMm })
  return encodePng({ ...grey, channels: 1, text: { Title: `drawn, seed ${seed}`, Software: 'gritwise' } })
}
