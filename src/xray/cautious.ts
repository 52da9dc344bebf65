import type { Contaminant, Point } from '../contract/index.ts'
import type { PackInBeam } from './channels.ts'
import { spreadAttenuation } from './contaminant-spread.ts'
import type { XrayBuild } from './exposure.ts'
import { PRACTICE } from './practice.ts'
import { CHANCE_NINE_IN_TEN, looksLikeVoid, objectIn, type Scene, setScene, sizeAt } from './scene.ts'
import { ASSUMPTION_RANGES, ENSEMBLE, type Variation } from './variation.ts'

/** The ensemble's scenes at one setting: one image per draw of the assumptions, shared by all contaminants. */
export interface EnsembleScene {
  readonly variation: Variation
  readonly scene: Scene
}

/** Sets all scenes of the ensemble with the practice constants. */
export function ensembleScenes(
  build: XrayBuild,
  point: Point,
  pack: PackInBeam,
  setting: { readonly kV: number; readonly mA: number },
): EnsembleScene[] {
  return ENSEMBLE.map((variation) => ({
    variation,
    scene: setScene(build, point, pack, setting, PRACTICE, variation),
  }))
}

/** Share of the draws that must do better than the size promised. */
export const UNFAVOURABLE = 0.9

/** Linear quantile of sizes in which null (not findable) counts as larger than any size. */
export function sizeQuantile(sizes: readonly (number | null)[], q: number): number | null {
  const sorted = sizes.map((s) => s ?? Number.POSITIVE_INFINITY).sort((a, b) => a - b)
  const position = q * (sorted.length - 1)
  const low = sorted[Math.floor(position)]!
  const high = sorted[Math.ceil(position)]!
  if (high === Number.POSITIVE_INFINITY) return null
  return low + (high - low) * (position - Math.floor(position))
}

/** Assumption whose coordinate goes most closely with the log of the size (squared correlation over the draws). */
function widestAssumption(variations: readonly Variation[], sizes: readonly (number | null)[]): string {
  let widest = ''
  let most = 0
  const rows = variations.flatMap((v, i) => (sizes[i] == null ? [] : [{ v, y: Math.log(sizes[i]!) }]))
  if (rows.length < 8) return widest
  const meanY = rows.reduce((sum, r) => sum + r.y, 0) / rows.length
  for (const { key, label } of ASSUMPTION_RANGES) {
    const meanX = rows.reduce((sum, r) => sum + r.v[key], 0) / rows.length
    let xy = 0
    let xx = 0
    for (const r of rows) {
      xy += (r.v[key] - meanX) * (r.y - meanY)
      xx += (r.v[key] - meanX) ** 2
    }
    const explained = xx > 0 ? (xy * xy) / xx : 0
    if (explained > most) {
      most = explained
      widest = label
    }
  }
  return widest
}

function sizeInDraw(
  { variation, scene }: EnsembleScene,
  contaminant: Contaminant,
  point: Point,
  nearMm: number,
) {
  const mu = spreadAttenuation(contaminant.material, variation.contaminant)
  if (looksLikeVoid(scene, mu, contaminant.placement) && !point.product.voidFree) return null
  return sizeAt(scene, objectIn(scene, contaminant, mu), CHANCE_NINE_IN_TEN, nearMm)
}

/** Promise no better than: the unfavourable decile over the ensemble, never below the expected size. */
export function cautiousSize(
  scenes: readonly EnsembleScene[],
  contaminant: Contaminant,
  point: Point,
  expectedMm: number | null,
): { cautiousMm: number | null; widest: string } {
  if (expectedMm === null) return { cautiousMm: null, widest: '' }
  const sizes = scenes.map((draw) => sizeInDraw(draw, contaminant, point, expectedMm))
  const quantile = sizeQuantile(sizes, UNFAVOURABLE)
  return {
    cautiousMm: quantile === null ? null : Math.max(expectedMm, quantile),
    widest: widestAssumption(
      scenes.map((s) => s.variation),
      sizes,
    ),
  }
}
