import { isExpected, isPromised } from '../advice/assess/meets.ts'
import type { AnswerRow } from '../contract/index.ts'
import { sizesDiffer } from './differences.ts'
import type { Laid, Wanted } from './laid.ts'

/** What the advice says of one piece with each of two packs; null where that brief does not look for it. */
export interface PackRow {
  readonly contaminant: number
  readonly rows: readonly [AnswerRow | null, AnswerRow | null]
  /** Machine, size, or how what is asked is met differ by more than the model can tell. */
  readonly differs: boolean
  /** What the second pack makes of it: met where it was not, or the reverse; same: no more than a change of size. */
  readonly turn: 'better' | 'worse' | 'same'
}

/** 2 promised, 1 expected, 0 neither. */
const standing = (row: AnswerRow) => (isPromised(row.meets) ? 2 : isExpected(row.meets) ? 1 : 0)

/** Of several lines the one that decides: where least is met, then the largest size. */
function deciding(rows: readonly AnswerRow[]): AnswerRow | null {
  const size = ({ promisedMm, expectedMm }: AnswerRow) => promisedMm ?? expectedMm ?? Number.POSITIVE_INFINITY
  return [...rows].sort((a, b) => standing(a) - standing(b) || size(b) - size(a))[0] ?? null
}

function differ(first: AnswerRow | null, second: AnswerRow | null): boolean {
  if (first === null || second === null) return first !== second
  return (
    first.equipment !== second.equipment ||
    first.meets !== second.meets ||
    first.askedMm !== second.askedMm ||
    sizesDiffer(first.promisedMm, second.promisedMm) ||
    sizesDiffer(first.expectedMm, second.expectedMm)
  )
}

/** The answers of two briefs, piece by piece. */
export function packRows(laid: readonly [Laid, Laid], wanted: readonly Wanted[]): PackRow[] {
  return wanted.map(({ at }, contaminant) => {
    const [first, second] = laid.map(({ advice }, which) =>
      deciding(advice.answer.rows.filter((row) => row.contaminant === at[which])),
    ) as [AnswerRow | null, AnswerRow | null]
    const change = first && second ? standing(second) - standing(first) : 0
    return {
      contaminant,
      rows: [first, second],
      differs: differ(first, second),
      turn: change > 0 ? 'better' : change < 0 ? 'worse' : 'same',
    }
  })
}
