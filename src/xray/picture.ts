import type { Contaminant, Point, Zone } from '../contract/index.ts'
import type { XraySetting } from './assessment.ts'
import type { XrayBuild } from './beam/exposure.ts'
import type { PackInBeam } from './detector/channels.ts'
import { extrapolationOf } from './extrapolation.ts'
import { cautiousSize, type EnsembleScene, ensembleScenes } from './observer/cautious.ts'
import { IDEAL, PRACTICE } from './observer/practice.ts'
import {
  CHANCE_NINE_IN_TEN,
  crossingOf,
  detectabilityNear,
  looksLikeVoid,
  neededDetectability,
  objectIn,
  type Scene,
  setScene,
  sizeAt,
} from './observer/scene.ts'
import { AS_STATED } from './observer/variation.ts'
import { materialAttenuation } from './places/pack-in-beam.ts'

/** Size found nine times in ten in a scene, mm; null where the piece looks like a void or is not found. */
export function sizeIn(
  scene: Scene,
  contaminant: Contaminant,
  point: Point,
  nearMm?: number | null,
): number | null {
  const mu = materialAttenuation(contaminant.material)
  if (looksLikeVoid(scene, mu, contaminant.placement) && !point.product.voidFree) return null
  return sizeAt(scene, objectIn(scene, contaminant, mu), CHANCE_NINE_IN_TEN, nearMm)
}

/** What an ideal observer of one setting looks at: one scene, or one per view, whose noise is independent. */
export type IdealLook = readonly Scene[]

/**
 * Best possible size: the smallest an ideal observer reaches in any of the looks, d′ of the views of one look added
 * in squares. A look in which the smallest so far is not found cannot be the best one, and is left at that.
 */
export function bestSize(looks: readonly IdealLook[], contaminant: Contaminant, point: Point): number | null {
  const mu = materialAttenuation(contaminant.material)
  return looks.reduce<number | null>((best, look) => {
    const seen = look.filter(
      (scene) => !looksLikeVoid(scene, mu, contaminant.placement) || point.product.voidFree,
    )
    const first = seen[0]
    if (!first) return best
    const needed = Math.min(...seen.map((scene) => neededDetectability(scene, CHANCE_NINE_IN_TEN)))
    const each = seen.map((scene) => detectabilityNear(scene, objectIn(scene, contaminant, mu), needed))
    const dPrime = (sizeMm: number) => Math.hypot(...each.map((of) => of(sizeMm)))
    if (best !== null && dPrime(best) < needed) return best
    const size = crossingOf(first, dPrime, needed, best)
    return best === null || (size !== null && size < best) ? size : best
  }, null)
}

/** Depth ± 10 %, density with attenuation ± 3 %: what the best possible size is uncertain by. */
export const SPREADS = {
  favourable: { ...AS_STATED, height: 0.9, density: 0.97 },
  unfavourable: { ...AS_STATED, height: 1.1, density: 1.03 },
} as const
export type Spread = keyof typeof SPREADS

/** One place of a pack in one picture of it: its scene at the chosen setting, and the sizes found there. */
export interface Picture {
  readonly scene: Scene
  readonly expectedMm: (contaminant: Contaminant, nearMm?: number | null) => number | null
  readonly cautious: (
    contaminant: Contaminant,
    expectedMm: number | null,
  ) => { cautiousMm: number | null; widest: string }
  /** The ideal scene at a setting. */
  readonly idealAt: (setting: XraySetting) => Scene
  /** The same at the setting chosen, with depth and density at one end of their spread. */
  readonly idealWith: (spread: Spread) => Scene
}

/** Scenes are set when first asked for: most places are looked at for a few contaminants only. */
export function pictureOf(build: XrayBuild, point: Point, pack: PackInBeam, chosen: XraySetting): Picture {
  const { factor } = extrapolationOf(point, build)
  let ensemble: EnsembleScene[] | null = null
  const ideal = new Map<number, Scene>()
  const spreadScenes = new Map<Spread, Scene>()
  const scene = setScene(build, point, pack, chosen, PRACTICE)
  return {
    scene,
    expectedMm: (contaminant, nearMm) => sizeIn(scene, contaminant, point, nearMm),
    cautious: (contaminant, expectedMm) => {
      if (expectedMm === null) return { cautiousMm: null, widest: '' }
      ensemble ??= ensembleScenes(build, point, pack, chosen)
      const { cautiousMm, widest } = cautiousSize(ensemble, contaminant, point, expectedMm)
      return { cautiousMm: cautiousMm && cautiousMm * factor, widest }
    },
    idealAt: (setting) => {
      const kept = ideal.get(setting.kV) ?? setScene(build, point, pack, setting, IDEAL)
      ideal.set(setting.kV, kept)
      return kept
    },
    idealWith: (spread) => {
      const kept = spreadScenes.get(spread) ?? setScene(build, point, pack, chosen, IDEAL, SPREADS[spread])
      spreadScenes.set(spread, kept)
      return kept
    },
  }
}

/** Sizes of a place at which nothing is found. */
export const NOT_FOUND: Zone['sizes'] = { bestMm: null, expectedMm: null, cautiousMm: null }
