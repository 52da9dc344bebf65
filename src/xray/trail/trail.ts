import type { Calculation, Point, XrayMachine } from '../../contract/index.ts'
import { productFractions } from '../../food/fractions.ts'
import type { Choice } from '../../numerics/smooth-choice.ts'
import { archetypes, materials } from '../../reference/index.ts'
import type { XraySetting } from '../assessment.ts'
import { fluencePerMm2 } from '../beam/beam-quality.ts'
import { filteredSpectrum, speedMmPerS, type XrayBuild } from '../beam/exposure.ts'
import { grainNoisePower, unevennessNoisePower } from '../noise/texture.ts'
import { BED_FACTOR, PRACTICE } from '../observer/practice.ts'
import { positionsOf, type Scene } from '../observer/scene.ts'
import { hasGrains } from '../observer/threshold.ts'
import { projectedAreaMm2 } from '../places/pack-in-beam.ts'
import { attenuationEntry } from './trail-attenuation.ts'
import { entry } from './trail-entry.ts'

/**
 * The calculation trail of one machine at one point: every size walked back to table values.
 * Ids start with `prefix`; table values and materials have ids of their own and are shared.
 */
export interface TrailInput {
  readonly prefix: string
  readonly machine: XrayMachine
  readonly build: XrayBuild
  readonly point: Point
  readonly setting: XraySetting
  /** Scene with the practice constants at the setting. */
  readonly scene: Scene
  /** The settings there were and the choice between them. */
  readonly voltages: { readonly choice: Choice; readonly settings: readonly XraySetting[] }
  /** What the practice constants are called while they are not final. */
  readonly constantsStatus: string
}

/** What is common to all contaminants: geometry, threshold, beam, noise, food. */
export function machineTrail(input: TrailInput, into: Map<string, Calculation>): void {
  const { prefix: p, machine, build, point, setting, scene } = input
  const { channels } = scene
  const basis = archetypes.get(machine.id)?.sources ?? []
  const a = scene.observer.imaging.objectPixelMm
  const add = (...args: Parameters<typeof entry>) =>
    into.set(`${p}.${args[0]}`, { ...entry(...args), id: `${p}.${args[0]}` })
  add('pixel', 'pixel size on the detector', 'pixel', build.pixelMm, 'mm', 'given by the machine', [], basis)
  add('magnification', 'magnification', 'M', build.magnification, '', 'given by the machine', [], basis)
  add(
    'object-pixel',
    'pixel size in the plane of the food',
    'a',
    a,
    'mm',
    'pixel / M (stretched where the belt outruns the line rate)',
    [`${p}.pixel`, `${p}.magnification`],
  )
  add(
    'area',
    'area of the pack as the beam sees it',
    'A',
    projectedAreaMm2(point, build.beam),
    'mm²',
    build.beam === 'down' ? 'length × width (× π/4 for a standing cylinder)' : 'length × height',
  )
  add(
    'false-rejects',
    'false rejects per pack asked for',
    'p',
    point.falseRejectsPerPack,
    '',
    'from the brief',
  )
  add('positions', 'independent places in the pack', 'n', positionsOf(point, build), '', 'A / (2a)²', [
    `${p}.area`,
    `${p}.object-pixel`,
  ])
  add(
    'z',
    'decision threshold',
    'z',
    scene.thresholdZ,
    'standard deviations',
    build.views > 1 ? 'upper normal tail = p / views / n' : 'upper normal tail = p / n',
    [`${p}.false-rejects`, `${p}.positions`],
  )
  add(
    'kV',
    'tube voltage',
    'U',
    setting.kV,
    'kV',
    machine.kV !== undefined ? 'given by the machine' : kvWords(input),
    [],
    basis,
  )
  add(
    'threshold',
    'threshold taught on clean packs',
    'T',
    scene.commonThreshold(),
    'standard deviations',
    hasGrains(scene.pack)
      ? `largest of z and ${BED_FACTOR} × the point that the filters of quartz balls of 1 to 6 mm (up to half a grain) exceed in clean packs with the chance p / n: shot noise of grains, tail of Lugannani and Rice`
      : 'z: this food has no grains that could look like a piece',
    hasGrains(scene.pack) ? [`${p}.z`, `${p}.grain`, `${p}.packing`, `${p}.path`] : [`${p}.z`],
    hasGrains(scene.pack) ? ['lugannani-rice', 'clean-bed-simulation'] : [],
  )
  add('mA', 'tube current', 'I', setting.mA, 'mA', `limited by: ${setting.currentLimit}`, [], basis)
  add(
    'tube',
    'output of the tube behind its window, filter and the air to the detector',
    'Φ',
    fluencePerMm2(filteredSpectrum(build, setting.kV)),
    'photons/mm²/mAs at 1 m',
    'tabulated bremsstrahlung, slowing down and K lines of tungsten; ±25 % in absolute terms',
    [`${p}.kV`],
    ['seltzer-berger', 'tucker-1991'],
  )
  add(
    'line-time',
    'time of one line',
    'a/v',
    a / speedMmPerS(point.speedMPerMin),
    's',
    'pixel in the food plane / belt speed',
    [`${p}.object-pixel`],
  )
  add(
    'photons',
    'photons per pixel and line with an empty belt',
    'N₀',
    fluencePerMm2(filteredSpectrum(build, setting.kV)) *
      (1000 / build.sourceToDetectorMm) ** 2 *
      build.pixelMm ** 2 *
      setting.mA *
      (a / speedMmPerS(point.speedMPerMin)),
    'photons',
    'Φ·(1000/distance)²·pixel²·I·a/v',
    [`${p}.tube`, `${p}.mA`, `${p}.pixel`, `${p}.line-time`],
  )
  const fractions = productFractions(point.product)
  const foodMaterial = materials.get(point.product.food)
  const foodSources = foodMaterial ? [foodMaterial.source] : ['woodard-white', 'choi-okos']
  channels.meanEnergyKeV.forEach((keV, c) => {
    const foodLabel = foodMaterial?.label ?? 'the food'
    const mu = attenuationEntry(
      into,
      point.product.food,
      foodLabel,
      fractions,
      point.product.densityGPerCm3,
      keV,
      foodSources,
    )
    const name = channels.count > 1 ? ` (channel ${c + 1})` : ''
    add(
      `energy${c}`,
      `mean energy that the detector records${name}`,
      'E̅',
      keV,
      'keV',
      'signal-weighted mean behind food and pack',
      [`${p}.photons`],
    )
    add(
      `food-mu${c}`,
      `attenuation of the solid food${name}`,
      't',
      channels.foodMu[c]!,
      '1/mm',
      'Σ w(E)·μ_food(E) over 1 keV bins (the table values shown are at the mean energy)',
      [mu, `${p}.energy${c}`],
    )
    add(
      `noise${c}`,
      `photon and read noise${name}, relative noise density`,
      'q',
      channels.photonNoise[c]! + channels.readNoise[c]!,
      'mm²',
      'variance / signal² · a²',
      [`${p}.photons`, `${p}.food-mu${c}`, `${p}.object-pixel`],
      basis,
    )
  })
  foodTrail(input, add)
  add(
    'constants',
    'practice constants',
    'κ, ℓ',
    `texture scale ${PRACTICE.textureScale}, composition residual ${PRACTICE.compositionResidual}, gathered wire ${PRACTICE.gatheredWireMm} mm`,
    '',
    `three shared numbers; ${input.constantsStatus}`,
  )
}

