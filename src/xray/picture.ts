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
  LARGEST_MM,
  looksLikeVoid,
  marginOf,
  objectIn,
  type Scene,
  type SeenPiece,
  setScene,
  sizeAt,
} from './observer/scene.ts'
import { thresholdOfOne } from './observer/threshold.ts'
import { AS_STATED } from './observer/variation.ts'
import { materialAttenuation } from './places/pack-in-beam.ts'

const pieces = new WeakMap<Scene, Map<Contaminant, SeenPiece>>()

/** A contaminant in a scene; its thresholds in grain are worked out once. */
export function pieceIn(scene: Scene, contaminant: Contaminant): SeenPiece {
  const here = pieces.get(scene) ?? new Map<Contaminant, SeenPiece>()
  pieces.set(scene, here)
  const piece =
    here.get(contaminant) ?? objectIn(scene, contaminant, materialAttenuation(contaminant.material))
  here.set(contaminant, piece)
  return piece
}

/** Whether a contaminant can be told from a void in a scene. */
function visible(scene: Scene, contaminant: Contaminant, point: Point): boolean {
  const mu = materialAttenuation(contaminant.material)
  return point.product.voidFree || !looksLikeVoid(scene, mu, contaminant.placement)
}

/** Size found nine times in ten in a scene, mm; null where the piece looks like a void or is not found. */
export function sizeIn(
  scene: Scene,
  contaminant: Contaminant,
  point: Point,
  nearMm?: number | null,
  piece = pieceIn(scene, contaminant),
): number | null {
  return visible(scene, contaminant, point) ? sizeAt(scene, piece, CHANCE_NINE_IN_TEN, nearMm) : null
}

/** What an ideal observer of one setting looks at: one scene, or one per view, whose noise is independent. */
export type IdealLook = readonly Scene[]

/**
 * Best possible size: the smallest an ideal observer reaches in any of the looks, d′ of the views of one look added
 * in squares, each filter with its own threshold. Thresholds in grain are those of the look whose lift is 1, lifted
 * for the others; those of the look that turns out best are its own. A look in which the smallest so far is not found
 * cannot be the best one, and is left at that.
 */
export function bestSize(
  looks: readonly IdealLook[],
  lifts: readonly number[],
  contaminant: Contaminant,
  point: Point,
  nearMm: number | null,
): number | null {
  const mu = materialAttenuation(contaminant.material)
  const seen = looks.map((look) => look.filter((scene) => visible(scene, contaminant, point)))
  const usual = lifts.indexOf(1)
  const base = seen[usual]?.length ? usual : seen.findIndex((views) => views.length > 0)
  if (base < 0) return null
  const own = (views: readonly Scene[]) => (sizeMm: number) =>
    Math.min(...views.map((scene) => pieceIn(scene, contaminant).threshold(sizeMm)))
  const marginIn = (views: readonly Scene[], threshold: (sizeMm: number) => number) => {
    const each = views.map((scene) =>
      marginOf(scene, objectIn(scene, contaminant, mu, threshold), CHANCE_NINE_IN_TEN),
    )
    return (sizeMm: number) => Math.hypot(...each.map((of) => of(sizeMm)))
  }
  const lent = own(seen[base]!)
  const first = seen[base]!
  const start =
    nearMm ??
    crossingOf(
      first[0]!,
      marginIn(first, () => first[0]!.thresholdZ),
    )
  let best = start === null ? null : crossingOf(first[0]!, marginIn(first, lent), start)
  let at = base
  seen.forEach((views, s) => {
    if (s === base || views.length === 0) return
    const margin = marginIn(views, (sizeMm) => (lifts[s]! / lifts[base]!) * lent(sizeMm))
    if (best !== null && margin(best) < 1) return
    const size = crossingOf(views[0]!, margin, best)
    if (size === null || (best !== null && size >= best)) return
    best = size
    at = s
  })
  if (best === null || at === base) return best
  const lift = liftBetween(seen[base]!, seen[at]!, contaminant, best)
  return crossingOf(
    seen[at]![0]!,
    marginIn(seen[at]!, (sizeMm) => lift * lent(sizeMm)),
    best,
  )
}

/** Threshold of one contaminant at a size in one look over that in another. */
function liftBetween(from: IdealLook, to: IdealLook, contaminant: Contaminant, sizeMm: number): number {
  const least = (views: IdealLook) =>
    Math.min(
      ...views.map((scene) => {
        const { observer, tail, thresholdZ } = scene
        return thresholdOfOne(observer, pieceIn(scene, contaminant), sizeMm, tail, thresholdZ)
      }),
    )
  return least(to) / least(from)
}

/** Size in a scene that differs little from one in which it is known: thresholds are carried over from there. */
export function sizeBeside(
  known: Scene,
  knownMm: number,
  scene: Scene,
  contaminant: Contaminant,
  point: Point,
): number | null {
  if (!visible(scene, contaminant, point)) return null
  const lift = liftBetween([known], [scene], contaminant, knownMm)
  const { threshold } = pieceIn(known, contaminant)
  const piece = { ...pieceIn(scene, contaminant), threshold: (sizeMm: number) => lift * threshold(sizeMm) }
  return crossingOf(scene, marginOf(scene, piece, CHANCE_NINE_IN_TEN), knownMm)
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
export function pictureOf(
  build: XrayBuild,
  point: Point,
  pack: PackInBeam,
  chosen: XraySetting,
  scene = setScene(build, point, pack, chosen, PRACTICE),
): Picture {
  const { factor } = extrapolationOf(point, build)
  let ensemble: EnsembleScene[] | null = null
  const ideal = new Map<number, Scene>()
  const spreadScenes = new Map<Spread, Scene>()
  return {
    scene,
    expectedMm: (contaminant, nearMm) => sizeIn(scene, contaminant, point, nearMm),
    cautious: (contaminant, expectedMm) => {
      if (expectedMm === null) return { cautiousMm: null, widest: '' }
      ensemble ??= ensembleScenes(build, point, pack, chosen, scene)
      const { threshold } = pieceIn(scene, contaminant)
      const { cautiousMm, widest } = cautiousSize(ensemble, contaminant, threshold, point, expectedMm)
      const widened = cautiousMm && cautiousMm * factor
      return { cautiousMm: widened !== null && widened <= LARGEST_MM ? widened : null, widest }
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
