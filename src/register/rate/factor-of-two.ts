import type { FragmentSizes } from '../sizes/fragment-sizes.ts'
import { type HazardRates, hazardRates, type RateInput } from './hazard-rates.ts'

/** How far an assumption about fragments moves the estimate, the finds held fixed. */
export interface Moved {
  readonly what: string
  readonly rates: HazardRates
  /** Mean chance of the last control under it. */
  readonly meanChance: number
}

/** The assumption as it stands, and with median, spread and shape moved. */
function variants(sizes: FragmentSizes): readonly { what: string; sizes: FragmentSizes }[] {
  const { medianMm, factor, shapes } = sizes
  const thinner = shapes.map((shape) => ({ ...shape, perLength: (shape.perLength * 2) / 3 }))
  const [narrow, wide] = [1 + (factor - 1) * 0.6, 1 + (factor - 1) * 1.5]
  const figure = (value: number) => String(Number(value.toPrecision(3)))
  return [
    { what: `as assumed: median ${figure(medianMm)} mm, factor ${figure(factor)}`, sizes },
    { what: `median ${figure(medianMm / 2)} mm`, sizes: { ...sizes, medianMm: medianMm / 2 } },
    { what: `median ${figure(medianMm * 2)} mm`, sizes: { ...sizes, medianMm: medianMm * 2 } },
    { what: `factor ${figure(narrow)}`, sizes: { ...sizes, factor: narrow } },
    { what: `factor ${figure(wide)}`, sizes: { ...sizes, factor: wide } },
    { what: 'pieces a third thinner for their length', sizes: { ...sizes, shapes: thinner } },
  ]
}

/** The estimate under each variant: what arrives moves against the mean chance, because the finds do not change. */
export function factorOfTwo(input: RateInput, lastControl = input.controls.length - 1): Moved[] {
  return variants(input.sizes).map(({ what, sizes }) => {
    const rates = hazardRates({ ...input, sizes })
    return { what, rates, meanChance: rates.meanChances[lastControl] ?? 0 }
  })
}
