import type { Point } from '../../contract/index.ts'
import { normalUpperTail } from '../../numerics/normal.ts'
import { archetypes, materials } from '../../reference/index.ts'
import { type FigureId, type Fluid, figures, fluids, grainShapes } from '../../reference/separation.ts'
import type { RemovalMachine } from '../assessment.ts'
import { asRange, type Trail } from '../trail.ts'
import { settlingMPerS } from './settling-piece.ts'

export type DensityMachine = Extract<RemovalMachine, { family: 'density' }>

/** A stream set for this food. */
export interface Separator {
  readonly fluid: Fluid
  readonly medium: 'air' | 'water'
  readonly ratio: number
  readonly foodDensityGPerCm3: number
  /** Central sphericity of the grains. */
  readonly foodSphericity: number
  /** Settling speed of the middle grain, m/s, over its sphericity: slowest, middle, fastest; ≤ 0 floats. */
  readonly foodSpeeds: readonly [number, number, number]
  readonly steps: { readonly food: string; readonly ratio: string }
}

/** Wet, unfrozen foods may be washed; everything else is parted in air. */
function mediumOf(point: Point): 'air' | 'water' {
  const { composition, food, temperatureC } = point.product
  const waterPct = composition?.waterPct ?? materials.get(food)?.food?.proximate?.waterPct ?? 0
  return waterPct >= figures['wet-food-water'].value && temperatureC > 0 ? 'water' : 'air'
}

/** The stream for this food, with the calculations behind its speed. */
export function separatorFor(machine: DensityMachine, point: Point, trail: Trail): Separator {
  const usual = archetypes.get('density-separator')
  const usualRatio = usual?.family === 'density' ? usual.velocityRatio : 1
  const medium = mediumOf(point)
  const fluid = fluids[medium]
  const ratio = machine.velocityRatio ?? usualRatio
  const { grainMm, densityGPerCm3 } = point.product
  const speedAt = (psi: number) => settlingMPerS(grainMm, densityGPerCm3, fluid, psi)
  const shapeId: FigureId = `grain-sphericity-${grainShapes.get(point.product.food) ?? 'unknown'}`
  const { value, range } = figures[shapeId]
  const foodSpeeds = [speedAt(range[0]), speedAt(value), speedAt(range[1])] as const
  const food = trail.add('food-speed', {
    label: `settling speed of the food in ${fluid.label}`,
    symbol: 'v_food',
    value: asRange(foodSpeeds[0], foodSpeeds[2]),
    unit: 'm/s',
    formula: 'terminal velocity from d, ρ, ψ: C(Re)·Re² = 4/3·d*³ and the shape ratio; negative: it floats',
    inputs: [
      trail.entered('grain', 'grain size of the food', 'd', grainMm, 'mm'),
      trail.entered('food-density', 'density of the food', 'ρ', densityGPerCm3, 'g/cm³'),
      trail.figure(shapeId),
      trail.add('fluid', {
        label: fluid.label,
        symbol: 'ρ_f, μ',
        value: `${fluid.densityKgPerM3} kg/m³, ${fluid.viscosityPaS} Pa·s`,
        formula: medium === 'water' ? 'wet food above 0 °C: washed' : 'dry or frozen food: in air',
        inputs: [trail.figure('wet-food-water')],
        sources: [fluid.source],
      }),
    ],
    sources: ['haider-levenspiel'],
  })
  const ratioStep = trail.add('ratio', {
    label: 'velocity ratio that is parted',
    symbol: 'r',
    value: ratio,
    formula: machine.velocityRatio === undefined ? 'usual of the class' : 'given by the machine',
    sources: usual?.sources ?? [],
  })
  return {
    fluid,
    medium,
    ratio,
    foodDensityGPerCm3: densityGPerCm3,
    foodSphericity: value,
    foodSpeeds,
    steps: { food, ratio: ratioStep },
  }
}

/**
 * Good product beyond the cut, worst and best: grains whose speed is off the middle by more than r, on one
 * side (best) or both (worst). In air and water large grains obey v ∝ √d, so the spread of ln v is half that of
 * ln d, joined with the unevenness of the stream.
 */
export function grainsBeyondCut(ratio: number, grainSpread: readonly [number, number], blur: number) {
  const beyond = (spread: number) => normalUpperTail(Math.log(ratio) / Math.hypot(blur, spread / 2))
  return [beyond(grainSpread[0]), Math.min(1, 2 * beyond(grainSpread[1]))] as const
}
