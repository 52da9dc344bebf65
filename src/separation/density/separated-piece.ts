import { figures } from '../../reference/separation.ts'
import { equivalentDiameterMm } from '../piece-shape.ts'
import { densitiesGPerCm3, type Variant } from '../variant.ts'
import type { Separator } from './separator.ts'
import { leavesShare, type Side } from './separator-cut.ts'
import { equalSettlingMm, pieceSpeedsMPerS, settlingMPerS } from './settling-piece.ts'

const DENSITY_STEPS = [0, 0.25, 0.5, 0.75, 1] as const
const densitySteps = ([least, most]: readonly [number, number]): readonly number[] =>
  DENSITY_STEPS.map((t) => least + (most - least) * t)

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length

/** The side on which its density puts a material: a destoner takes the heavy one, an aspirator the light one. */
export const sideOf = (separator: Separator, variant: Variant): Side =>
  variant.material.densityGPerCm3 >= separator.foodDensityGPerCm3 ? 'heavy' : 'light'

/**
 * Share of the pieces that leaves, before the losses of a run. Worst: a free stream that takes out one side
 * only, with the density and both shapes against it. Best: either side, with all of them for it, or a
 * fluidised deck, where piece and grain count as of one shape (`fluidised-deck`). Food that floats is skimmed
 * off from all that sinks.
 */
export function leaves(separator: Separator, variant: Variant): readonly [number, number] {
  const { fluid, ratio, foodSpeeds, foodSphericity } = separator
  const blur = figures['separator-unevenness'].value
  const at = (speeds: readonly number[], foodSpeed: number, side: Side): number =>
    mean(
      speeds.map((speed) => {
        if (foodSpeed <= 0) return speed > 0 ? 1 : 0
        return leavesShare(speed, foodSpeed, ratio, blur, side)
      }),
    )
  const densities = densitySteps(densitiesGPerCm3(variant.material))
  const stream = (side: Side) =>
    densities.flatMap((density) => {
      const speeds = pieceSpeedsMPerS(variant.shape, density, fluid)
      return foodSpeeds.map((foodSpeed) => at(speeds, foodSpeed, side))
    })
  const diameterMm = equivalentDiameterMm(variant.shape)
  const deck = densities.map((density) =>
    at([settlingMPerS(diameterMm, density, fluid, foodSphericity)], foodSpeeds[1], 'either'),
  )
  return [Math.min(...stream(sideOf(separator, variant))), Math.max(...stream('either'), ...deck)]
}

/** Slowest and fastest a piece may settle, m/s. */
export function speedRange(separator: Separator, variant: Variant): readonly [number, number] {
  const speeds = densitiesGPerCm3(variant.material).flatMap((density) =>
    pieceSpeedsMPerS(variant.shape, density, separator.fluid),
  )
  return [Math.min(...speeds), Math.max(...speeds)]
}

/**
 * Size at which a piece of the variant's material and of the grain's shape settles like the middle grain, mm:
 * the limit of a fluidised deck; null where none does.
 */
export function equalSizeMm(separator: Separator, { material }: Variant): number | null {
  const [, foodSpeed] = separator.foodSpeeds
  if (foodSpeed <= 0) return null
  return equalSettlingMm(foodSpeed, material.densityGPerCm3, separator.fluid, separator.foodSphericity)
}
