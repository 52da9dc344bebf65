import type { Calculation, Contaminant, Point, XrayMachine } from '../contract/index.ts'
import { productFractions } from '../food/fractions.ts'
import { archetypes, materials } from '../reference/index.ts'
import type { XrayFinding, XraySetting } from './assessment.ts'
import { type MassFractions, muRhoElement, muRhoMixture } from './attenuation.ts'
import { fluencePerMm2 } from './beam-quality.ts'
import { filteredSpectrum, speedMmPerS, type XrayBuild } from './exposure.ts'
import { detectability } from './observer.ts'
import { projectedAreaMm2 } from './pack-in-beam.ts'
import { PRACTICE } from './practice.ts'
import { objectIn, positionsOf, type Scene } from './scene.ts'
import { grainNoisePower, unevennessNoisePower } from './texture.ts'
import { ASSUMPTION_RANGES, DRAWS } from './variation.ts'

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
  /** What the practice constants are called while they are not final. */
  readonly constantsStatus: string
}

const round = (value: number, digits = 5) =>
  Number.isFinite(value) ? Number(value.toPrecision(digits)) : value

function entry(
  id: string,
  label: string,
  symbol: string,
  value: number | string | null,
  unit: string,
  formula: string,
  inputs: readonly string[] = [],
  sources: readonly string[] = [],
): Calculation {
  return {
    id,
    label,
    symbol,
    value: typeof value === 'number' ? round(value) : value,
    unit,
    formula,
    inputs: [...inputs],
    sources: [...sources],
  }
}

/** μ of a mixture at one energy, down to the element table; returns its id and adds what is needed. */
function attenuationEntry(
  into: Map<string, Calculation>,
  name: string,
  label: string,
  massFractions: MassFractions,
  densityGPerCm3: number,
  keV: number,
  sources: readonly string[],
): string {
  const at = round(keV, 3)
  const id = `mu.${name}.${densityGPerCm3}.${at}`
  if (into.has(id)) return id
  const inputs = Object.keys(massFractions)
    .filter((symbol) => massFractions[symbol]! > 0.0005)
    .map((symbol) => {
      const leaf = `table.${symbol}.${at}`
      into.set(
        leaf,
        entry(
          leaf,
          `mass attenuation coefficient of ${symbol} at ${at} keV`,
          `(μ/ρ)_${symbol}`,
          muRhoElement(symbol, at),
          'cm²/g',
          'table value, log-log between table energies',
          [],
          ['xraylib'],
        ),
      )
      return leaf
    })
  const shares = Object.entries(massFractions)
    .filter(([, share]) => share > 0.0005)
    .map(([symbol, share]) => `${symbol} ${(share * 100).toFixed(1)} %`)
    .join(', ')
  const made = `${id}.made-of`
  into.set(
    made,
    entry(made, `what ${label} is made of`, 'w_i', shares, 'mass fractions', 'composition', [], sources),
  )
  const density = `${id}.density`
  into.set(
    density,
    entry(density, `density of ${label}`, 'ρ', densityGPerCm3, 'g/cm³', 'entered or listed', [], sources),
  )
  into.set(
    id,
    entry(
      id,
      `linear attenuation coefficient of ${label} at ${at} keV`,
      'μ',
      (muRhoMixture(massFractions, at) * densityGPerCm3) / 10,
      '1/mm',
      'ρ/10 · Σ w_i·(μ/ρ)_i',
      [...inputs, made, density],
    ),
  )
  return id
}

/** What is common to all contaminants: geometry, threshold, beam, noise, food. */
export function machineTrail(input: TrailInput, into: Map<string, Calculation>): void {
  const { prefix: p, machine, build, point, setting, scene } = input
  const { channels, pack } = scene
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
    machine.kV !== undefined
      ? 'given by the machine'
      : 'smallest worst ratio of expected size to size to find over the 5 kV steps of the range',
    [],
    basis,
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
  const f = 0.2
  add(
    'grain',
    `grain pattern of the food at ${f} per mm`,
    'G',
    pack.grainMm > 0
      ? PRACTICE.textureScale * grainNoisePower(f, pack.grainMm, pack.packing, pack.pathMm)
      : 0,
    'mm⁴',
    'scale·φ(1−φ)·path·D³·g(f·D; φ)',
    [],
    ['granular-simulation'],
  )
  add(
    'unevenness',
    `unevenness of the food at ${f} per mm`,
    'φ²U',
    pack.packing ** 2 * unevennessNoisePower(f, pack.unevennessMm),
    'mm⁴',
    'φ²·σ²/(36π)/f³',
    [],
    ['unevenness-judgement'],
  )
  add(
    'constants',
    'practice constants',
    'η, κ, ℓ',
    `efficiency ${scene.efficiency}, texture scale ${PRACTICE.textureScale}, composition residual ${PRACTICE.compositionResidual}, gathered wire ${PRACTICE.gatheredWireMm} mm`,
    '',
    `five shared numbers; ${input.constantsStatus}`,
  )
}

