import type { Contaminant } from '../../contract/index.ts'
import { gaussLegendre } from '../../numerics/gauss-legendre.ts'
import { chanceOf, type Scene, type SeenPiece } from './scene.ts'

/**
 * Chance of finding a flake of a thickness, averaged over random orientations (cos θ even over 0 to 1).
 * Tilted, the beam crosses thickness/cos θ, at most the chord of the disc, and sees the area that keeps the
 * volume; lying flat (the sizes elsewhere) is the weak case. Thin-disc approximation, ours.
 */
export function chanceAnyOrientation(
  scene: Scene,
  seen: SeenPiece,
  contaminant: Contaminant,
  thicknessMm: number,
): number {
  const face = contaminant.faceMm2!
  const longestMm = (Math.PI / 2) * Math.sqrt(face / Math.PI)
  const rule = gaussLegendre(16)
  let sum = 0
  for (let i = 0; i < rule.nodes.length; i++) {
    const cosine = (rule.nodes[i]! + 1) / 2
    const through = Math.max(thicknessMm, Math.min(thicknessMm / cosine, longestMm))
    const tilted = { ...seen, faceMm2: (face * thicknessMm) / through }
    sum += (rule.weights[i]! / 2) * chanceOf(scene, tilted, through)
  }
  return sum
}
