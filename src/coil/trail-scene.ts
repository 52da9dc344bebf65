import { magnitude, phaseDeg } from './complex.ts'
import type { FindingContext } from './finding-context.ts'
import { geometryFactor } from './geometry-factor.ts'
import { electronicNoiseM3, mechanicalNoiseM3 } from './noise.ts'
import { offCentreFactor, SENSING_LENGTH_RATIO, sensedLengthM } from './product-block.ts'
import type { Hearing, Scene } from './scene.ts'
import type { Situation } from './situation.ts'
import { torsionConstantM4 } from './torsion.ts'
import type { TrailBuilder } from './trail-builder.ts'

/** Ids the contaminants' own rows build on. */
export interface SceneIds {
  readonly noise: readonly string[]
  readonly background: readonly string[]
  readonly inside: readonly string[]
  readonly frequencies: readonly string[]
}

function foodRows(trail: TrailBuilder, situation: Situation): string {
  const food = situation.conductivity
  const inputs: string[] = []
  if (food.at25SPerM !== null) {
    inputs.push(
      trail.add(
        'food.at25',
        'conductivity of the food at 25 °C, thawed',
        'σ₂₅',
        food.at25SPerM,
        'S/m',
        'food table, salt in the water phase',
        [],
        food.sources,
      ),
      trail.add(
        'food.temperature',
        'factor for the temperature',
        '',
        food.temperatureFactor,
        '',
        '1 + 0.02·(T − 25 °C) above −1 °C; frozen class below −9.5 °C; between them straight in ln σ',
        [],
        ['conductivity-temperature', 'frozen-conductivity'],
      ),
      trail.add(
        'food.packing',
        'share of the volume that is food',
        'φ',
        food.packingFactor,
        '',
        'a heap of separate pieces conducts at most with its packing fraction',
      ),
    )
  }
  return trail.add(
    'food.conductivity',
    'conductivity of the food as it lies',
    'σ',
    food.valueSPerM,
    'S/m',
    food.formula,
    inputs,
    food.sources,
  )
}

function productRows(
  trail: TrailBuilder,
  situation: Situation,
  scene: Scene,
  hearing: Hearing,
  openingId: string,
): string[] {
  const { block } = scene
  const sigma = foodRows(trail, situation)
  if (!block) {
    return [
      trail.add(
        'product.none',
        'signal of the food',
        '|P|',
        0,
        'm³',
        'P = 0 below 0.001 S/m and without iron powder',
        [sigma],
      ),
    ]
  }
  const h = scene.opening.heightM
  const shared = [
    sigma,
    trail.add(
      'product.torsion',
      'torsion constant of the food’s section',
      'J',
      torsionConstantM4(block.widthM, block.heightM),
      'm⁴',
      'b³a·[1/3 − 0.21(b/a)(1 − b⁴/12a⁴)]',
      [],
      ['roark-torsion'],
    ),
    trail.add(
      'product.length',
      'length of food that is sensed',
      'L',
      sensedLengthM(block.lengthM, h),
      'm',
      `${SENSING_LENGTH_RATIO}h·tanh(L/${SENSING_LENGTH_RATIO}h)`,
      [openingId],
      ['coil-model'],
    ),
    trail.add(
      'product.offCentre',
      'rise of the field off the centre',
      '',
      offCentreFactor(block.heightM, h),
      '',
      '1 + 0.8·min(1, h_product/h)²',
      [openingId],
      ['coil-model'],
    ),
    trail.add(
      'product.permittivity',
      'relative permittivity of the food',
      'εr',
      block.relativePermittivity,
      '',
      '80 from 0.01 S/m, 5 from 0.001 S/m',
      [sigma],
      ['coil-residuals'],
    ),
  ]
  if (block.susceptibility > 0) {
    shared.push(
      trail.add(
        'product.susceptibility',
        'susceptibility from iron powder',
        'χ',
        block.susceptibility,
        '',
        '3 × volume fraction of iron',
        [],
        ['coil-model'],
      ),
    )
  }
  return hearing.frequenciesHz.map((f, k) => {
    const p = hearing.product![k]!
    const angle = trail.add(
      `product.phase.${f / 1000}`,
      `phase of the food’s signal at ${f / 1000} kHz`,
      'arg P',
      phaseDeg(p),
      '°',
      '0° magnetic, −90° resistive, −180° perfect conductor',
      shared,
    )
    return trail.add(
      `product.${f / 1000}`,
      `signal of the food at ${f / 1000} kHz`,
      '|P|',
      magnitude(p),
      'm³',
      'ωμ0·|σ + iωε0εr|·L·J/4 (+ χ·w·h·L), times the rise off the centre',
      [...shared, angle],
      ['coil-model', 'roark-torsion'],
    )
  })
}

function layerRows(
  trail: TrailBuilder,
  scene: Scene,
  hearing: Hearing,
): { clutter: string[]; inside: string[] } {
  const clutter: string[] = []
  const inside: string[] = []
  scene.layers.forEach((layer, l) => {
    const sources = layer.film ? ['metallised-film-resistance'] : ['resistivity-tables']
    const conductance = trail.add(
      `pack.${l}.conductance`,
      `sheet conductance of ${layer.part.material} (${layer.part.place})`,
      'S',
      layer.conductanceS,
      'S',
      'σ·t, or 1 over the sheet resistance',
      [],
      sources,
    )
    hearing.frequenciesHz.forEach((f, k) => {
      const answer = hearing.layers[k]![l]!
      clutter.push(
        trail.add(
          `pack.${l}.${f / 1000}`,
          `signal of the ${layer.kind} at ${f / 1000} kHz`,
          '|W|',
          magnitude(answer.alpha),
          'm³',
          'one time constant between the resistive and the perfect limit',
          [conductance],
          ['thin-sheet', 'coil-model'],
        ),
      )
      if (layer.kind === 'closed tube' || layer.kind === 'closed container') {
        inside.push(
          trail.add(
            `pack.${l}.inside.${f / 1000}`,
            `field left inside at ${f / 1000} kHz`,
            '|T|',
            magnitude(answer.inside),
            '',
            '|1/(1 + iωμ0S·A/P)|; a piece inside answers with T²',
            [conductance],
            ['thin-sheet'],
          ),
        )
      }
    })
  })
  return { clutter, inside }
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
  const background = [...productRows(trail, situation, scene, hearing, height), ...layers.clutter]
  return { noise: [...noise, mechanical], background, inside: layers.inside, frequencies }
}
