import type { Product } from '../../../contract/index.ts'
import { depthAtMm, type View } from '../pack/view.ts'
import { grainBody } from './grain-body.ts'
import type { Grain } from './grain-chords.ts'
import { lyingGrain } from './grain-lie.ts'
import type { GrainShape } from './grain-shapes.ts'
import { randomStream } from './random.ts'
import { relaxedTile, type Tile } from './relaxed-tile.ts'

/** About so many balls make up a tile: enough that it does not show its repeats, few enough to be relaxed in time. */
const BALLS = 8_000
const GRAINS = 500
/** A tile is at least so many times as long as its longest grain. */
const LONGEST_GRAINS = 3
/** How a bed is made: others of the same food by another seed; with fewer sweeps its grains still overlap a little. */
export interface Bed {
  readonly seed: number
  readonly mostSweeps: number
  /** Of the grains a tile has, how many; all unless given. */
  readonly share?: number
}
/** The bed every card shows. */
export const CARD_BED: Bed = { seed: 20, mostSweeps: 250 }
/** Fewer grains, moved apart less: for a small picture that follows a hand. */
export const HAND_BED: Bed = { seed: 20, mostSweeps: 20, share: 0.5 }
/** Those grains as they were thrown, hardly moved apart: for the moment until the other is drawn. */
export const DRAFT_BED: Bed = { ...HAND_BED, mostSweeps: 2 }

/** Tiles by food and depth, made once. */
const kept = new Map<string, Tile>()
const KEPT_MOST = 24

/** The relaxed bed of a food at the depth of a view. */
export function tileOf(view: View, product: Product, shape: GrainShape, sphereMm: number, bed: Bed): Tile {
  const key = [
    product.food,
    product.structure,
    product.packing,
    sphereMm,
    view.depthMm,
    view.beam,
    bed.seed,
  ].join()
  const share = bed.share ?? 1
  const place = `${key} ${bed.mostSweeps} ${share}`
  let tile = kept.get(place)
  if (!tile) {
    const random = randomStream(bed.seed, key)
    const sideMm = tileSideMm(shape, product.packing, sphereMm, view.depthMm, share)
    tile = relaxedTile(
      shape,
      product.packing,
      sphereMm,
      sideMm,
      view.depthMm,
      view.beam,
      random,
      bed.mostSweeps,
    )
    if (kept.size >= KEPT_MOST) kept.delete(kept.keys().next().value!)
    kept.set(place, tile)
  }
  return tile
}

function tileSideMm(
  shape: GrainShape,
  packing: number,
  sphereMm: number,
  depthMm: number,
  share: number,
): number {
  const body = grainBody(shape, sphereMm / 2)
  const volume = (Math.PI / 6) * sphereMm ** 3
  const side = Math.sqrt((share * Math.min(GRAINS, BALLS / body.at.length) * volume) / (packing * depthMm))
  return Math.max(side, LONGEST_GRAINS * 2 * Math.max(...body.half))
}

/** Grains of a pack: the tile repeated over it from a place, and turned over, of the pack's own. */
export function cutFrom(tile: Tile, shape: GrainShape, view: View, seed: number): Grain[] {
  const random = randomStream(seed, 'cut of the bed')
  const { sideMm, grains } = tile
  const [fromU, fromV] = [random.uniform() * sideMm, random.uniform() * sideMm]
  const [flipU, flipV, turn] = [
    random.uniform() < 0.5,
    random.uniform() < 0.5,
    random.uniform() < 0.5 && view.beam === 'down',
  ]
  // A stream has no ends: grains beyond the picture reach into it.
  const beyondMm = view.outline === 'stream' ? 2 * Math.max(...grains.map(({ body }) => body.half[0]), 0) : 0
  const cut: Grain[] = []
  for (const grain of grains) {
    const swap = (a: readonly [number, number, number]) => {
      const [x, y] = turn ? [a[1], a[0]] : [a[0], a[1]]
      return [flipU ? -x : x, flipV ? -y : y, a[2]] as const
    }
    const [u0, v0] = swap([grain.u, grain.v, 0])
    const [first, second, third] = grain.axes
    const axes = [swap(first), swap(second), swap(third)] as const
    const start = (at: number, from: number) => ((((at + from) % sideMm) + sideMm) % sideMm) - sideMm
    for (let u = start(u0, fromU); u < view.uMm + beyondMm; u += sideMm) {
      for (let v = start(v0, fromV); v < view.vMm; v += sideMm) {
        if (u < -beyondMm || v < 0) continue
        if (Math.abs(grain.w) > depthAtMm(view, u, v) / 2) continue
        cut.push(lyingGrain(shape.kind, grain.body, u, v, axes, shape))
      }
    }
  }
  return cut
}
