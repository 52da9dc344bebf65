import type { Brief } from '../../../contract/index.ts'
import { metals } from '../../../reference/electrical.ts'

/** How a magnet and a coil take a material; words of the reference, and one for what is no metal. */
export const MAGNETISMS = ['ferromagnetic', 'weak', 'none', 'no metal'] as const
export const TEST_PIECES = ['ferrous', 'non-ferrous', 'austenitic', 'no metal'] as const

export const magnetismOf = (material: string): (typeof MAGNETISMS)[number] =>
  metals.get(material)?.magnetism ?? 'no metal'

export const testPieceOf = (material: string): (typeof TEST_PIECES)[number] =>
  metals.get(material)?.testPiece ?? 'no metal'

/** Plastics that crack rather than bend (reference ids; common practice, no source). */
const BRITTLE = ['ps', 'pmma', 'pc', 'abs']

/** What a glass and brittle-plastic register is about. */
export const isBrittle = (material: string, kind: string | undefined): boolean =>
  kind === 'glass' || BRITTLE.includes(material)

interface MetalCount {
  readonly metals: number
  readonly ferrous: number
  readonly plain: number
  readonly austenitic: number
  readonly others: number
}

/** How many contaminants of each sort a brief asks about. */
export function countMetals(contaminants: Brief['contaminants']): MetalCount {
  const count = (wanted: (material: string) => boolean) =>
    contaminants.filter(({ material }) => wanted(material)).length
  const known = count((material) => metals.has(material))
  return {
    metals: known,
    ferrous: count((material) => magnetismOf(material) === 'ferromagnetic'),
    plain: count((material) => magnetismOf(material) === 'none'),
    austenitic: count((material) => magnetismOf(material) === 'weak'),
    others: contaminants.length - known,
  }
}
