import type { Brief } from '../../contract/index.ts'
import { type FactSheet, FactWriter } from './fact-sheet.ts'
import { isBrittle, magnetismOf, testPieceOf } from './kinds/contaminant-metal.ts'
import { wayThrough } from './kinds/flow-controls.ts'
import { isHardOrSharp, naturalPart, saysRemoved } from './kinds/natural-parts.ts'
import type { Materials } from './kinds/pack-kind.ts'
import { placeId } from './place-id.ts'

/** Facts of one contaminant, before any machine looks at it. */
export function factsForContaminant(brief: Brief, index: number, materials: Materials): FactSheet {
  const contaminant = brief.contaminants[index]
  if (!contaminant)
    throw new Error(`no contaminant ${index}; the brief has 0 to ${brief.contaminants.length - 1}`)
  const material = materials.get(contaminant.material)
  const path = `contaminants.${index}`
  const write = new FactWriter(placeId({ contaminant: index }), brief)
  write.fromBrief('contaminant.label', material?.label ?? contaminant.material, `${path}.material`)
  write.fromBrief('contaminant.material', contaminant.material, `${path}.material`)
  write.fromBrief('contaminant.shape', contaminant.shape, `${path}.shape`)
  if (contaminant.lengthMm !== null)
    write.fromBrief('contaminant.lengthMm', contaminant.lengthMm, `${path}.lengthMm`)
  write.fromBrief('contaminant.placement', contaminant.placement, `${path}.placement`)
  if (contaminant.mustFindMm !== null)
    write.fromBrief('contaminant.mustFindMm', contaminant.mustFindMm, `${path}.mustFindMm`)
  write.fromBrief('contaminant.basis', contaminant.basis, `${path}.basis`)
  write.fromBrief('contaminant.severity', contaminant.severity, `${path}.severity`)
  const percent = (element: string) => (material ? 100 * (material.massFractions[element] ?? 0) : null)
  write.computed('contaminant.kind', material?.kind ?? null)
  write.computed('contaminant.densityGPerCm3', material?.densityGPerCm3 ?? null)
  write.computed('contaminant.calciumPct', percent('Ca'))
  write.computed('contaminant.bariumPct', percent('Ba'))
  write.computed('contaminant.metal', magnetismOf(contaminant.material) !== 'no metal')
  write.computed('contaminant.magnetism', magnetismOf(contaminant.material))
  write.computed('contaminant.testPiece', testPieceOf(contaminant.material))
  write.computed('contaminant.brittle', isBrittle(contaminant.material, material?.kind))
  write.computed('contaminant.hardOrSharp', material ? isHardOrSharp(material) : null)
  const { entersAt, fromAMesh, magnetBehind, sieveBehindMm } = wayThrough(brief, index)
  if (entersAt.length > 0) write.computed('contaminant.entersAt', entersAt.join(', '))
  write.computed('contaminant.fromAMesh', fromAMesh)
  write.computed('contaminant.magnetBehind', magnetBehind)
  if (sieveBehindMm !== null) write.computed('contaminant.sieveBehindMm', sieveBehindMm)
  const part = naturalPart(brief.given.product.food, contaminant.material, material?.kind)
  write.computed('contaminant.naturalPart', part)
  write.computed('contaminant.labelSaysRemoved', part === null ? null : saysRemoved(part, brief.labelClaims))
  return write.sheet()
}
