import type { FindingContext } from '../decide/finding-context.ts'
import { geometryFactor } from '../opening/geometry-factor.ts'
import { electronicNoiseM3, mechanicalNoiseM3 } from '../opening/noise.ts'
import type { CoilParameters } from '../parameters.ts'
import { foodResidual, type Hearing, type Scene } from '../scene.ts'
import type { Situation } from '../situation.ts'
import type { TrailBuilder } from './trail-builder.ts'
import { productRows } from './trail-food.ts'
import { layerRows } from './trail-pack.ts'

/** Ids the contaminants' own rows build on. */
export interface SceneIds {
  readonly noise: readonly string[]
  readonly background: readonly string[]
  readonly inside: readonly string[]
  readonly frequencies: readonly string[]
}

/** What is left of the food once the machine has learned it. */
function residualRow(trail: TrailBuilder, scene: Scene, parameters: CoilParameters): string[] {
  if (!scene.block) return []
  const { remainder, phaseRad } = foodResidual(scene, parameters)
  const from =
    scene.read !== null
      ? `read on the line${scene.read.readOn ? `: ${scene.read.readOn}` : ''}`
      : scene.flow === 'stream'
        ? 'assumed for a stream, which never enters or leaves: only its variation counts'
        : 'assumed for food that enters and leaves; acts on its edge, where the signal is largest'
  return [
    trail.add(
      'product.residual',
      'what is left of the food’s signal once learned',
      'ε',
      100 * remainder,
      '%',
      `${from}; its phase wanders by ${((180 / Math.PI) * phaseRad).toPrecision(2)}°`,
      [],
      scene.read ? [] : ['coil-residuals'],
    ),
  ]
}

/** Rows of opening, noise, food and pack: everything but the pieces of metal. */
export function sceneRows(
  trail: TrailBuilder,
  situation: Situation,
  scene: Scene,
  context: FindingContext,
  hearing: Hearing,
): SceneIds {
  const { parameters } = context
  const { opening } = scene
  const height = trail.add(
    'opening.height',
    'shorter side of the opening',
    'h',
    opening.heightM * 1000,
    'mm',
    `from the ${situation.opening.origin}`,
    [],
    situation.opening.origin === 'pack' ? ['coil-clearance'] : [],
  )
  const width = trail.add(
    'opening.width',
    'longer side of the opening',
    'w',
    opening.widthM * 1000,
    'mm',
    `from the ${situation.opening.origin}`,
  )
  const geometry = trail.add(
    'opening.geometry',
    'factor for the shape of the opening',
    'g',
    geometryFactor(opening.widthM / opening.heightM),
    '',
    'c(2)/c(w/h), c = 0.19 + 0.20(h/w)², w/h at most 3',
    [height, width],
    ['coil-model', 'ledger-lionheart'],
  )
  const floor = trail.add(
    'noise.calibrated',
    'calibrated noise',
    'N0',
    parameters.noiseM3,
    'm³',
    'set once: mild steel 0.90 mm, dry, 175 × 350 mm',
    [],
    ['coil-calibration'],
  )
  const mechanical = trail.add(
    'noise.mechanical',
    'noise of the mechanics',
    'sV',
    mechanicalNoiseM3(opening, parameters),
    'm³',
    'v·N0·g·(h/h0)³, on the reactive axis',
    [floor, geometry, height],
    ['coil-residuals'],
  )
  const frequencies = hearing.frequenciesHz.map((f) =>
    trail.add(`frequency.${f / 1000}`, 'frequency', 'f', f / 1000, 'kHz', 'chosen from the machine’s'),
  )
  const noise = hearing.frequenciesHz.map((f, k) =>
    trail.add(
      `noise.${f / 1000}`,
      `noise of the electronics at ${f / 1000} kHz`,
      'sX',
      electronicNoiseM3(opening, f, parameters),
      'm³',
      'N0·g·(h/h0)^2.5·(f0/f)^0.5',
      [floor, geometry, height, frequencies[k]!],
      ['coil-residuals'],
    ),
  )
  const layers = layerRows(trail, scene, hearing)
  const background = [
    ...residualRow(trail, scene, parameters),
    ...productRows(trail, situation, scene, hearing, height),
    ...layers.clutter,
  ]
  return { noise: [...noise, mechanical], background, inside: layers.inside, frequencies }
}
