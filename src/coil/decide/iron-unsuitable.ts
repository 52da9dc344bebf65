import { ironTurned } from '../piece/iron-turns.ts'
import type { Piece } from '../piece/piece.ts'
import type { FindingContext } from './finding-context.ts'

/** Iron above this share of the opening's height is no piece but a part: the frequency does not suit (judgement). */
const SHARE_OF_OPENING = 1 / 3

/** True where iron would have to be so large that its size is not to be trusted at these frequencies. */
export function unsuitableForIron(
  { opening }: FindingContext,
  piece: Piece,
  foundMm: number | null,
  frequenciesHz: readonly number[],
): boolean {
  if (foundMm === null || !piece.metal.ferromagnetic) return false
  const highMm = SHARE_OF_OPENING * Math.min(opening.heightMm, opening.widthMm)
  return foundMm > highMm || ironTurned(piece, foundMm, frequenciesHz)
}
