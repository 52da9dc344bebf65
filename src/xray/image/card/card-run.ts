import type { Placement, Shape } from '../../../contract/index.ts'
import type { Piece } from '../pack/piece.ts'

/** One line of a table of test runs: a piece on one machine, or (material empty) packs without pieces. */
export interface CardRun {
  readonly equipment: string
  readonly piece: string
  readonly material: string
  readonly shape: Shape | ''
  readonly sizeMm: number | null
  readonly lengthMm: number | null
  readonly faceMm2: number | null
  readonly placement: Placement | ''
  readonly position: string
  readonly runs: number
  /** Pieces: runs in which it was found. Clean packs: packs rejected. */
  readonly found: number
  /** Mean over the runs of the strongest filter answer, standard deviations of the noise; null where not read. */
  readonly signal: number | null
  readonly threshold: number | null
  readonly note: string
}

/** A piece with what was counted over the runs. */
export interface Tally {
  readonly piece: Piece
  found: number
  signals: number[]
}

const rounded = (value: number, digits: number) => Number(value.toFixed(digits))

/** The line of one piece. */
export function runOf(
  equipment: string,
  sheet: number,
  index: number,
  { piece, found, signals }: Tally,
  runs: number,
  threshold: number,
  seed: number,
): CardRun {
  const mean = signals.length > 0 ? signals.reduce((sum, s) => sum + s, 0) / signals.length : null
  return {
    equipment,
    piece: `${sheet + 1}-${String(index + 1).padStart(2, '0')}`,
    material: piece.material,
    shape: piece.shape,
    sizeMm: piece.sizeMm,
    lengthMm: piece.shape === 'wire' ? piece.lengthMm : null,
    faceMm2: piece.shape === 'flake' ? piece.faceMm2 : null,
    placement: piece.placement,
    position: '',
    runs,
    found,
    signal: mean === null ? null : rounded(mean, 2),
    threshold: rounded(threshold, 2),
    note: `simulated, seed ${seed}; ${Math.round(piece.u)} mm along, ${Math.round(piece.v)} mm across`,
  }
}

/** The line of packs without pieces; `found` are the packs rejected. */
export function cleanRunOf(
  equipment: string,
  runs: number,
  rejected: number,
  threshold: number,
  seed: number,
): CardRun {
  return {
    equipment,
    piece: 'clean packs',
    material: '',
    shape: '',
    sizeMm: null,
    lengthMm: null,
    faceMm2: null,
    placement: '',
    position: '',
    runs,
    found: rejected,
    signal: null,
    threshold: rounded(threshold, 2),
    note: `simulated, seed ${seed}`,
  }
}
