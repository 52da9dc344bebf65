import type { Contaminant } from '../contract/index.ts'
import { type Material, materials } from '../reference/index.ts'
import { type PieceShape, shapesOf, shapeWords } from './piece-shape.ts'
import type { Trail } from './trail.ts'

/** One thing a contaminant may be: a material of its family in one outline. */
export interface Variant {
  /** Start of the ids of its calculations. */
  readonly id: string
  readonly contaminant: Contaminant
  readonly material: Material
  readonly shape: PieceShape
  /** Calculation that says what the piece is. */
  readonly step: string
}

/** Everything the contaminant may be: each material its word may mean, in each outline. */
export function variantsOf(contaminant: Contaminant, index: number, trail: Trail): readonly Variant[] {
  const named = materials.get(contaminant.material)
  const family = (named?.family ?? []).flatMap((id) => materials.get(id) ?? [])
  const shapes = shapesOf(contaminant)
  return family.flatMap((material) =>
    shapes.map((shape, s): Variant => {
      const id = `c${index}.${material.id}.${s}`
      const step = trail.add(`${id}.piece`, {
        label: `the piece looked at: ${material.label}`,
        value: shapeWords(shape),
        formula:
          contaminant.mustFindMm === null ? 'no size to find given: one of two stand-ins' : 'from the brief',
        inputs: contaminant.mustFindMm === null ? [trail.figure('unsized-piece')] : [],
      })
      return { id, contaminant, material, shape, step }
    }),
  )
}

/** Density of the material with what it may be, g/cm³. */
export const densitiesGPerCm3 = (material: Material): readonly [number, number] =>
  material.densityRange ?? [material.densityGPerCm3, material.densityGPerCm3]
