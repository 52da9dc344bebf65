import { positionOf, sizeAtMm } from '../piece/size-grid.ts'
import type { DetectionCurve } from './detection-curve.ts'

/** Position where a straight line between two neighbours meets the level. */
const between = (k: number, low: number, next: number, high: number, level: number): number =>
  k + ((level - low) / (high - low)) * (next - k)

/** Grid steps skipped while all is found: D bends over tens of per cent of size, so no dip hides in 4 %. */
const STRIDE = 4

/**
 * Smallest size (mm) from which every size up to `limitMm` is found with at least the chance `level`;
 * null where the limit itself is not.
 */
export function lastCrossingMm(curve: DetectionCurve, level: number, limitMm: number): number | null {
  let above = positionOf(limitMm)
  if (above <= 0) return null
  let chance = curve.chanceAt(above)
  if (chance < level) return null
  let k = Math.floor(above)
  while (k > 0) {
    const far = Math.max(0, k - STRIDE)
    const atFar = curve.chanceAt(far)
    if (atFar >= level) {
      k = far
      above = far
      chance = atFar
      continue
    }
    for (let near = k; ; near--) {
      const here = near === far ? atFar : curve.chanceAt(near)
      if (here < level) return sizeAtMm(between(near, here, above, chance, level))
      above = near
      chance = here
    }
  }
  return sizeAtMm(0)
}

/** A stretch of sizes that is missed although a smaller one was found. */
export interface MissedAgain {
  readonly fromMm: number
  /** null: still missed at the largest size that counts. */
  readonly toMm: number | null
}

/** Every stretch up to `limitMm` where the chance has fallen below `level` after having reached it. */
export function missedAgain(curve: DetectionCurve, level: number, limitMm: number): readonly MissedAgain[] {
  const end = positionOf(limitMm)
  const windows: MissedAgain[] = []
  let fromMm: number | null = null
  let before = curve.chanceAt(0)
  let found = before >= level
  for (let k = 1; k - 1 < end; k++) {
    const position = Math.min(k, end)
    const here = curve.chanceAt(position)
    if (here >= level !== before >= level) {
      const crossing = sizeAtMm(between(k - 1, before, position, here, level))
      if (here < level && found) fromMm = crossing
      if (here >= level && fromMm !== null) {
        windows.push({ fromMm, toMm: crossing })
        fromMm = null
      }
      found ||= here >= level
    }
    before = here
  }
  if (fromMm !== null) windows.push({ fromMm, toMm: null })
  return windows
}

/** Smallest size (mm) up to the limit at which D reaches k, straight in ln D; null where none does. */
export function firstReachingMm(curve: DetectionCurve, k: number, limitMm: number): number | null {
  const end = Math.floor(positionOf(limitMm))
  for (let position = 0; position <= end; position++) {
    const here = curve.statistic(position)
    if (here < k) continue
    if (position === 0) return sizeAtMm(0)
    const before = curve.statistic(position - 1)
    return sizeAtMm(position - 1 + Math.log(k / before) / Math.log(here / before))
  }
  return null
}