/** The trail of one contaminant's sizes. Returns the id a reader starts from. */
export function findingTrail(
  input: TrailInput,
  contaminant: Contaminant,
  contaminantMu: Float64Array,
  finding: Omit<XrayFinding, 'calculation'>,
  into: Map<string, Calculation>,
): string {
  const { prefix, scene } = input
  const p = `${prefix}.c${finding.contaminant}`
  const material = materials.get(contaminant.material)!
  const keV = scene.channels.meanEnergyKeV[0] ?? 50
  const mu = attenuationEntry(
    into,
    material.id,
    material.label,
    material.massFractions,
    material.densityGPerCm3,
    keV,
    [material.source],
  )
  const add = (...args: Parameters<typeof entry>) =>
    into.set(`${p}.${args[0]}`, { ...entry(...args), id: `${p}.${args[0]}` })
  add(
    'contrast',
    `contrast of ${material.label} against the food it replaces`,
    'Δμ/μ',
    finding.contrast,
    '',
    contaminant.placement === 'inside'
      ? '(μ_object − φ·μ_solid) / μ_solid, first channel'
      : 'μ_object / μ_solid, first channel (on the pack nothing is replaced)',
    [mu, `${prefix}.food-mu0`],
  )
  const at = finding.expectedMm ?? finding.limitMm
  const object = objectIn(scene, contaminant, contaminantMu)
  const noise = scene.channels.meanEnergyKeV.map((_, c) => `${prefix}.noise${c}`)
  const texture = [`${prefix}.grain`, `${prefix}.unevenness`]
  add(
    'detectability',
    `detectability of ${material.label} at ${round(at, 3)} mm`,
    'd′',
    detectability(scene.observer, object, at),
    '',
    contaminant.shape === 'wire' ? '√(ℓ·2∫ Sᵀ K⁻¹ S df)' : '√(∫ 2πf·Sᵀ K⁻¹ S df)',
    [`${p}.contrast`, ...noise, ...texture, `${prefix}.object-pixel`],
  )
  const common = [`${p}.detectability`, `${prefix}.z`, `${prefix}.constants`]
  const meaning = 'smallest size above which every size is found with this chance: Φ(√η·d′ − z)'
  add('expected', 'expected size', 'd₉₀', finding.expectedMm, 'mm', `${meaning}, chance 0.90`, common)
  add('half', 'size found every second time', 'd₅₀', finding.halfMm, 'mm', `${meaning}, chance 0.50`, common)
  add(
    'sure',
    'size found 995 times in 1,000',
    'd₉₉.₅',
    finding.sureMm,
    'mm',
    `${meaning}, chance 0.995`,
    common,
  )
  add(
    'best',
    'best possible size',
    'd_best',
    finding.bestMm,
    'mm',
    'as the expected size, ideal observer: η = 1, κ = 0, texture scale 1, a wire gathered over its whole length, smallest over the settings of the machine',
    [`${p}.contrast`, ...noise, ...texture, `${prefix}.z`],
  )
  add(
    'ranges',
    'assumptions drawn',
    '',
    ASSUMPTION_RANGES.map((r) => `${r.label}: ${r.range}`).join('; '),
    '',
    `${DRAWS} fixed Halton points over the stated ranges`,
  )
  add(
    'cautious',
    'promise no better than',
    'd_cautious',
    finding.cautiousMm,
    'mm',
    'larger of the expected size and the 0.90 quantile over the drawn assumptions',
    [`${p}.expected`, `${p}.ranges`],
  )
  return `${p}.expected`
}
