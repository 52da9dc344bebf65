import { HAS_GAPS } from '../brief/product-defaults.ts'
import type { Point, Product } from '../contract/index.ts'
import { everywhere, type Input } from './input.ts'
import type { Setup } from './setup.ts'

/** Packing of loose grains, from a loose heap to a shaken one (common practice, no source). */
const PACKING = [0.35, 0.7] as const
/** Unevenness shown at least up to this, mm: a ready meal has 1.5 (judgement). */
const UNEVENNESS_MM = 2

const hasGaps = ({ product }: Point): boolean => HAS_GAPS.includes(product.structure)

const withProduct = ({ point, machine }: Setup, change: Partial<Product>): Setup => ({
  machine,
  point: { ...point, product: { ...point.product, ...change } },
})

/** The largest grain that still fits (of plates: the thickest plate). */
const largestGrainMm = ({ product, heightMm, widthMm, lengthMm }: Point): number =>
  product.structure === 'plates' ? heightMm : Math.min(heightMm, widthMm, lengthMm)

/** Size of the grains. */
export const grain: Input = {
  id: 'grain',
  unit: 'mm',
  scale: 'log',
  families: ['xray'],
  appliesAt: (point) => hasGaps(point) && point.product.grainMm > 0,
  present: ({ point }) => point.product.grainMm,
  range: ({ point }) => {
    const { grainMm } = point.product
    return [grainMm / 4, Math.max(grainMm, Math.min(grainMm * 3, largestGrainMm(point)))]
  },
  at: (setup, grainMm) => withProduct(setup, { grainMm }),
}

/** Share of the bed that is food, the rest air. */
export const packing: Input = {
  id: 'packing',
  unit: '',
  scale: 'linear',
  families: ['xray', 'coil'],
  appliesAt: hasGaps,
  present: ({ point }) => point.product.packing,
  range: ({ point: { product } }) => [
    Math.min(PACKING[0], product.packing),
    Math.max(PACKING[1], product.packing),
  ],
  at: (setup, value) => withProduct(setup, { packing: value }),
}

/** Thickness variation of the food, rms over 2 to 20 mm. */
export const unevenness: Input = {
  id: 'unevenness',
  unit: 'mm',
  scale: 'linear',
  families: ['xray'],
  appliesAt: everywhere,
  present: ({ point }) => point.product.unevennessMm,
  range: ({ point }) => [0, Math.max(UNEVENNESS_MM, 2 * point.product.unevennessMm)],
  at: (setup, unevennessMm) => withProduct(setup, { unevennessMm }),
}
