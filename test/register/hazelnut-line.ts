import type { ControlChance } from '../../src/register/sizes/control-chance.ts'
import type { FragmentSizes } from '../../src/register/sizes/fragment-sizes.ts'

/**
 * The line of the worked figures: 19.2 million bags of hazelnuts a year, invented; every figure derived from it was
 * computed outside this project with scipy quadrature and held against closed forms.
 */
export const MILLION_BAGS = 19.2

const places = (a50: number, a90: number) => [
  { share: 0.9, a50Mm: a50, a90Mm: a90 },
  { share: 0.1, a50Mm: a50 * 1.05, a90Mm: a90 * 1.05 },
]
export const xrayStone: ControlChance = { places: places(2.2, 2.5), workingShare: 0.999 }
export const xraySteel: ControlChance = { places: places(0.9, 1.1), workingShare: 0.999 }
export const coilSteel: ControlChance = {
  places: [{ share: 1, a50Mm: 1.6, a90Mm: 2 }],
  workingShare: 0.998,
}

export const stones: FragmentSizes = {
  medianMm: 4,
  factor: 2,
  shapes: [{ name: 'chunk', share: 1, perLength: 0.6 }],
}
export const steel: FragmentSizes = {
  medianMm: 4,
  factor: 2,
  shapes: [
    { name: 'chunk', share: 0.7, perLength: 0.6 },
    { name: 'sliver', share: 0.3, perLength: 0.15 },
  ],
}
