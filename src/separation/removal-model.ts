import type { LossUnit } from './assessment.ts'
import type { Variant } from './variant.ts'

/** What a machine takes out of one variant; low ≤ high ≤ ceiling, all 0 to 1. */
export interface VariantShare {
  readonly low: number
  readonly high: number
  readonly ceiling: number
  /** Calculation of the share. */
  readonly step: string
}

/** What is said beside the shares of a contaminant. */
export interface RemovalWords {
  readonly neverRemoves: string
  readonly condition: string
  readonly because: string
}

/** A machine at a point, ready to be asked about pieces. */
export interface RemovalModel {
  readonly goodProductLost: readonly [number, number] | null
  readonly goodProductLostUnit: LossUnit
  shareOf(variant: Variant): VariantShare
  wordsFor(variants: readonly Variant[], shares: readonly VariantShare[]): RemovalWords
}
