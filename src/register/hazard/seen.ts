import { missed } from '../rate/misses.ts'
import type { ControlChance } from '../sizes/control-chance.ts'
import { type FragmentSizes, shareFrom } from '../sizes/fragment-sizes.ts'

/** Longest length from which a piece counts as of concern, mm: hard or sharp, in food eaten as it is. */
export const CONCERN_MM = 7

/** Long pieces found at least so often, in per cent, for a shape to count as seen, and as seen at all. */
export interface SeenLimits {
  readonly seenPct: number
  readonly seenAtAllPct: number
}

export interface Seen {
  readonly sees: 'yes' | 'partly' | 'no'
  /** Shares of long pieces found, of the shape seen worst and best. */
  readonly worst: number
  readonly best: number
  readonly worstShape: string
}

/** Whether a control finds long pieces, shape by shape: what one shape hides, the mean of all would cover. */
export function seenBy(
  control: ControlChance,
  sizes: FragmentSizes,
  { seenPct, seenAtAllPct }: SeenLimits,
): Seen {
  const share = shareFrom(sizes, CONCERN_MM)
  const byShape = sizes.shapes.map((shape) => {
    const alone = { ...sizes, shapes: [{ ...shape, share: 1 }] }
    const passes = missed(alone, [{ ...control, workingShare: 1 }], CONCERN_MM).independent
    return { name: shape.name, found: 1 - passes / share }
  })
  const worst = byShape.reduce((a, b) => (b.found < a.found ? b : a))
  const best = Math.max(...byShape.map(({ found }) => found))
  const sees = 100 * worst.found >= seenPct ? 'yes' : 100 * best >= seenAtAllPct ? 'partly' : 'no'
  return { sees, worst: worst.found, best, worstShape: worst.name }
}
