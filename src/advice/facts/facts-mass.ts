import { heightOfMassMm } from '../../brief/filling.ts'
import type { Point } from '../../contract/index.ts'
import type { FactWriter } from './fact-sheet.ts'

/** What the mass of a pack says of its size. */
export function writeMass(write: FactWriter, point: Point): void {
  const { massG, heightMm, filledMm, product } = point
  write.derived('point.filledPct', (100 * filledMm) / heightMm, 'h/H', 'filled height ÷ height', [
    'point.filledMm',
    'point.heightMm',
  ])
  if (massG === null) return
  const share = heightOfMassMm(point, massG, product.densityGPerCm3, product.packing) / filledMm
  const inputs = ['point.filledMm', 'point.widthMm', 'point.lengthMm', 'food.packing', 'food.densityGPerCm3']
  const formula = 'density × packing × base × filled height'
  write.derived('point.sizeHoldsG', massG / share, 'm', formula, inputs)
  write.derived('point.massOverSizePct', 100 * share, 'm/m', 'mass given ÷ mass that size and packing hold', [
    'point.massG',
    'point.sizeHoldsG',
  ])
}
