import type { Point } from '../../contract/index.ts'
import { normalUpperQuantile } from '../../numerics/normal.ts'
import { objectPixelMm, type XrayBuild } from '../beam/exposure.ts'
import { materialAttenuation, projectedAreaMm2 } from '../places/pack-in-beam.ts'
import { bedPoint, bedPointsOf, GRID_LN_STEP, pointOfOne } from './grain-threshold.ts'
import type { Observer } from './observer.ts'
import { BED_FACTOR } from './practice.ts'
import { type DisplacedFood, type SeenObject, seeObject } from './seen-object.ts'

/** Threshold on the output of the filter for a piece of a size in mm, in standard deviations. */
export type Threshold = (sizeMm: number) => number

/** Independent places in a pack: projected area over the square of two object-plane pixels. */
export function positionsOf(point: Point, build: XrayBuild): number {
  return projectedAreaMm2(point, build.beam) / (2 * objectPixelMm(build, point.speedMPerMin)) ** 2
}

/** Chance of a false reject at one place: false rejects per pack over places; each of two views gets half of them. */
export function tailPerPlace(point: Point, build: XrayBuild): number {
  return Math.min(0.5, point.falseRejectsPerPack / build.views / Math.max(1, positionsOf(point, build)))
}

/** Threshold z that normal noise exceeds with that chance. */
export function thresholdZ(point: Point, build: XrayBuild): number {
  return normalUpperQuantile(tailPerPlace(point, build))
}

/** Whether a food has grains that could look like a piece where they lie on one another. */
export function hasGrains({ grainMm, packing }: { grainMm: number; packing: number }): boolean {
  return grainMm > 0 && packing < 1
}

/**
 * T = max(least, c·point of the bed's tail) of the filter for each size, worked out on a grid and read linearly in ln
 * size between. Pieces coarser than the coarsest filter a machine runs are left to that one: beyond half a grain a filter
 * would be taught on the grains themselves.
 */
export function ownThreshold(
  observer: Observer,
  object: SeenObject,
  tail: number,
  z: number,
  least: () => number,
  coarsestMm: number,
): Threshold {
  if (!hasGrains(observer.pack) || observer.channels.count === 0) return () => z
  const points = bedPointsOf(observer, object, tail, z)
  const knots = new Map<number, number>()
  const knot = (k: number) => {
    const known = knots.get(k)
    if (known !== undefined) return known
    const own = Math.max(least(), BED_FACTOR * points(k, least() / BED_FACTOR))
    knots.set(k, own)
    return own
  }
  // Nothing of a flake's filter but its strength depends on the thickness.
  if (object.shape === 'flake') return () => knot(0)
  return (sizeMm) => {
    const at = Math.log(Math.min(sizeMm, coarsestMm)) / GRID_LN_STEP
    const low = Math.floor(at)
    const above = knot(low + 1)
    return above + (low + 1 - at) * (knot(low) - above)
  }
}

/**
 * Threshold that the filter for one size needs for itself: what carries the thresholds of a kind of piece over to a
 * similar scene is how this one changes.
 */
export function thresholdOfOne(
  observer: Observer,
  object: SeenObject,
  sizeMm: number,
  tail: number,
  z: number,
): number {
  if (!hasGrains(observer.pack) || observer.channels.count === 0) return z
  return Math.max(z, BED_FACTOR * pointOfOne(observer, object, sizeMm, tail, z))
}

/** Sizes of the quartz balls whose filters a machine is taken to run whatever it is looking for, mm. */
const BANK_MM = [1, 1.5, 2, 3, 4, 5, 6]
/** Up to this share of the grain, where the last of them stands. */
const BANK_TO_GRAIN = 0.5

export const quartzIn = (observer: Observer, food: DisplacedFood) =>
  seeObject(observer.channels, materialAttenuation('quartz'), food, 'sphere', 0, 0, 0)

/** The bank in a food, coarsest first; its end moves with the grain, so that no filter comes in at once. */
export function bankIn({ pack }: Observer): readonly number[] {
  const endMm = Math.min(BANK_TO_GRAIN * pack.grainMm, BANK_MM.at(-1)!)
  return [...BANK_MM.filter((size) => size < endMm), endMm].reverse()
}

/**
 * The threshold a machine with one for all its filters is taught: the largest of a fixed bank's. Coarser filters
 * need more; the search from them downwards ends where two in a row need less.
 */
export function bankThreshold(observer: Observer, food: DisplacedFood, tail: number, z: number): number {
  if (!hasGrains(observer.pack) || observer.channels.count === 0) return z
  const quartz = quartzIn(observer, food)
  let most = z
  let less = 0
  for (const size of bankIn(observer)) {
    const own = BED_FACTOR * bedPoint(observer, quartz, size, tail, z)
    if (own < most && ++less === 2) break
    most = Math.max(most, own)
  }
  return most
}

/** The bank's coarsest filter, which stands for all where a threshold is carried over to a similar scene. */
export function standingFilter(
  observer: Observer,
  food: DisplacedFood,
): { object: SeenObject; sizeMm: number } {
  return { object: quartzIn(observer, food), sizeMm: bankIn(observer)[0]! }
}
