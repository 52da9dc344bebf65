import type { Comparison } from '../../src/compare/comparison.ts'

export interface ComparePageProps {
  readonly comparison: Comparison
  readonly title: string
  /** Contaminants in words, in the order of the brief. */
  readonly pieces: readonly string[]
  /** False rejects of each side in words, e.g. "1 in 1,000: about 77 packs a day". */
  readonly rejectWords: readonly string[]
  readonly packed: string
  /** The address of this page without its print sign. */
  readonly query: string
  readonly printedOn: string | null
}

/** Id of the form all boxes of the page belong to. */
export const COMPARE_FORM = 'compare'
