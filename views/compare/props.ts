import type { Comparison } from '../../src/compare/comparison.ts'
import type { Problem } from '../../src/contract/brief.ts'
import type { Sheet } from '../brief/sheet.ts'
import type { Names } from '../words/contaminant.ts'

export interface ComparePageProps {
  readonly comparison: Comparison
  readonly title: string
  /** Pieces in words and in short, in the order of the comparison. */
  readonly pieces: readonly string[]
  readonly piecesShort: readonly string[]
  /** False rejects of each side in words, e.g. "1 in 1,000: about 77 packs a day". */
  readonly rejectWords: readonly string[]
  /** What stands in the box of the one false-reject rate. */
  readonly rejectsTyped: string
  /** The brief, and that of the second pack where there is one. */
  readonly packed: string
  readonly packedOther: string | null
  /** The form of the second pack, with what was typed into it. */
  readonly otherPack: {
    readonly sheet: Sheet
    readonly pasted: string
    readonly problems: readonly Problem[]
  }
  readonly names: Names
  /** The address of this page without its print sign. */
  readonly query: string
  readonly printedOn: string | null
}

/** Id of the form all boxes of the page belong to. */
export const COMPARE_FORM = 'compare'

/** The packed brief a side belongs to. */
export const packOf = (side: Comparison['sides'][number], { packed, packedOther }: ComparePageProps) =>
  side.laid.mark === 'B' && packedOther !== null ? packedOther : packed
