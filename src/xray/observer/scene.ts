import type { Contaminant, Point } from '../../contract/index.ts'
import { normalChance, normalUpperQuantile } from '../../numerics/normal.ts'
import { objectPixelMm, openBeam, type XrayBuild } from '../beam/exposure.ts'
import { type Channels, channelsBehind, type PackInBeam } from '../detector/channels.ts'
import { detectability, detectabilityOf, detectabilityOfOne } from './detectability.ts'
import { crossingNear, lastCrossing } from './last-crossing.ts'
import { type Observer, prepareObserver } from './observer.ts'
import type { PracticeConstants } from './practice.ts'
import { type DisplacedFood, type SeenObject, seeObject } from './seen-object.ts'
import {
  bankIn,
  bankThreshold,
  hasGrains,
  ownThreshold,
  type Threshold,
  tailPerPlace,
  thresholdZ,
} from './threshold.ts'
import type { Variation } from './variation.ts'

/** Largest size the model speaks of, mm. */
export const LARGEST_MM = 25

/** Normal deviates of the chances that name the sizes. */
export const CHANCE_HALF = 0
export const CHANCE_NINE_IN_TEN = normalUpperQuantile(0.1)
export const CHANCE_SURE = normalUpperQuantile(0.005)

export { positionsOf } from './threshold.ts'

/** One image of one point: channels, noise and the rule that turns d′ into a chance. */
export interface Scene {
  readonly build: XrayBuild
  readonly channels: Channels
  readonly pack: PackInBeam
  /** The food as a piece inside displaces it. */
  readonly food: DisplacedFood
  readonly observer: Observer
  /** Share of a piece's signal that the evaluation keeps. */
  readonly signal: number
  readonly gatheredWireMm: number
  /** Chance of a false reject at one place, and the threshold normal noise would need for it. */
  readonly tail: number
  readonly thresholdZ: number
  /** Threshold that all filters of the machine share at least: that of the fixed bank, or z where each has its own. */
  readonly commonThreshold: () => number
  /** Size of the coarsest filter the machine runs, mm; without end where every piece has its own. */
  readonly coarsestFilterMm: number
  readonly limitMm: number
}

/** A pack with the draw's factors on it. */
function varied(pack: PackInBeam, v: Variation): PackInBeam {
  return {
    ...pack,
    solidMuPerMm: pack.solidMuPerMm.map((mu) => mu * v.density),
    pathMm: pack.pathMm * v.height,
    unevennessMm: pack.unevennessMm * v.unevenness,
    parts: pack.parts.map((part) => ({ ...part, unevennessMm: part.unevennessMm * v.unevenness })),
  }
}

/** Sets the scene at a tube voltage and current for a set of constants, optionally with one draw of the assumptions. */
export function setScene(
  build: XrayBuild,
  point: Point,
  pack: PackInBeam,
  setting: { readonly kV: number; readonly mA: number },
  constants: PracticeConstants,
  variation?: Variation,
): Scene {
  const a = objectPixelMm(build, point.speedMPerMin)
  const seen = variation ? varied(pack, variation) : pack
  const open = openBeam(build, setting.kV, setting.mA * (variation?.dose ?? 1), point.speedMPerMin)
  const channels = channelsBehind(open, seen, build.channels, a)
  const observer = prepareObserver(channels, seen, {
    objectPixelMm: a,
    blurPixels: build.blurPixels * (variation?.blur ?? 1),
    textureScale: variation
      ? Math.max(constants.textureScale, variation.textureScale)
      : constants.textureScale,
    compositionResidual: constants.compositionResidual,
  })
  const food = { muPerMm: seen.solidMuPerMm.map((mu) => mu * seen.packing), depthMm: seen.pathMm }
  const [tail, z] = [tailPerPlace(point, build), thresholdZ(point, build)]
  let common: number | undefined
  return {
    build,
    channels,
    pack: seen,
    food,
    observer,
    signal: variation?.signal ?? 1,
    gatheredWireMm: constants.gatheredWireMm,
    tail,
    thresholdZ: z,
    commonThreshold: () => {
      common ??= constants.thresholds === 'one for all' ? bankThreshold(observer, food, tail, z) : z
      return common
    },
    coarsestFilterMm:
      constants.thresholds === 'one for all' && hasGrains(seen)
        ? bankIn(observer)[0]!
        : Number.POSITIVE_INFINITY,
    limitMm: LARGEST_MM,
  }
}

/** Food that a contaminant at a placement displaces; null on the pack, where it displaces none. */
export function displacedFood(pack: PackInBeam, placement: 'inside' | 'outside'): DisplacedFood | null {
  if (placement === 'outside') return null
  return { muPerMm: pack.solidMuPerMm.map((mu) => mu * pack.packing), depthMm: pack.pathMm }
}

