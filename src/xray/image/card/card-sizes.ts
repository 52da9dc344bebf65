import type { Contaminant } from '../../../contract/index.ts'
import { materials } from '../../../reference/index.ts'

/** Sizes of the usual non-metal test pieces, mm (common practice, no source). */
export const NON_METAL_SIZES_MM: readonly number[] = [2, 3, 4, 5, 6, 7]
/** Metal pieces go up in steps of 0.1 mm (common practice, no source). */
export const METAL_STEP_MM = 0.1
const FLAKE_STEP_MM = 0.5
const FEWEST = 7
const MOST = 12
const SMALLEST_STEPS = 2

/**
 * Sizes a test card carries for a contaminant, ascending, mm. Metal spheres and wires: steps of 0.1 mm around
 * the sizes expected of the machines compared (two below the smallest, three above the largest; a wider step
 * where that makes more than 12). Flakes: the same in steps of 0.5 mm of thickness, metal 0.1. Everything
 * else: 2 to 7 mm.
 */
export function cardSizes(contaminant: Contaminant, expectedMm: readonly (number | null)[]): number[] {
  const metal = materials.get(contaminant.material)?.kind === 'metal'
  if (!metal && contaminant.shape !== 'flake') return [...NON_METAL_SIZES_MM]
  const known = expectedMm.filter((mm): mm is number => mm !== null)
  const usual = contaminant.mustFindMm ?? 1
  const from = known.length > 0 ? Math.min(...known) : usual
  const to = known.length > 0 ? Math.max(...known) : usual
  let step = metal ? METAL_STEP_MM : FLAKE_STEP_MM
  while ((to - from) / step + 6 > MOST) step *= 2
  const first = Math.max(SMALLEST_STEPS, Math.floor(from / step + 1e-9) - 2)
  const last = Math.max(first + FEWEST - 1, Math.ceil(to / step - 1e-9) + 3)
  return Array.from({ length: last - first + 1 }, (_, i) => Math.round((first + i) * step * 100) / 100)
}