/** How the voltage was chosen, and what came next. */
function kvWords({ voltages: { choice, settings } }: TrailInput): string {
  const { index, runnerUp, norms } = choice
  const rule =
    'least (Σ (expected size / size to find)⁸)^⅛ over the 5 kV steps of the range, the middle of those within 3 % of it'
  const [own, next] = [norms[index], runnerUp === null ? null : norms[runnerUp]]
  if (runnerUp === null || !own || !next) return rule
  return `${rule}; next best: ${settings[runnerUp]!.kV} kV, ${Math.round(100 * (next / own - 1))} % larger`
}

type Add = (...args: Parameters<typeof entry>) => void

/** Frequency at which the food's noise is shown, 1/mm: the scale of a piece of some millimetres. */
const SHOWN_PER_MM = 0.2

/** The food's own noise, down to what the brief says of the food. */
function foodTrail({ prefix: p, point, build, scene }: TrailInput, add: Add): void {
  const { pack } = scene
  const given = (name: string, label: string, symbol: string, value: number, unit: string) =>
    add(name, label, symbol, value, unit, 'from the brief, or assumed there')
  given('path', 'food in the beam', 'path', pack.pathMm, 'mm')
  given('packing', 'fill fraction', 'φ', pack.packing, '')
  given('uneven', 'unevenness of the food, rms over 2 to 20 mm', 'σ', point.product.unevennessMm, 'mm')
  const grain = pack.grainMm > 0
  if (grain) given('grain-size', 'grain size', 'D', pack.grainMm, 'mm')
  add(
    'grain',
    `grain pattern of the food at ${SHOWN_PER_MM} per mm`,
    'G',
    grain
      ? PRACTICE.textureScale * grainNoisePower(SHOWN_PER_MM, pack.grainMm, pack.packing, pack.pathMm)
      : 0,
    'mm⁴',
    grain
      ? `scale·φ(1−φ)·path·D³·g(f·D; φ), path the ${build.beam === 'down' ? 'height' : 'width'}`
      : 'no grains in this food',
    grain ? [`${p}.packing`, `${p}.path`, `${p}.grain-size`, `${p}.constants`] : [],
    grain ? ['granular-simulation'] : [],
  )
  add(
    'unevenness',
    `unevenness of the food at ${SHOWN_PER_MM} per mm`,
    'φ²U',
    pack.packing ** 2 * unevennessNoisePower(SHOWN_PER_MM, pack.unevennessMm),
    'mm⁴',
    'φ²·σ²/(36π)/f³',
    [`${p}.packing`, `${p}.uneven`],
    ['unevenness-judgement'],
  )
}
