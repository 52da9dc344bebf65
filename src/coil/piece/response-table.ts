import { SIZE_COUNT, sizeAtMm } from './size-grid.ts'
import { type Orientation, type TargetMetal, type TargetShape, targetPolarizability } from './target.ts'

/** Polarizability over the size grid at one frequency, m³. */
export interface ResponseTable {
  readonly re: Float64Array
  readonly im: Float64Array
}

/** Tables kept, oldest out first; a brief with 8 contaminants and 8 frequencies needs 128 at most. */
const KEPT = 512
const tables = new Map<string, ResponseTable>()

function keyOf(
  shape: TargetShape,
  orientation: Orientation,
  metal: TargetMetal,
  frequencyHz: number,
): string {
  const size = shape.kind === 'sphere' ? '' : shape.kind === 'wire' ? shape.lengthMm : shape.faceMm2
  const way = shape.kind === 'sphere' ? '' : orientation
  return `${shape.kind} ${size} ${way} ${metal.conductivitySPerM} ${metal.relativePermeability} ${metal.ferromagnetic} ${frequencyHz}`
}

/**
 * The target's polarizability at every grid size. Depends on nothing but its arguments; the result is kept
 * because product and opening do not enter it and the same pieces are asked for again and again.
 */
export function responseTable(
  shape: TargetShape,
  orientation: Orientation,
  metal: TargetMetal,
  frequencyHz: number,
): ResponseTable {
  const key = keyOf(shape, orientation, metal, frequencyHz)
  const known = tables.get(key)
  if (known) return known
  const re = new Float64Array(SIZE_COUNT)
  const im = new Float64Array(SIZE_COUNT)
  for (let k = 0; k < SIZE_COUNT; k++) {
    const alpha = targetPolarizability(shape, sizeAtMm(k), orientation, metal, frequencyHz)
    re[k] = alpha.re
    im[k] = alpha.im
  }
  const table = { re, im }
  if (tables.size >= KEPT) tables.delete(tables.keys().next().value!)
  tables.set(key, table)
  return table
}
