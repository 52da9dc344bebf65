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
import { channelsBehind, type PackInBeam } from './detector/channels.ts'
import { extrapolationOf } from './extrapolation.ts'
import { bestAt, bestRangeAt, decideIn, judgedIn, lookAt, promisedAt } from './look.ts'
import { noiseShares } from './observer/noise-shares.ts'
import { chanceAnyOrientation } from './observer/orientation.ts'
import { CONSTANTS_STATUS } from './observer/practice.ts'
import {
  CHANCE_HALF,
  CHANCE_SURE,
  chanceOf,
  differenceInBeam,
  firstChannelMu,
  looksLikeVoid,
  positionsOf,
  type Scene,
  type SeenPiece,
  sizeAt,
} from './observer/scene.ts'
import { pieceIn } from './picture.ts'
import { materialAttenuation, packInBeam } from './places/pack-in-beam.ts'
import { settlingOf } from './places/settling.ts'
import { zonesOf } from './places/zones.ts'
import { refusalsOf } from './refusals.ts'
import { overVoltages, settingsOf } from './sizes-over-voltages.ts'
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

function curveOf(scene: Scene, object: SeenPiece, halfMm: number | null, sureMm: number | null) {
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
  const voltages = overVoltages(machine, build, point, pack, contaminants)
  const { steps, chosen, choice } = voltages
  const { scene } = chosen
  const settings = settingsOf(voltages)
  const look = lookAt(build, point, pack, voltages)
  const trail = new Map<string, Calculation>()
  const trailInput = {
    prefix,
    machine,
    build,
    point,
    setting: chosen.setting,
    scene,
    voltages: { choice, settings: steps.map(({ setting }) => setting) },
    constantsStatus: CONSTANTS_STATUS,
  }
  machineTrail(trailInput, trail)
  const dose = doseOf(build, chosen.setting, point.speedMPerMin, productFractions(point.product))
  doseTrail(prefix, machine, build, point.speedMPerMin, dose, trail)

  const findings = contaminants.map((contaminant, c): XrayFinding => {
    const mu = materialAttenuation(contaminant.material)
    const settling = settlingOf(point, contaminant)
    const deciding = decideIn(look, contaminant, settling, chosen.expectedMm[c]!)
    const { expectedMm, picture, place } = deciding.decides
    const bestMm = picture && bestAt(look, deciding, deciding.decides, contaminant, point, settings)
    const bestRangeMm = bestRangeAt(deciding.decides, bestMm, contaminant, point, chosen.setting)
    const { cautiousMm, widest } = promisedAt(deciding.decides, contaminant)
    const sizes = { bestMm, expectedMm, cautiousMm }
    const there = picture?.scene ?? scene
    const object = pieceIn(there, contaminant)
    const looks = looksLikeVoid(there, mu, contaminant.placement)
    const lost = picture === null || (looks && !point.product.voidFree)
    const halfMm = lost ? null : sizeAt(there, object, CHANCE_HALF, expectedMm)
    const sureMm = lost ? null : sizeAt(there, object, CHANCE_SURE, expectedMm)
    const asked = contaminant.mustFindMm
    const noise: NoiseSplit = noiseShares(there.observer, object, expectedMm ?? there.limitMm)
    const partial = {
      contaminant: c,
      bestMm,
      bestRangeMm,
      extrapolated: extrapolationOf(point, build),
      halfMm,
      expectedMm,
      sureMm,
      cautiousMm,
      chanceAtMustFind: asked === null ? null : lost ? 0 : chanceOf(there, object, asked),
      chanceAnyOrientation:
        contaminant.shape === 'flake' && !lost && (asked ?? expectedMm) !== null
          ? chanceAnyOrientation(there, object, contaminant, (asked ?? expectedMm)!)
          : null,
      curve: lost ? { sizesMm: [], chance: [] } : curveOf(there, object, halfMm, sureMm),
      looksLikeVoid: looks,
      contrast:
        there.channels.count === 0
          ? 0
          : firstChannelMu(there.channels, differenceInBeam(there.pack, mu, contaminant.placement)) /
            there.channels.foodMu[0]!,
      limitMm: there.limitMm,
      noise,
      widest,
      place: look.toldApart ? place.name : '',
      settling,
      zones:
        contaminant.placement === 'outside'
          ? []
          : zonesOf(
              judgedIn(look, deciding, sizes, contaminant, point, settling, chosen.setting),
              settling,
              contaminant,
            ),
    }
    return {
      ...partial,
      calculation: findingTrail({ ...trailInput, scene: there }, contaminant, object, partial, trail),
    }
  })

  return {
    refusals: refusalsOf(machine, build, point),
    setting: chosen.setting,
    kvSteps: steps.map(
      (step, i): KvStep => ({
        kV: step.setting.kV,
        mA: step.setting.mA,
        norm: choice.norms[i]!,
        expectedMm: step.expectedMm,
      }),
    ),
    runnerUp: choice.runnerUp,
    channels: build.channels.length,
    ideal: build.counting,
    ...beamFacts(build, point, pack, chosen.setting),
    meanEnergyKeV: scene.channels.meanEnergyKeV,
    objectPixelMm: objectPixelMm(build, point.speedMPerMin),
    linesPerSecond: linesPerSecond(build, point.speedMPerMin),
    positions: positionsOf(point, build),
    thresholdZ: scene.thresholdZ,
    threshold: scene.commonThreshold(),
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
