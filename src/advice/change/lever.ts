import type { BriefInput } from '../../contract/index.ts'
import type { LEVERS } from '../facts/list/search-facts.ts'
import { withValue } from './with-value.ts'

export type LeverId = (typeof LEVERS)[number]

/** One value of the brief moved. */
export interface Move {
  readonly path: string
  readonly from: number | string
  readonly to: number | string
}

/**
 * Something a person can act on. `at(share)` gives the moves for a share from 0 (as it is) to 1 (as far as it
 * goes), in figures a person would set; a lever that cannot be dosed gives the same moves for every share.
 */
export interface Lever {
  readonly id: LeverId
  readonly at: (share: number) => Move[]
  readonly dosed: boolean
}

/** How far a change may go (judgement: beyond these a line is another line). */
export const LEVER_LIMITS = {
  shallowestShare: 0.25,
  fastestMPerMin: 120,
  slowestShare: 0.4,
  gapBetweenPacksMm: 50,
  falseRejectsPerPack: 0.01,
  narrowestPipeShare: 0.7,
  narrowestPipeMm: 40,
  widestBeltMm: 1200,
} as const

/** Down and up to a multiple of a step, as a person would set it. */
export const down = (value: number, step: number) =>
  Number((Math.floor(value / step + 1e-9) * step).toPrecision(6))
export const up = (value: number, step: number) =>
  Number((Math.ceil(value / step - 1e-9) * step).toPrecision(6))

/** The brief as given with the moves made. */
export const moved = (given: BriefInput, moves: readonly Move[]): BriefInput =>
  moves.reduce((brief, { path, to }) => withValue(brief, path, to), given)
