import { figures, sieveOpeningsMm } from '../../reference/separation.ts'
import { type GrainSizes, largestGrainMm } from './grain-sizes.ts'

/** The opening a product needs, and the grain that asks for it, mm. */
export interface MeshChoice {
  readonly largestGrainMm: number
  readonly meshMm: number
}

/**
 * Smallest nominal opening that clears the largest product particle: a ≥ clearance · largest grain. Above
 * the list of openings the bare product of the two is taken. Sources: `iso-565`, `sieve-practice`.
 */
export function chooseMesh(grains: GrainSizes): MeshChoice {
  const largest = largestGrainMm(grains, figures['largest-grain-tail'].value)
  const needed = largest * figures['mesh-clearance'].value
  return {
    largestGrainMm: largest,
    meshMm: sieveOpeningsMm.mm.find((opening) => opening >= needed) ?? needed,
  }
}