/** What the contaminant replaces taken off: μ alone outside the food, μ − packing·μ_solid inside. */
export function differenceInBeam(
  pack: PackInBeam,
  contaminantMu: Float64Array,
  placement: 'inside' | 'outside',
): Float64Array {
  const food = displacedFood(pack, placement)
  return food ? contaminantMu.map((mu, i) => mu - food.muPerMm[i]!) : contaminantMu
}

/** Attenuation weighted in the first channel, 1/mm. */
export function firstChannelMu(channels: Channels, muPerMm: Float64Array): number {
  const w = channels.weights[0]
  if (!w) return 0
  let sum = 0
  for (let i = 0; i < channels.bins; i++) sum += w[i]! * muPerMm[i]!
  return sum
}

/** Lies inside and attenuates no more than the solid food: a void, a bubble or a fold looks the same. */
export function looksLikeVoid(
  scene: Scene,
  contaminantMu: Float64Array,
  placement: 'inside' | 'outside',
): boolean {
  if (placement === 'outside' || scene.channels.count === 0) return false
  return firstChannelMu(scene.channels, contaminantMu) <= scene.channels.foodMu[0]!
}

/** A contaminant as a scene's observer sees it, with the threshold its filters stand at. */
export interface SeenPiece extends SeenObject {
  readonly threshold: Threshold
}

/** The contaminant as this scene's observer sees it. `threshold`: of a similar scene; its own otherwise. */
export function objectIn(
  scene: Scene,
  contaminant: Contaminant,
  contaminantMu: Float64Array,
  threshold?: Threshold,
): SeenPiece {
  const object = seeObject(
    scene.channels,
    contaminantMu,
    contaminant.placement === 'inside' ? scene.food : null,
    contaminant.shape,
    contaminant.lengthMm ?? 0,
    scene.gatheredWireMm,
    contaminant.faceMm2 ?? 0,
  )
  const { observer, tail, thresholdZ, commonThreshold, coarsestFilterMm } = scene
  return {
    ...object,
    threshold:
      threshold ?? ownThreshold(observer, object, tail, thresholdZ, commonThreshold, coarsestFilterMm),
  }
}

/** Probability of detection (chance of finding) a piece of a size: Φ(d′ − T). */
export function chanceOf(scene: Scene, piece: SeenPiece, sizeMm: number): number {
  const threshold = piece.threshold(sizeMm)
  return normalChance((marginOf(scene, piece, CHANCE_HALF)(sizeMm) - 1) * threshold)
}

/**
 * d′ over the d′ that gives a chance (as a normal deviate), as a function of size: d′/(T + deviate). Fine where it
 * decides: for large objects near 1.
 */
export function marginOf(scene: Scene, piece: SeenPiece, deviate: number): (sizeMm: number) => number {
  const dPrime = detectabilityOf(scene.observer, piece)
  const { large, finer } = scene.observer
  const { signal } = scene
  return (sizeMm) => {
    const needed = (piece.threshold(sizeMm) + deviate) / signal
    const usual = dPrime(sizeMm) / needed
    return sizeMm > large.fromMm && Math.abs(Math.log(usual)) < large.offBy
      ? detectability(finer(), piece, sizeMm) / needed
      : usual
  }
}

/** The same at one size, for ordering similar scenes: of the perfect object, which carries most of the work once. */
export function roughMargin(scene: Scene, piece: SeenPiece, deviate: number, sizeMm: number): number {
  const needed = (piece.threshold(sizeMm) + deviate) / scene.signal
  return detectabilityOfOne(scene.observer, piece, sizeMm) / needed
}

/**
 * Size above which the margin stays at 1 or above; null beyond the model's limit.
 * `nearMm`: a size of a similar scene or chance to start from.
 */
export function crossingOf(
  scene: Scene,
  margin: (sizeMm: number) => number,
  nearMm?: number | null,
): number | null {
  if (scene.channels.count === 0) return null
  return nearMm ? crossingNear(margin, 1, scene.limitMm, nearMm) : lastCrossing(margin, 1, scene.limitMm)
}

/**
 * Size above which every size has at least the chance (normal deviate) asked; null beyond the model's limit.
 * `nearMm`: a size of a similar scene or chance to start from.
 */
export function sizeAt(
  scene: Scene,
  piece: SeenPiece,
  deviate: number,
  nearMm?: number | null,
): number | null {
  // The least threshold costs nothing to ask: it says where to look, or that there is nothing to find.
  const least = { ...piece, threshold: scene.commonThreshold }
  const near = nearMm ?? lastCrossing(marginOf(scene, least, deviate), 1, scene.limitMm)
  return near === null ? null : crossingOf(scene, marginOf(scene, piece, deviate), near)
}
