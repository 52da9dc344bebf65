import type { Contaminant, Point } from '../../contract/index.ts'
import { normalChance, normalUpperQuantile } from '../../numerics/normal.ts'
import { BIN_COUNT } from '../beam/energy-bins.ts'
import { objectPixelMm, openBeam, type XrayBuild } from '../beam/exposure.ts'
import { type Channels, channelsBehind, type PackInBeam } from '../detector/channels.ts'
import { projectedAreaMm2 } from '../places/pack-in-beam.ts'
import { BEYOND, crossingNear, lastCrossing, walkDown } from './last-crossing.ts'
import { detectability, detectabilityOf, type Observer, prepareObserver } from './observer.ts'
import { efficiencyOf, type PracticeConstants } from './practice.ts'
import { type SeenObject, seeObject } from './seen-object.ts'
import type { Variation } from './variation.ts'

/** Upper limit of a size the model speaks of, mm. */
export const LARGEST_MM = 25

/** Normal deviates of the chances that name the sizes. */
export const CHANCE_HALF = 0
export const CHANCE_NINE_IN_TEN = normalUpperQuantile(0.1)
export const CHANCE_SURE = normalUpperQuantile(0.005)

/** One image of one point: channels, noise and the rule that turns d′ into a chance. */
export interface Scene {
  readonly build: XrayBuild
  readonly channels: Channels
  readonly pack: PackInBeam
  readonly observer: Observer
  readonly efficiency: number
  readonly gatheredWireMm: number
  readonly thresholdZ: number
  readonly limitMm: number
}

/** Independent places in a pack: projected area over the square of two object-plane pixels. */
export function positionsOf(point: Point, build: XrayBuild): number {
  return projectedAreaMm2(point, build.beam) / (2 * objectPixelMm(build, point.speedMPerMin)) ** 2
}

/** Threshold z: upper tail = false rejects per pack / positions; each of two views gets half the false rejects. */
export function thresholdZ(point: Point, build: XrayBuild): number {
  const tail = point.falseRejectsPerPack / build.views / Math.max(1, positionsOf(point, build))
  return normalUpperQuantile(Math.min(0.5, tail))
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
  return {
    build,
    channels,
    pack: seen,
    observer,
    efficiency: efficiencyOf(constants, build.channels.length) * (variation?.efficiency ?? 1),
    gatheredWireMm: constants.gatheredWireMm,
    thresholdZ: thresholdZ(point, build),
    limitMm: Math.min(pack.pathMm / 2, LARGEST_MM),
  }
}

/** What the contaminant replaces taken off: μ alone outside the food, μ − packing·μ_solid inside. */
export function differenceInBeam(
  pack: PackInBeam,
  contaminantMu: Float64Array,
  placement: 'inside' | 'outside',
): Float64Array {
  if (placement === 'outside') return contaminantMu
  const difference = new Float64Array(contaminantMu.length)
  takeFoodOff(difference, pack, contaminantMu, difference.length)
  return difference
}

function takeFoodOff(into: Float64Array, pack: PackInBeam, contaminantMu: Float64Array, bins: number): void {
  const { packing, solidMuPerMm } = pack
  for (let i = 0; i < bins; i++) into[i] = contaminantMu[i]! - packing * solidMuPerMm[i]!
}

/** Working space of {@link objectIn}, used anew by every call. */
const difference = new Float64Array(BIN_COUNT)

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

/** The contaminant as this scene's observer sees it. */
export function objectIn(scene: Scene, contaminant: Contaminant, contaminantMu: Float64Array): SeenObject {
  const inside = contaminant.placement === 'inside'
  if (inside) takeFoodOff(difference, scene.pack, contaminantMu, scene.channels.bins)
  return seeObject(
    scene.channels,
    inside ? difference : contaminantMu,
    contaminant.shape,
    contaminant.lengthMm ?? 0,
    scene.gatheredWireMm,
    contaminant.faceMm2 ?? 0,
  )
}

/** d′ that gives a chance (as a normal deviate) in this scene: (z + deviate) / √η. */
export function neededDetectability(scene: Scene, deviate: number): number {
  return (scene.thresholdZ + deviate) / Math.sqrt(scene.efficiency)
}

/** Probability of detection (chance of finding) an object of a size: Φ(√η·d′ − z). */
export function chanceOf(scene: Scene, object: SeenObject, sizeMm: number): number {
  const d = detectabilityNear(scene, object, neededDetectability(scene, CHANCE_HALF))(sizeMm)
  return normalChance(Math.sqrt(scene.efficiency) * d - scene.thresholdZ)
}

/** d′ as a function of size, fine where it decides: for large objects near the needed d′. */
export function detectabilityNear(
  scene: Scene,
  object: SeenObject,
  needed: number,
): (sizeMm: number) => number {
  const dPrime = detectabilityOf(scene.observer, object)
  const { large, finer } = scene.observer
  return (sizeMm) => {
    const usual = dPrime(sizeMm)
    return sizeMm > large.fromMm && Math.abs(Math.log(usual / needed)) < large.offBy
      ? detectability(finer(), object, sizeMm)
      : usual
  }
}

/** One energy in grain: the case where d′ falls again where a piece is as large as a grain. */
function mayFallAgain(scene: Scene): boolean {
  return scene.pack.grainMm > 0 && scene.channels.count === 1
}

/**
 * Size above which d′ reaches the needed one throughout; null beyond the model's limit.
 * `nearMm`: a size of a similar scene or chance to start from; `fromMm`: larger sizes are known to reach it.
 */
export function crossingOf(
  scene: Scene,
  dPrime: (sizeMm: number) => number,
  needed: number,
  nearMm?: number | null,
  fromMm = scene.limitMm,
): number | null {
  if (scene.channels.count === 0) return null
  return nearMm && !mayFallAgain(scene)
    ? crossingNear(dPrime, needed, fromMm, nearMm)
    : lastCrossing(dPrime, needed, fromMm)
}

/** Every size from this one up to another has the needed d′: looked at as closely as the search for a size looks. */
export function holdsFrom(
  scene: Scene,
  dPrime: (sizeMm: number) => number,
  needed: number,
  sizeMm: number,
  toMm: number,
): boolean {
  if (scene.channels.count === 0 || sizeMm > toMm || dPrime(sizeMm) < needed) return false
  if (mayFallAgain(scene)) return walkDown(dPrime, needed, toMm, sizeMm) === null
  return dPrime(Math.min(toMm, sizeMm * BEYOND)) >= needed && dPrime(toMm) >= needed
}

/**
 * Size above which every size has at least the chance (normal deviate) asked; null beyond the model's limit.
 * `nearMm`: a size of a similar scene or chance to start from.
 */
export function sizeAt(
  scene: Scene,
  object: SeenObject,
  deviate: number,
  nearMm?: number | null,
): number | null {
  const needed = neededDetectability(scene, deviate)
  return crossingOf(scene, detectabilityNear(scene, object, needed), needed, nearMm)
}
