import type { ExposedPack } from '../xray/image/pack/exposed-pack.ts'
import { displacedFood } from '../xray/observer/scene.ts'
import { bankThreshold, tailPerPlace, thresholdZ } from '../xray/observer/threshold.ts'

/** Threshold that clean packs of this food teach a machine, as computed. */
export function taughtOn({ observer, pack, build, point }: ExposedPack): number {
  const food = displacedFood(pack, 'inside')
  return food ? bankThreshold(observer, food, tailPerPlace(point, build), thresholdZ(point, build)) : 0
}
