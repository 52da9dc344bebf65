import type { DrawnSheet } from '../../card/drawn-sheet.ts'
import { type Grid, type Square, touches } from './squares.ts'

/** What finding a piece earns and marking good food costs. */
export const EARNS = 2
export const COSTS = 1

/** One side's result of a round. */
export interface Tally {
  readonly found: number
  readonly falseMarks: number
  readonly points: number
}

const tally = (found: number, falseMarks: number): Tally => ({
  found,
  falseMarks,
  points: EARNS * found - COSTS * falseMarks,
})

/** People: a piece is found by a marked square it reaches into; a marked square without one is a false mark. */
export function ofPeople({ pieces }: DrawnSheet, grid: Grid, marked: readonly Square[]): Tally {
  const found = pieces.filter((piece) => marked.some((square) => touches(grid, square, piece))).length
  const idle = marked.filter((square) => !pieces.some((piece) => touches(grid, square, piece))).length
  return tally(found, idle)
}

/** The machine, by the same rule: its false alarms are paid for like anybody's. */
export function ofMachine({ pieces, falseAlarms }: DrawnSheet): Tally {
  return tally(pieces.filter((piece) => piece.found).length, falseAlarms.length)
}
