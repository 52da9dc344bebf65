import type { Contaminant } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import type { FragmentSizes, PieceShape } from './fragment-sizes.ts'

/** Median length and factor until a person who saw the finds says better (assumption; no published distribution). */
export const USUAL_MEDIAN_MM = 4
export const USUAL_FACTOR = 2

const chunk = (share: number): PieceShape => ({ name: 'chunks', share, perLength: 0.6 })

/** Shapes by kind of material: share, and equivalent ball ÷ longest length (assumptions, no source). */
const SHAPES: Readonly<Record<string, readonly PieceShape[]>> = {
  metal: [chunk(0.7), { name: 'slivers', share: 0.3, perLength: 0.15 }],
  glass: [chunk(0.5), { name: 'splinters', share: 0.5, perLength: 0.25 }],
  bone: [chunk(0.6), { name: 'splinters', share: 0.4, perLength: 0.25 }],
}

/**
 * The pieces of a contaminant until somebody knows better. Balls stand for chunks and slivers by kind; a wire or
 * flake keeps the proportions of the one in the brief: its size ÷ its longest length.
 */
export function usualFragments(contaminant: Contaminant, sizeMm: number | null): FragmentSizes {
  return {
    medianMm: USUAL_MEDIAN_MM,
    factor: USUAL_FACTOR,
    shapes: shapesOf(contaminant, sizeMm),
  }
}

function shapesOf({ material, shape, lengthMm, faceMm2 }: Contaminant, sizeMm: number | null) {
  const longest =
    shape === 'wire' ? lengthMm : shape === 'flake' && faceMm2 !== null ? Math.sqrt(2 * faceMm2) : null
  if (longest !== null && sizeMm !== null)
    return [
      { name: shape === 'wire' ? 'wires' : 'flakes', share: 1, perLength: Math.min(1, sizeMm / longest) },
    ]
  return SHAPES[materials.get(material)?.kind ?? ''] ?? [chunk(1)]
}
