import type { Part, Point, Product, Stage } from '../contract/index.ts'

/** Below this packing a granular pack is taken as partly empty, not as loosely filled (judgement). */
export const LEAST_PACKING = 0.3
/** A height that holds this much more than the mass has headspace. */
const TOO_MUCH = 1.1

interface Packed {
  readonly stage: Stage
  readonly massG: number | null
  readonly heightMm: number
  readonly widthMm: number
  readonly lengthMm: number
  readonly outline: Point['outline']
  readonly parts: readonly Pick<Part, 'place'>[]
  /** As typed; null where not given. */
  readonly filledMm: number | null
  readonly packing: number | null
}

/** How high the food fills a pack, and how densely. */
export interface Filling {
  readonly filledMm: number
  readonly packing: number
  /** True where the height, or the packing, follows from the mass. */
  readonly heightFromMass: boolean
  readonly packingFromMass: boolean
}

/** Base of the food, mm²: a standing cylinder takes π/4 of its box. */
const baseMm2 = ({ widthMm, lengthMm, outline }: Pick<Point, 'widthMm' | 'lengthMm' | 'outline'>): number =>
  widthMm * lengthMm * (outline === 'cylinder' ? Math.PI / 4 : 1)

/** Height that a mass fills at a packing, mm: mass / (density · packing · base). */
export function heightOfMassMm(
  point: Pick<Point, 'widthMm' | 'lengthMm' | 'outline'>,
  massG: number,
  densityGPerCm3: number,
  packing: number,
): number {
  return (massG * 1000) / (densityGPerCm3 * packing * baseMm2(point))
}

/** A solid with no container round it has its own shape: its height is that of its thickest place, not of a box. */
const ownShape = (pack: Packed, { structure }: Product): boolean =>
  ['solid', 'inclusions'].includes(structure) &&
  !pack.parts.some(({ place }) => place === 'wall' || place === 'tray')

/**
 * What the mass says of the filled height and, in granular food, of the packing. What was typed wins. Granular:
 * packing follows from mass and size, unless it came below 0.3; then the usual packing and headspace. Everything
 * else: the filled height follows where the stated height holds more than 10 % too much.
 */
export function fillingOf(pack: Packed, product: Product): Filling {
  const { massG, heightMm } = pack
  const typedMm = pack.filledMm === null ? null : Math.min(pack.filledMm, heightMm)
  const asStated: Filling = {
    filledMm: typedMm ?? heightMm,
    packing: product.packing,
    heightFromMass: false,
    packingFromMass: false,
  }
  if (massG === null || pack.stage !== 'packed' || ownShape(pack, product)) return asStated
  const fills = (packing: number) => heightOfMassMm(pack, massG, product.densityGPerCm3, packing)
  if (product.grainMm > 0 && pack.packing === null) {
    const follows = fills(1) / asStated.filledMm
    if (follows >= LEAST_PACKING) return { ...asStated, packing: Math.min(1, follows), packingFromMass: true }
  }
  const filledMm = fills(product.packing)
  const headspace = typedMm === null && heightMm > TOO_MUCH * filledMm
  return headspace ? { ...asStated, filledMm, heightFromMass: true } : asStated
}
