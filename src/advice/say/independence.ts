import type { Brief } from '../../contract/index.ts'
import type { Standing } from '../stages.ts'
import { nameWords, wordList } from './words.ts'

/** A machine at a point. */
export interface Placed {
  readonly point: number
  readonly option: Pick<Standing, 'family' | 'label'>
}

/** Why two machines miss, or do not miss, the same piece. */
function why(a: Placed, b: Placed): string {
  if (a.option.family !== b.option.family)
    return `${a.option.label} and ${b.option.label} look at different things (one at what stops x-rays, one at what conducts or is magnetic), so their misses go together only through what both share: a piece that is simply small, a reject that does not act, a line that runs on.`
  if (a.point !== b.point)
    return `${a.option.label} and ${b.option.label} look at the same thing twice. Between two points a piece turns and moves, so an unlucky lie is not repeated; a piece too small or too like the food is missed at both.`
  return `${a.option.label} and ${b.option.label} look at the same thing in the same pack: what hides a piece from one, a thick place, an edge, its size, hides it from the other.`
}

/**
 * Whether the misses of several uses may be multiplied, in words; empty for one use or none. `twice` are the
 * contaminants that more than one of them can find.
 */
export function independenceWords(brief: Brief, uses: readonly Placed[], twice: readonly number[]): string {
  if (uses.length < 2) return ''
  if (twice.length === 0)
    return 'No contaminant is looked for twice in this set, so there are no chances to multiply.'
  const pieces = wordList(twice.map((c) => nameWords(brief, c)))
  const pairs = uses.flatMap((a, i) => uses.slice(i + 1).map((b) => why(a, b)))
  return `Looked for more than once: ${pieces}. Chances of a miss multiply only where the misses are independent. ${[...new Set(pairs)].join(' ')}`
}
