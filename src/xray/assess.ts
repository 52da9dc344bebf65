import type { Calculation, Contaminant, Point, XrayMachine } from '../contract/index.ts'
import { productFractions } from '../food/fractions.ts'
import type { KvStep, NoiseSplit, XrayAssessment, XrayFinding, XraySetting } from './assessment.ts'
import { halfValueLayersMmAl } from './beam/beam-quality.ts'
import { doseOf } from './beam/dose.ts'
import {
  buildOf,
  filteredSpectrum,
  linesPerSecond,
  objectPixelMm,
  openBeam,
  type XrayBuild,
} from './beam/exposure.ts'
import { settingAt, voltagesOf } from './beam/settings.ts'
import { channelsBehind, type PackInBeam } from './detector/channels.ts'
import { cautiousSize, ensembleScenes } from './observer/cautious.ts'
import { noiseShares } from './observer/observer.ts'
import { chanceAnyOrientation } from './observer/orientation.ts'
import { CONSTANTS_STATUS, IDEAL, PRACTICE } from './observer/practice.ts'
import {
  CHANCE_HALF,
  CHANCE_NINE_IN_TEN,
  CHANCE_SURE,
  chanceOf,
  crossingOf,
  detectabilityNear,
  differenceInBeam,
  firstChannelMu,
  looksLikeVoid,
  neededDetectability,
  objectIn,
  positionsOf,
  type Scene,
  setScene,
  sizeAt,
} from './observer/scene.ts'
import { materialAttenuation, packInBeam } from './places/pack-in-beam.ts'
import { zoneOf, zonesOf } from './places/zones.ts'
import { refusalsOf } from './refusals.ts'
import { machineTrail } from './trail/trail.ts'
import { doseTrail } from './trail/trail-dose.ts'
import { findingTrail } from './trail/trail-finding.ts'

export interface AssessInput {
  readonly machine: XrayMachine
  readonly point: Point
  readonly contaminants: readonly Contaminant[]
  /** Start of every calculation id, unique to this machine and point. */
  readonly prefix: string
}

interface Step {
  readonly setting: XraySetting
  readonly practice: Scene
  readonly expectedMm: readonly (number | null)[]
}

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

function stepAt(input: AssessInput, build: XrayBuild, pack: PackInBeam, kV: number, last?: Step): Step {
  const { machine, point, contaminants } = input
  const setting = settingAt(machine, build, kV, point.speedMPerMin)
  const practice = setScene(build, point, pack, setting, PRACTICE)
  const expectedMm = contaminants.map((c, i) => sizeIn(practice, c, point, last?.expectedMm[i]))
  return { setting, practice, expectedMm }
}

/**
 * Best possible sizes: the smallest an ideal observer reaches at any of the settings. A setting at which the
 * smallest so far is not found cannot be the best one, and is left at that.
 */
export function bestSizes(
  build: XrayBuild,
  point: Point,
  pack: PackInBeam,
  settings: readonly XraySetting[],
  contaminants: readonly Contaminant[],
): (number | null)[] {
  const scenes = settings.map((setting) => setScene(build, point, pack, setting, IDEAL))
  return contaminants.map((contaminant) => {
    const mu = materialAttenuation(contaminant.material)
    return scenes.reduce<number | null>((best, scene) => {
      if (looksLikeVoid(scene, mu, contaminant.placement) && !point.product.voidFree) return best
      const object = objectIn(scene, contaminant, mu)
      const needed = neededDetectability(scene, CHANCE_NINE_IN_TEN)
      const dPrime = detectabilityNear(scene, object, needed)
      if (best !== null && dPrime(best) < needed) return best
      const size = crossingOf(scene, dPrime, needed, best)
      return best === null || (size !== null && size < best) ? size : best
    }, null)
  })
}

/**
 * Worst ratio of expected size to the size to find at each step. A contaminant without a size to find is
 * measured against its smallest expected size over the steps; one that no step finds is left out, and one
 * that only some steps find counts as infinitely bad where it is lost.
 */
export function worstRatios(
  steps: readonly Pick<Step, 'expectedMm'>[],
  contaminants: readonly Contaminant[],
): (number | null)[] {
  const yardsticks = contaminants.map((c, i) => {
    const sizes = steps.flatMap((s) => (s.expectedMm[i] == null ? [] : [s.expectedMm[i]!]))
    return sizes.length === 0 ? null : (c.mustFindMm ?? Math.min(...sizes))
  })
  return steps.map((step) => {
    const ratios = yardsticks.flatMap((y, i) => {
      if (y === null) return []
      const size = step.expectedMm[i]
      return [size == null ? Number.POSITIVE_INFINITY : size / y]
    })
    return ratios.length === 0 ? null : Math.max(...ratios)
  })
}

/** Index of the step with the smallest worst ratio, the first of equals. */
export function chosenStep(ratios: readonly (number | null)[]): number {
  const order = ratios.map((r, i) => ({ r: r ?? 0, i })).sort((x, y) => x.r - y.r || x.i - y.i)
  return order[0]!.i
}

function curveOf(
  scene: Scene,
  object: ReturnType<typeof objectIn>,
  halfMm: number | null,
  sureMm: number | null,
) {
  const from = halfMm === null ? Math.min(0.5, scene.limitMm / 4) : halfMm / 3
  const to = Math.min(scene.limitMm, sureMm === null ? scene.limitMm : sureMm * 1.8)
  const count = 25
  const sizesMm = Array.from({ length: count }, (_, i) => from * (to / from) ** (i / (count - 1)))
  return { sizesMm, chance: sizesMm.map((d) => chanceOf(scene, object, d)) }
}

