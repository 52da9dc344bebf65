import type { Point } from '../../../contract/index.ts'
import { unevennessNoisePower } from '../../noise/texture.ts'
import { type DrawnFood, drawFood, foodPathMm } from '../food/food-path.ts'
import type { Bed } from '../food/grain-tile.ts'
import { randomStream } from '../food/random.ts'
import { addField, type RandomField, randomFields } from '../food/random-field.ts'
import { finerRaster, type Raster, rasterOver } from '../food/raster.ts'
import { type ContainerMaps, containerMaps, frameMm } from './container.ts'
import type { ExposedPack } from './exposed-pack.ts'
import { type View, viewOf } from './view.ts'

/** Cells of the path map are at most this wide, mm; at least two stand on a pixel. */
export const FINEST_CELL_MM = 0.35

/** One pack drawn by its seed: every machine with the same beam looks at this same pack. */
export interface DrawnPack {
  readonly point: Point
  readonly view: View
  readonly seed: number
  readonly food: DrawnFood
  /** The picture plane, as one cell. */
  readonly frame: {
    readonly leftMm: number
    readonly topMm: number
    readonly widthMm: number
    readonly heightMm: number
  }
  readonly maps: Map<string, PathMaps>
  /** Patterns of its composition, drawn when first needed. */
  readonly residuals: RandomField[]
}

/** Everything the beam crosses, in every cell of a grid. */
export interface PathMaps {
  readonly foodMm: Float32Array
  readonly container: ContainerMaps
}

/** The frame is a multiple of this, so that machines of usual pixel sizes share one grid of cells, mm. */
const FRAME_STEP_MM = 2
const roundedUp = (mm: number) => FRAME_STEP_MM * Math.ceil(mm / FRAME_STEP_MM - 1e-9)

/** Draws a pack of a point under a beam. bed: that its grains are cut from. */
export function drawPack(point: Point, beam: 'down' | 'side', seed: number, bed?: Bed): DrawnPack {
  const view = viewOf(point, beam)
  const around = frameMm(point, view)
  const frame = {
    leftMm: -around.sides,
    topMm: -around.top,
    widthMm: roundedUp(view.uMm + 2 * around.sides),
    heightMm: roundedUp(view.vMm + around.top + around.bottom),
  }
  const area = rasterOver(frame.leftMm, frame.topMm, frame.widthMm + 2, frame.heightMm + 2, 1)
  return {
    point,
    view,
    seed,
    food: drawFood(view, point.product, area, seed, bed),
    frame,
    maps: new Map(),
    residuals: [],
  }
}

/** Grid of a machine's pixels over the pack's picture plane, and cells per pixel of the path map. */
export function gridsFor(
  pack: DrawnPack,
  pixelMm: number,
): { pixels: Raster; cells: Raster; cellsPerPixel: number } {
  const { leftMm, topMm, widthMm, heightMm } = pack.frame
  const pixels = rasterOver(leftMm, topMm, widthMm, heightMm, pixelMm)
  const cellsPerPixel = Math.max(2, Math.ceil(pixelMm / FINEST_CELL_MM - 1e-9))
  return { pixels, cells: finerRaster(pixels, cellsPerPixel), cellsPerPixel }
}

/** Paths on a grid; kept, because machines of one pixel size share them. */
export function pathMaps(pack: DrawnPack, cells: Raster): PathMaps {
  const key = `${cells.pitchMm.toFixed(6)}/${cells.columns}/${cells.rows}`
  let maps = pack.maps.get(key)
  if (!maps) {
    maps = {
      foodMm: foodPathMm(pack.food, cells),
      container: containerMaps(pack.point, pack.view, cells),
    }
    pack.maps.set(key, maps)
  }
  return maps
}

/**
 * Attenuation exponent of a channel that comes on top of the tables: rims, bases and closures, and the
 * unevenness of walls and films (rms σ√crossings), each times the channel's mean μ. Null where there is none.
 */
export function extraExponents(pack: DrawnPack, exposed: ExposedPack, cells: Raster): Float32Array[] | null {
  const { container } = pathMaps(pack, cells)
  const uneven = exposed.pack.parts
    .map((part, p) => ({ part, p }))
    .filter(({ part }) => part.unevennessMm > 0)
  if (container.trims.length === 0 && uneven.length === 0) return null
  const surfaces = uneven.map(({ part, p }) => {
    const power = (f: number) => part.crossings * unevennessNoisePower(f, part.unevennessMm)
    return randomFields(cells, power, randomStream(pack.seed, `unevenness of part ${p}`))[0]
  })
  return exposed.channels.weights.map((weights, c) => {
    const exponent = new Float32Array(cells.columns * cells.rows)
    uneven.forEach(({ p }, i) => {
      addField(exponent, cells, surfaces[i]!, exposed.channels.partMu[p]![c]!)
    })
    for (const trim of container.trims) {
      let mu = 0
      for (let i = 0; i < exposed.channels.bins; i++) mu += weights[i]! * trim.muPerMm[i]!
      for (let at = 0; at < exponent.length; at++) if (trim.mm[at]! > 0) exponent[at]! += mu * trim.mm[at]!
    }
    return exponent
  })
}
