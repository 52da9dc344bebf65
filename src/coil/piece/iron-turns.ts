import type { Piece } from './piece.ts'
import { responseTable } from './response-table.ts'
import { sizeAtMm } from './size-grid.ts'

/**
 * Size at which the reactive answer of a ferromagnetic ball is greatest, mm: above it the ball turns from
 * magnetic towards flux-expelling and grows harder to tell from a wet product. 4.0 mm at 850 kHz, 6.8 mm at
 * 300 kHz for mild steel. The permeability of real steel changes with frequency there, so a size above this
 * is not to be trusted.
 */
export function ironTurnsAtMm(piece: Piece, frequencyHz: number): number {
  const { re } = responseTable({ kind: 'sphere' }, 'along', piece.metal, frequencyHz)
  let peak = 0
  for (let k = 1; k < re.length; k++) if (re[k]! > re[peak]!) peak = k
  return sizeAtMm(peak)
}

/** True where a ferromagnetic ball of this size lies above that point at every frequency in use. */
export function ironTurned(piece: Piece, sizeMm: number | null, frequenciesHz: readonly number[]): boolean {
  if (!piece.metal.ferromagnetic || piece.shape.kind !== 'sphere' || sizeMm === null) return false
  return frequenciesHz.every((f) => sizeMm > ironTurnsAtMm(piece, f))
}
