import type { Calculation, Machine } from '../contract/index.ts'

/** Machines that take pieces out and so have a share, not a size. */
export type RemovalMachine = Extract<Machine, { family: 'sieve' | 'magnet' | 'optical' | 'density' }>
export type RemovalFamily = RemovalMachine['family']

/** What lost good product is counted in; empty where none is counted. */
export type LossUnit = 'share of the product' | 'g per piece thrown out' | ''

/** One contaminant at one removal machine. Shares are of the pieces that arrive, in one run, 0 to 1. */
export interface RemovalFinding {
  /** Index in the brief's contaminants. */
  readonly contaminant: number
  /** False: the machine has no use here, and `because` says why; shares are then 0. */
  readonly applicable: boolean
  /** Unfavourable and favourable end over all stated assumptions. */
  readonly shareRemoved: readonly [number, number]
  /** What no larger piece lifts. */
  readonly ceiling: number
  readonly neverRemoves: string
  readonly condition: string
  readonly goodProductLost: readonly [number, number] | null
  readonly goodProductLostUnit: LossUnit
  readonly because: string
  /** Id of the calculation of the share; empty where nothing was computed. */
  readonly calculation: string
}

/** What a removal machine does at one inspection point. Never ranked, neither inside nor against detectors. */
export interface RemovalAssessment {
  readonly family: RemovalFamily
  readonly equipment: string
  readonly label: string
  readonly applicable: boolean
  readonly findings: readonly RemovalFinding[]
  readonly calculations: readonly Calculation[]
}
