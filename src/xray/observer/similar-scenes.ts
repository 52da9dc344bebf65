import { bedPoint, grainShare } from './grain-threshold.ts'
import { BED_FACTOR } from './practice.ts'
import type { Scene } from './scene.ts'
import { hasGrains, standingFilter } from './threshold.ts'

/**
 * Thresholds carried over between scenes that differ little: other voltages of a machine, other draws of the
 * assumptions. One filter stands for all: what its threshold does from scene to scene, the others do too. It is
 * worked out in three scenes and read between them.
 */

/** Parabola through three points; a line or a constant where two of them fall together. */
function through(x: readonly number[], y: readonly number[]): (at: number) => number {
  const [x0, x1, x2] = x as [number, number, number]
  const [y0, y1, y2] = y as [number, number, number]
  const near = 1e-3 * Math.max(Math.abs(x0), Math.abs(x2), 1e-9)
  if (Math.abs(x2 - x0) < near) return () => y1
  if (Math.abs(x1 - x0) < near || Math.abs(x2 - x1) < near)
    return (at) => y0 + ((y2 - y0) * (at - x0)) / (x2 - x0)
  return (at) =>
    (y0 * (at - x1) * (at - x2)) / ((x0 - x1) * (x0 - x2)) +
    (y1 * (at - x0) * (at - x2)) / ((x1 - x0) * (x1 - x2)) +
    (y2 * (at - x0) * (at - x1)) / ((x2 - x0) * (x2 - x1))
}

/** Threshold of the filter that stands for all, in standard deviations. */
function standing(scene: Scene): number {
  const { object, sizeMm } = standingFilter(scene.observer, scene.food)
  return BED_FACTOR * bedPoint(scene.observer, object, sizeMm, scene.tail, scene.thresholdZ)
}

/** Thresholds over those of the first, middle and last scene: by the machine's voltage in kV, the middle being 1. */
export function liftsByVoltage(scenes: readonly Scene[], kV: readonly number[]): number[] {
  const used = scenes.flatMap((scene, i) => (scene.channels.count > 0 ? [i] : []))
  if (used.length === 0 || !hasGrains(scenes[0]!.pack)) return scenes.map(() => 1)
  const three = [used[0]!, scenes.length >> 1, used.at(-1)!]
  const z = scenes[0]!.thresholdZ
  const point = through(
    three.map((i) => kV[i]!),
    three.map((i) => standing(scenes[i]!)),
  )
  const middle = Math.max(z, point(kV[three[1]!]!))
  return kV.map((volts) => Math.max(z, point(volts)) / middle)
}

/**
 * Thresholds over those of a central scene, by the grain's share of the noise. What a bed adds to z goes with the
 * inverse root of the grains in the way, that is of the depth.
 */
export function liftsByShare(central: Scene, scenes: readonly Scene[]): number[] {
  if (central.channels.count === 0 || !hasGrains(central.pack)) return scenes.map(() => 1)
  const z = central.thresholdZ
  const shareOf = (scene: Scene) => {
    const { object, sizeMm } = standingFilter(scene.observer, scene.food)
    return scene.channels.count === 0 ? 0 : grainShare(scene.observer, object, sizeMm)
  }
  const rows = scenes
    .map((scene, i) => ({
      scene,
      i,
      share: shareOf(scene),
      root: Math.sqrt(scene.pack.pathMm / central.pack.pathMm),
    }))
    .sort((a, b) => a.share - b.share)
  const three = [rows[0]!, rows[rows.length >> 1]!, rows.at(-1)!]
  const added = through(
    three.map(({ share }) => share),
    three.map(({ scene, root }) => (standing(scene) - z) * root),
  )
  const middle = Math.max(z, standing(central))
  const lifts = scenes.map(() => 1)
  for (const { i, share, root } of rows) lifts[i] = Math.max(z, z + added(share) / root) / middle
  return lifts
}