/** Everything the physics says of one x-ray machine at one inspection point. Sizes in mm. */
export function assessXray(input: AssessInput): XrayAssessment {
  const { machine, point, contaminants, prefix } = input
  const build = buildOf(machine)
  const pack = packInBeam(point, build)
  const steps: Step[] = []
  for (const kV of voltagesOf(machine)) steps.push(stepAt(input, build, pack, kV, steps.at(-1)))
  const ratios = worstRatios(steps, contaminants)
  const chosen = steps[chosenStep(ratios)]!
  const scene = chosen.practice
  const best = bestSizes(
    build,
    point,
    pack,
    steps.map(({ setting }) => setting),
    contaminants,
  )
  const ensemble = ensembleScenes(build, point, pack, chosen.setting)
  const zoneScenes = zonesOf(point, build, pack).map((geometry) => ({
    geometry,
    scene: geometry.pack && setScene(build, point, geometry.pack, chosen.setting, PRACTICE),
  }))
  const trail = new Map<string, Calculation>()
  const trailInput = {
    prefix,
    machine,
    build,
    point,
    setting: chosen.setting,
    scene,
    constantsStatus: CONSTANTS_STATUS,
  }
  machineTrail(trailInput, trail)
  const dose = doseOf(build, chosen.setting, point.speedMPerMin, productFractions(point.product))
  doseTrail(prefix, machine, build, point.speedMPerMin, dose, trail)

  const findings = contaminants.map((contaminant, c): XrayFinding => {
    const mu = materialAttenuation(contaminant.material)
    const object = objectIn(scene, contaminant, mu)
    const looks = looksLikeVoid(scene, mu, contaminant.placement)
    const lost = looks && !point.product.voidFree
    const expectedMm = chosen.expectedMm[c]!
    const halfMm = lost ? null : sizeAt(scene, object, CHANCE_HALF, expectedMm)
    const sureMm = lost ? null : sizeAt(scene, object, CHANCE_SURE, expectedMm)
    const { cautiousMm, widest } = cautiousSize(ensemble, contaminant, point, expectedMm)
    const asked = contaminant.mustFindMm
    const noise: NoiseSplit = noiseShares(scene.observer, object, expectedMm ?? scene.limitMm)
    const partial = {
      contaminant: c,
      bestMm: best[c]!,
      halfMm,
      expectedMm,
      sureMm,
      cautiousMm,
      chanceAtMustFind:
        asked === null ? null : lost ? 0 : chanceOf(scene, object, Math.min(asked, scene.limitMm)),
      chanceAnyOrientation:
        contaminant.shape === 'flake' && !lost && (asked ?? expectedMm) !== null
          ? chanceAnyOrientation(scene, object, contaminant, (asked ?? expectedMm)!)
          : null,
      curve: lost ? { sizesMm: [], chance: [] } : curveOf(scene, object, halfMm, sureMm),
      looksLikeVoid: looks,
      contrast:
        scene.channels.count === 0
          ? 0
          : firstChannelMu(scene.channels, differenceInBeam(pack, mu, contaminant.placement)) /
            scene.channels.foodMu[0]!,
      limitMm: scene.limitMm,
      noise,
      widest,
      zones: zoneScenes.map(({ geometry, scene: there }) =>
        zoneOf(
          geometry,
          there && !lost ? sizeIn(there, contaminant, point, expectedMm) : null,
          expectedMm,
          contaminant,
        ),
      ),
    }
    return { ...partial, calculation: findingTrail(trailInput, contaminant, mu, partial, trail) }
  })

  return {
    refusals: refusalsOf(machine, build, point),
    setting: chosen.setting,
    kvSteps: steps.map(
      (step, i): KvStep => ({
        kV: step.setting.kV,
        mA: step.setting.mA,
        worstRatio: ratios[i] === Number.POSITIVE_INFINITY ? null : ratios[i]!,
        expectedMm: step.expectedMm,
      }),
    ),
    channels: build.channels.length,
    ideal: build.counting,
    ...beamFacts(build, point, pack, chosen.setting),
    meanEnergyKeV: scene.channels.meanEnergyKeV,
    objectPixelMm: objectPixelMm(build, point.speedMPerMin),
    linesPerSecond: linesPerSecond(build, point.speedMPerMin),
    positions: positionsOf(point, build),
    thresholdZ: scene.thresholdZ,
    dose,
    findings,
    calculations: [...trail.values()],
  }
}

function beamFacts(build: XrayBuild, point: Point, pack: PackInBeam, setting: XraySetting) {
  const a = objectPixelMm(build, point.speedMPerMin)
  const open = openBeam(build, setting.kV, setting.mA, point.speedMPerMin)
  const behind = channelsBehind(open, pack, build.channels, a).signal
  const empty = channelsBehind(open, { ...pack, pathMm: 0, parts: [] }, build.channels, a).signal
  const wrapped = channelsBehind(open, { ...pack, pathMm: 0 }, build.channels, a).signal
  const share = (signal: readonly number[], i: number) => {
    const of = empty.at(i)
    return of ? (signal.at(i) ?? 0) / of : 0
  }
  return {
    pathMm: pack.pathMm,
    solidPathMm: pack.pathMm * pack.packing,
    transmission: { first: share(behind, 0), last: share(behind, -1) },
    packagingTransmission: share(wrapped, 0),
    openBeamHvlMmAl: halfValueLayersMmAl(filteredSpectrum(build, setting.kV)).first,
  }
}
