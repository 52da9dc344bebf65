import { figures } from '../reference/separation.ts'
import type { Separator } from './separator.ts'
import { leavesShare, type Side } from './separator-cut.ts'
import { equalSettlingMm, pieceSpeedsMPerS } from './settling-piece.ts'
import { densitiesGPerCm3, type Variant } from './variant.ts'

const DENSITY_STEPS = [0, 0.25, 0.5, 0.75, 1] as const
const densitySteps = ([least, most]: readonly [number, number]): readonly number[] =>
  DENSITY_STEPS.map((t) => least + (most - least) * t)

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length

/** The side on which its density puts a material: a destoner takes the heavy one, an aspirator the light one. */
export const sideOf = (separator: Separator, variant: Variant): Side =>
  variant.material.densityGPerCm3 >= separator.foodDensityGPerCm3 ? 'heavy' : 'light'

/**
 * Share of the pieces that leaves, before the losses of a run. Worst: a stream that takes out one side only,
 * with the density and the food's shape against it; best: either side, with both for it. Food that floats is
 * skimmed off from all that sinks.
 */
export function leaves(separator: Separator, variant: Variant): readonly [number, number] {
  const blur = figures['separator-unevenness'].value
  const at = (density: number, foodSpeed: number, side: Side): number => {
    const speeds = pieceSpeedsMPerS(variant.shape, density, separator.fluid)
    if (foodSpeed <= 0) return mean(speeds.map((speed) => (speed > 0 ? 1 : 0)))
    return mean(speeds.map((speed) => leavesShare(speed, foodSpeed, separator.ratio, blur, side)))
  }
  const over = (side: Side) =>
    densitySteps(densitiesGPerCm3(variant.material)).flatMap((density) =>
      separator.foodSpeeds.map((foodSpeed) => at(density, foodSpeed, side)),
    )
  return [Math.min(...over(sideOf(separator, variant))), Math.max(...over('either'))]
}

/** Slowest and fastest a piece may settle, m/s. */
export function speedRange(separator: Separator, variant: Variant): readonly [number, number] {
  const speeds = densitiesGPerCm3(variant.material).flatMap((density) =>
    pieceSpeedsMPerS(variant.shape, density, separator.fluid),
  )
  return [Math.min(...speeds), Math.max(...speeds)]
}

/** Size at which a fragment of the variant's material settles like the middle grain, mm; null where none does. */
export function equalSizeMm(separator: Separator, { material }: Variant): number | null {
  const [, foodSpeed] = separator.foodSpeeds
  if (foodSpeed <= 0) return null
  const psi = figures['fragment-sphericity'].value
  return equalSettlingMm(foodSpeed, material.densityGPerCm3, separator.fluid, psi)
}
