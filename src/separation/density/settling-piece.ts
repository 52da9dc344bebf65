import { figures } from '../../reference/separation.ts'
import { GRAVITY_M_PER_S2 } from '../physical-constants.ts'
import { equivalentDiameterMm, type PieceShape, sphericityOf } from '../piece-shape.ts'
import { type SettlingFluid, steadySpeedMPerS } from './settling.ts'

/** Lowest sphericity of the settling equation; slimmer pieces are slowed in proportion (assumption). */
const SLIMMEST = 0.5

/** What a piece's sphericity may be: a "sphere" stands for a fragment; wires and flakes tumble or lie flat. */
export function sphericityRange(shape: PieceShape): readonly [number, number] {
  if (shape.kind === 'sphere') return figures['fragment-sphericity'].range
  const own = sphericityOf(shape)
  const [least, most] = figures['slim-tumbling'].range
  return [own * least, own * most]
}

/** Settling speed in a fluid, m/s; negative where the piece rises. Density g/cm³. */
export function settlingMPerS(
  diameterMm: number,
  densityGPerCm3: number,
  fluid: SettlingFluid,
  sphericity: number,
): number {
  const force = GRAVITY_M_PER_S2 * (densityGPerCm3 * 1000 - fluid.densityKgPerM3)
  const slim = Math.min(1, sphericity / SLIMMEST)
  return slim * steadySpeedMPerS(diameterMm / 1000, force, fluid, sphericity)
}

const POSTURES = 21

/** Settling speeds of equal shares of the pieces, m/s: their sphericity runs evenly over its range. */
export function pieceSpeedsMPerS(
  shape: PieceShape,
  densityGPerCm3: number,
  fluid: SettlingFluid,
): readonly number[] {
  const diameterMm = equivalentDiameterMm(shape)
  const [least, most] = sphericityRange(shape)
  return Array.from({ length: POSTURES }, (_, i) =>
    settlingMPerS(diameterMm, densityGPerCm3, fluid, least + ((most - least) * i) / (POSTURES - 1)),
  )
}

const LARGEST_MM = 1000

/**
 * Diameter of a fragment that settles exactly as fast as the food, mm; null where none does up to a metre.
 * Between the limits of Stokes and Newton, where it is d·√((ρ_food − ρ_f)/(ρ − ρ_f)) and
 * d·(ρ_food − ρ_f)/(ρ − ρ_f). Source: `haider-levenspiel`, `equal-settling`.
 */
export function equalSettlingMm(
  foodSpeedMPerS: number,
  densityGPerCm3: number,
  fluid: SettlingFluid,
  sphericity: number,
): number | null {
  const faster = (mm: number) => settlingMPerS(mm, densityGPerCm3, fluid, sphericity) >= foodSpeedMPerS
  if (!faster(LARGEST_MM)) return null
  let low = 0
  let high = LARGEST_MM
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2
    if (faster(middle)) high = middle
    else low = middle
  }
  return high
}
