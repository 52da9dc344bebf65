import { magnitude, phaseDeg } from '../../numerics/complex.ts'
import { offCentreFactor, SENSING_LENGTH_RATIO, sensedLengthM } from '../food/product-block.ts'
import { torsionConstantM4 } from '../piece/torsion.ts'
import type { Hearing, Scene } from '../scene.ts'
import type { Situation } from '../situation.ts'
import type { TrailBuilder } from './trail-builder.ts'

/** Rows from the food table to the conductivity of the food as it lies; gives back the last id. */
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
        'a heap of separate pieces conducts at most with its fill fraction',
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

/** Rows of the food's signal at each frequency; gives back their ids. */
export function productRows(
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
        'P = 0 up to 0.001 S/m and without iron powder',
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
      'product.off-centre',
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
      '5 at 0.001 S/m, 80 from 0.01 S/m, between them straight in ln εr',
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
