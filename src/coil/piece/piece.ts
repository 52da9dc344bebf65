import type { Contaminant } from '../../contract/index.ts'
import { type MetalElectrical, metals } from '../../reference/electrical.ts'
import { materials } from '../../reference/materials.ts'
import type { TargetMetal, TargetShape } from './target.ts'

/** A contaminant the coil can answer to. */
export interface Piece {
  readonly electrical: MetalElectrical
  readonly metal: TargetMetal
  /** Every metal the word may mean, itself included. */
  readonly family: readonly TargetMetal[]
  /** A ferromagnetic metal at the two ends of the permeability it may have; none for others. */
  readonly permeabilities: readonly TargetMetal[]
  readonly shape: TargetShape
  /** Inside a closed layer of the pack, so weakened by it. */
  readonly inside: boolean
  readonly mustFindMm: number | null
}

/** Length of a wire and face of a flake where the brief gives none (assumption). */
const USUAL = { wireLengthMm: 10, flakeFaceMm2: 25 } as const

export const targetMetal = (row: MetalElectrical): TargetMetal => ({
  conductivitySPerM: row.conductivitySPerM,
  relativePermeability: row.relativePermeability,
  ferromagnetic: row.magnetism === 'ferromagnetic',
})

const atEnds = (row: MetalElectrical): readonly TargetMetal[] =>
  row.magnetism === 'ferromagnetic'
    ? row.permeabilityRange.map((relativePermeability) => ({ ...targetMetal(row), relativePermeability }))
    : []

function shapeOf(contaminant: Contaminant): TargetShape {
  switch (contaminant.shape) {
    case 'sphere':
      return { kind: 'sphere' }
    case 'wire':
      return { kind: 'wire', lengthMm: contaminant.lengthMm ?? USUAL.wireLengthMm }
    case 'flake':
      return { kind: 'flake', faceMm2: contaminant.faceMm2 ?? USUAL.flakeFaceMm2 }
  }
}

/** The contaminant as a piece of metal; null where no electrical constants exist (not a metal). */
export function pieceOf(contaminant: Contaminant): Piece | null {
  const electrical = metals.get(contaminant.material)
  if (!electrical) return null
  const ids = materials.get(contaminant.material)?.family ?? [contaminant.material]
  const family = ids.flatMap((id) => metals.get(id) ?? [])
  return {
    electrical,
    metal: targetMetal(electrical),
    family: (family.length > 0 ? family : [electrical]).map(targetMetal),
    permeabilities: (family.length > 0 ? family : [electrical]).flatMap(atEnds),
    shape: shapeOf(contaminant),
    inside: contaminant.placement === 'inside',
    mustFindMm: contaminant.mustFindMm,
  }
}

/** True for shapes that answer differently along and across the travel. */
export const hasDirection = (shape: TargetShape): boolean => shape.kind !== 'sphere'
