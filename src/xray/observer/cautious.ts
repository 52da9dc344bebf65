import type { Contaminant, Point } from '../../contract/index.ts'
import type { XrayBuild } from '../beam/exposure.ts'
import type { PackInBeam } from '../detector/channels.ts'
import { spreadAttenuation } from './contaminant-spread.ts'
import { USUAL_POWER } from './last-crossing.ts'
import { PRACTICE } from './practice.ts'
import {
  CHANCE_NINE_IN_TEN,
  crossingOf,
  looksLikeVoid,
  marginOf,
  objectIn,
  roughMargin,
  type Scene,
  setScene,
} from './scene.ts'
import { liftsByShare } from './similar-scenes.ts'
import type { Threshold } from './threshold.ts'
import { ASSUMPTION_RANGES, ENSEMBLE, type Variation } from './variation.ts'

/** The ensemble's scenes at one setting: one image per draw of the assumptions, shared by all contaminants. */
export interface EnsembleScene {
  readonly variation: Variation
  readonly scene: Scene
  /** Its thresholds over those of the central scene. */
  readonly lift: number
}

/** Sets all scenes of the ensemble with the practice constants. */
export function ensembleScenes(
  build: XrayBuild,
  point: Point,
  pack: PackInBeam,
  setting: { readonly kV: number; readonly mA: number },
  central: Scene,
): EnsembleScene[] {
  const scenes = ENSEMBLE.map((variation) => setScene(build, point, pack, setting, PRACTICE, variation))
  const lifts = liftsByShare(central, scenes)
  return scenes.map((scene, i) => ({ variation: ENSEMBLE[i]!, scene, lift: lifts[i]! }))
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

/** One draw with what it makes of the expected size. */
interface Draw {
  readonly scene: Scene
  /** d′ over what a chance of nine in ten needs, by size; null where the object looks like a void. */
  readonly margin: (() => (sizeMm: number) => number) | null
  /** ln of the margin of the perfect object at the expected size: how much better than needed the draw does there. */
  readonly spare: number
}

function drawOf(
  { variation, scene, lift }: EnsembleScene,
  contaminant: Contaminant,
  central: Threshold,
  point: Point,
  expectedMm: number,
): Draw {
  const mu = spreadAttenuation(contaminant.material, variation.contaminant)
  if (looksLikeVoid(scene, mu, contaminant.placement) && !point.product.voidFree)
    return { scene, margin: null, spare: Number.NEGATIVE_INFINITY }
  const piece = objectIn(scene, contaminant, mu, (sizeMm) => lift * central(sizeMm))
  const spare = Math.log(roughMargin(scene, piece, CHANCE_NINE_IN_TEN, expectedMm))
  return { scene, margin: () => marginOf(scene, piece, CHANCE_NINE_IN_TEN), spare }
}

/** Coordinates of the draws by assumption, in the order of {@link ASSUMPTION_RANGES}. */
const COORDINATES = ASSUMPTION_RANGES.map(({ key }) => ENSEMBLE.map((draw) => draw[key]))

/** Assumption whose coordinate goes most closely with the margin at the expected size (squared correlation). */
function widestAssumption(draws: readonly Draw[]): string {
  const spares = draws.map(({ spare }) => spare)
  let count = 0
  let meanY = 0
  for (const spare of spares)
    if (Number.isFinite(spare)) {
      count++
      meanY += spare
    }
  if (count < 8) return ''
  meanY /= count
  let widest = ''
  let most = 0
  COORDINATES.forEach((x, which) => {
    let meanX = 0
    for (let i = 0; i < x.length; i++) if (Number.isFinite(spares[i])) meanX += x[i]! / count
    let xy = 0
    let xx = 0
    for (let i = 0; i < x.length; i++) {
      if (!Number.isFinite(spares[i])) continue
      const d = x[i]! - meanX
      xy += d * (spares[i]! - meanY)
      xx += d * d
    }
    const explained = xx > 0 ? (xy * xy) / xx : 0
    if (explained > most) {
      most = explained
      widest = ASSUMPTION_RANGES[which]!.label
    }
  })
  return widest
}

/** After so many draws in a row whose size is no larger than the decisive ones, the better ones are left out. */
const NO_LARGER_IN_A_ROW = 4

/**
 * The quantile of the sizes over the draws. Only the largest sizes decide it, so those of the draws that do worst
 * at the expected size are worked out first; of the next ones it is enough to know that their size is no larger.
 */
function quantileOver(draws: readonly Draw[], q: number, nearMm: number): number | null {
  const decisive = draws.length - Math.floor(q * (draws.length - 1))
  const worstFirst = [...draws].sort((a, b) => a.spare - b.spare)
  /** The largest sizes so far, largest first; Infinity: not findable. */
  const largest: number[] = []
  /** ln of what the spread of a piece's size adds to the spare of the perfect object: that of the last one found. */
  let beside = 0
  let noLarger = 0
  for (const { scene, margin: marginOfDraw, spare } of worstFirst) {
    const least = largest.length < decisive ? 0 : largest[decisive - 1]!
    const margin = marginOfDraw?.()
    if (margin && least > 0 && margin(least) >= 1) {
      if (++noLarger === NO_LARGER_IN_A_ROW) break
      continue
    }
    noLarger = 0
    const guess = nearMm * Math.exp(-(spare + beside) / USUAL_POWER)
    const size = margin ? crossingOf(scene, margin, guess) : null
    if (size !== null) beside = USUAL_POWER * Math.log(nearMm / size) - spare
    largest.push(size ?? Number.POSITIVE_INFINITY)
    largest.sort((a, b) => b - a)
    largest.length = Math.min(largest.length, decisive)
  }
  const rest = Array.from({ length: draws.length - largest.length }, () => 0)
  return sizeQuantile(
    [...largest, ...rest].map((s) => (s === Number.POSITIVE_INFINITY ? null : s)),
    q,
  )
}

/**
 * Safe to promise: the unfavourable decile over the ensemble, never below the expected size.
 * central: threshold of the contaminant in the central scene.
 */
export function cautiousSize(
  scenes: readonly EnsembleScene[],
  contaminant: Contaminant,
  central: Threshold,
  point: Point,
  expectedMm: number | null,
): { cautiousMm: number | null; widest: string } {
  if (expectedMm === null) return { cautiousMm: null, widest: '' }
  const draws = scenes.map((scene) => drawOf(scene, contaminant, central, point, expectedMm))
  const quantile = quantileOver(draws, UNFAVOURABLE, expectedMm)
  return {
    cautiousMm: quantile === null ? null : Math.max(expectedMm, quantile),
    widest: widestAssumption(draws),
  }
}
