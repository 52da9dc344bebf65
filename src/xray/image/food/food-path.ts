import type { Product } from '../../../contract/index.ts'
import { grainNoisePower, unevennessNoisePower } from '../../noise/texture.ts'
import { depthAtMm, innerRectangle, isRead, type View } from '../pack/view.ts'
import { addGrain, type Grain } from './grain-chords.ts'
import { plateSphereMm } from './grain-lie.ts'
import { grainShape } from './grain-shapes.ts'
import { type Bed, CARD_BED, cutFrom, tileOf } from './grain-tile.ts'
import { fibreStretch, mouldOf } from './own-shape.ts'
import { randomStream } from './random.ts'
import { addField, type RandomField, randomFields } from './random-field.ts'
import { columnMm, type Raster, rowMm } from './raster.ts'

/** Beyond so many grains the bed is drawn as a random surface with the same noise power (they average out). */
export const MOST_GRAINS = 40_000

/** One drawn pack: its grains (none for a block, a liquid or a fine powder) and its random surfaces. */
export interface DrawnFood {
  readonly view: View
  readonly product: Product
  readonly grains: readonly Grain[]
  readonly surface: RandomField
}

/** Draws the food of a pack by its seed. `area` is the picture plane the surfaces must cover. */
export function drawFood(
  view: View,
  product: Product,
  area: Raster,
  seed: number,
  bed: Bed = CARD_BED,
): DrawnFood {
  const { packing, unevennessMm, grainMm } = product
  const shape = grainShape(product.food, product.structure)
  const sphereMm = product.structure === 'plates' ? plateSphereMm(shape, grainMm) : grainMm
  const count = (view.uMm * view.vMm * view.depthMm * packing) / ((Math.PI / 6) * sphereMm ** 3)
  const drawn = grainMm > 0 && count <= MOST_GRAINS
  const grains = drawn ? cutFrom(tileOf(view, product, shape, sphereMm, bed), shape, view, seed) : []
  const power = (f: number) =>
    packing ** 2 * unevennessNoisePower(f, unevennessMm) +
    (grainMm > 0 && !drawn ? grainNoisePower(f, grainMm, packing, view.depthMm) : 0)
  const random = randomStream(seed, 'surface of the food')
  const [surface] = randomFields(area, power, random, fibreStretch(product.food))
  return { view, product, grains, surface }
}

/** Share of the even depth below which there is too little food to have an uneven surface. */
const THIN_SHARE = 0.25
/** Solid food along the beam, mm, were it spread evenly and its surfaces smooth. */
function evenPath(view: View, packing: number, raster: Raster): Float32Array {
  const even = new Float32Array(raster.columns * raster.rows)
  const full = innerRectangle(view, view.edgeMm)
  const within = Array.from({ length: raster.columns }, (_, column) => columnMm(raster, column))
  const from = within.findIndex((u) => u >= full.fromU)
  const to = within.findLastIndex((u) => u <= full.toU)
  for (let row = 0; row < raster.rows; row++) {
    const v = rowMm(raster, row)
    const at = row * raster.columns
    const filled = from >= 0 && v >= full.fromV && v <= full.toV
    if (filled) even.fill(packing * view.depthMm, at + from, at + to + 1)
    for (let column = 0; column < raster.columns; column++) {
      if (filled && column === from) column = to + 1
      if (column < raster.columns) even[at + column] = packing * depthAtMm(view, within[column]!, v)
    }
  }
  return even
}

/** Every so manieth cell of a row and column enters the mean. */
const SAMPLED = 3

/** What a cut of the bed lacks or has too much of, by a few percent at most, over the part that is read. */
function asStated(path: Float32Array, even: Float32Array, view: View, raster: Raster): number {
  let wanted = 0
  let drawn = 0
  for (let row = 0; row < raster.rows; row += SAMPLED) {
    for (let column = 0; column < raster.columns; column += SAMPLED) {
      if (!isRead(view, columnMm(raster, column), rowMm(raster, row))) continue
      wanted += even[row * raster.columns + column]!
      drawn += path[row * raster.columns + column]!
    }
  }
  return drawn > 0 ? wanted / drawn : 1
}

/** The even food of a moulded bar with its squares, the same amount in all; null where the food is not moulded. */
export function mouldedPath(
  { view, product }: DrawnFood,
  raster: Raster,
  even: Float32Array,
): Float32Array | null {
  const height = view.beam === 'down' ? mouldOf(product.food, view.uMm, view.vMm) : null
  if (!height) return null
  const path = Float32Array.from(even)
  for (let row = 0, at = 0; row < raster.rows; row++) {
    for (let column = 0; column < raster.columns; column++, at++)
      path[at]! *= height(columnMm(raster, column), rowMm(raster, row))
  }
  const scale = asStated(path, even, view, raster)
  for (let at = 0; at < path.length; at++) path[at]! *= scale
  return path
}

/** The food of a pack with nothing but its depth: no grains, no squares. */
export const evenFoodMm = ({ view, product }: DrawnFood, raster: Raster): Float32Array =>
  evenPath(view, product.packing, raster)

/**
 * Solid food along the beam, mm, in every cell of a grid: packing × depth over the part that is read, and nowhere
 * more than the depth there is.
 */
export function foodPathMm(food: DrawnFood, raster: Raster): Float32Array {
  const { view, product, grains } = food
  const path = new Float32Array(raster.columns * raster.rows)
  const even = evenPath(view, product.packing, raster)
  if (grains.length === 0) {
    const moulded = mouldedPath(food, raster, even)
    if (moulded) even.set(moulded)
    path.set(even)
  } else {
    for (const grain of grains) addGrain(path, raster, grain)
    const scale = asStated(path, even, view, raster)
    for (let i = 0; i < path.length; i++) path[i] = Math.min(scale * path[i]!, even[i]! / product.packing)
  }
  if (grains.length === 0) {
    addField(path, raster, food.surface, 1)
    for (let i = 0; i < path.length; i++) if (even[i] === 0 || path[i]! < 0) path[i] = 0
    return path
  }
  const bumps = new Float32Array(path.length)
  addField(bumps, raster, food.surface, 1)
  for (let i = 0; i < path.length; i++) {
    const level = even[i]!
    if (level === 0) continue
    const share = Math.min(1, path[i]! / (THIN_SHARE * level))
    path[i] = Math.max(0, path[i]! + share * bumps[i]!)
  }
  return path
}
