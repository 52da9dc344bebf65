import type { Voice } from '../voice.ts'

/** A saying of the trade, held against the numbers. */
export interface Saying {
  readonly claim: readonly [full: string, plain: string]
  /** Worked out: whether the claim holds, what came out, and why. */
  readonly check: (voice: Voice) => {
    readonly holds: boolean
    readonly outcome: string
    readonly because: string
    readonly bars: readonly {
      readonly words: string
      readonly value: number | null
      readonly none?: string
    }[]
    readonly unit: string
    readonly title: string
  }
}

/** The expected size of one piece of those seen, mm. */
export const expected = (seen: { readonly expectedMm: readonly (number | null)[] }, at = 0) =>
  seen.expectedMm[at] ?? null

/** Bars are at most this share apart to count as the same. */
export const SAME = 1.15
export const alike = (a: number | null, b: number | null) =>
  a !== null && b !== null && Math.max(a, b) / Math.min(a, b) < SAME
