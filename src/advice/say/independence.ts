import type { Brief, Finding, Option } from '../../contract/index.ts'
import { contaminantWords, wordList } from './why-not.ts'

/** A machine at a point. */
export interface Placed {
  readonly point: number
  readonly option: Pick<Option, 'family' | 'label' | 'findings'>
}

const finds = ({ findings }: Placed['option']) =>
  new Set(findings.filter((f: Finding) => f.expectedMm !== null).map((f) => f.contaminant))

/** Contaminants that more than one of the uses can find at some size. */
function seenTwice(uses: readonly Placed[]): number[] {
  const times = new Map<number, number>()
  for (const use of uses) for (const c of finds(use.option)) times.set(c, (times.get(c) ?? 0) + 1)
  return [...times].flatMap(([c, n]) => (n > 1 ? [c] : [])).sort((a, b) => a - b)
}

/** Why two machines miss, or do not miss, the same piece. */
function why(a: Placed, b: Placed): string {
  if (a.option.family !== b.option.family)
    return `${a.option.label} and ${b.option.label} look at different things (one at what stops x-rays, one at what conducts or is magnetic), so their misses go together only through what both share: a piece that is simply small, a reject that does not act, a line that runs on.`
  if (a.point !== b.point)
    return `${a.option.label} and ${b.option.label} look at the same thing twice. Between two points a piece turns and moves, so an unlucky lie is not repeated; a piece too small or too like the food is missed at both.`
  return `${a.option.label} and ${b.option.label} look at the same thing in the same pack: what hides a piece from one, a thick place, an edge, its size, hides it from the other.`
}

/** Whether the misses of several uses may be multiplied, in words; empty for one use or none. */
export function independenceWords(brief: Brief, uses: readonly Placed[]): string {
  if (uses.length < 2) return ''
  const twice = seenTwice(uses)
  if (twice.length === 0)
    return 'No contaminant is looked for twice in this set, so there are no chances to multiply.'
  const pieces = wordList(twice.map((c) => contaminantWords(brief, c)))
  const pairs = uses.flatMap((a, i) => uses.slice(i + 1).map((b) => why(a, b)))
  return `Looked for more than once: ${pieces}. Chances of a miss multiply only where the misses are independent. ${[...new Set(pairs)].join(' ')}`
}
