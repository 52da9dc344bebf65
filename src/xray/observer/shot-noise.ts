import { evenly } from './answers-along.ts'
import { LN_SIZE_SPREAD } from './detectability.ts'

/** One step of a spread of sizes: ratio to the middle size, and its share. */
export interface SizeStep {
  readonly ratio: number
  readonly weight: number
}

function spreadOver(steps: readonly number[]): SizeStep[] {
  const weights = steps.map((u) => Math.exp((-u * u) / 2))
  const total = weights.reduce((sum, w) => sum + w, 0)
  return steps.map((u, i) => ({ ratio: Math.exp(LN_SIZE_SPREAD * u), weight: weights[i]! / total }))
}

/** Sizes of a piece or a grain in equal steps over ±2.4 standard deviations of a normal spread of ln size. */
export const NINE_SIZES = spreadOver([-2.4, -1.8, -1.2, -0.6, 0, 0.6, 1.2, 1.8, 2.4])
/** Steps of the five in ln size. */
export const FIVE_LN_STEP = 1.2 * LN_SIZE_SPREAD
/** Every second of them: as good for what changes smoothly over the spread. */
export const FIVE_SIZES = spreadOver([-2.4, -1.2, 0, 1.2, 2.4])

/** Beyond the rim of the largest grain by so much, mm, its shadow leaves nothing in a filter beyond a second moment. */
const BEYOND_RIM_MM = 4
/** Distance of the places looked at, in halves of the shortest wave. */
const PLACE_STEP = 0.4

/** How far from its middle the shadow of a grain of a size is followed, mm. */
const reachMm = (grainMm: number, size: SizeStep) => (size.ratio * grainMm) / 2 + BEYOND_RIM_MM

/** Where the shadows of grains are followed: equal steps from their middles, mm; an even number of them for each size. */
export function placesAround(grainMm: number, objectPixelMm: number) {
  const stepMm = PLACE_STEP * objectPixelMm
  const placesOf = (size: SizeStep) => evenly(Math.ceil(reachMm(grainMm, size) / stepMm) + 1)
  return { stepMm, placesOf, places: placesOf(NINE_SIZES.at(-1)!) }
}

/** Transform of the chords of a ball of diameter D, mm³: 4πR³(sin k − k·cos k)/k³, k = 2πfR. */
export function ballTransform(f: number, diameterMm: number): number {
  const r = diameterMm / 2
  const k = 2 * Math.PI * f * r
  if (k < 0.02) return ((4 * Math.PI) / 3) * r ** 3
  return (4 * Math.PI * r ** 3 * (Math.sin(k) - k * Math.cos(k))) / k ** 3
}

/** Grains of one size per mm² of a bed: its share of the food's depth over the volume of a grain. */
export function grainsPerMm2(solidMm: number, grainMm: number, size: SizeStep): number {
  return (size.weight * solidMm) / ((Math.PI * (grainMm * size.ratio) ** 3) / 6)
}

/**
 * What the grains of a bed leave in a filter, not to scale: the first so many answers, how many grains give each, and
 * all squares. Read it before the next is made: its room is used anew.
 */
export interface Answers {
  readonly answers: Float64Array
  readonly numbers: Float64Array
  readonly count: number
  readonly square: number
}
