import { entersBehind } from '../../brief/entry.ts'
import type { Brief, Finding } from '../../contract/index.ts'
import { isAsked, isExpected } from '../assess/meets.ts'
import type { Combined, Line, Standing, Use } from '../stages.ts'
import { trialStanding } from './order.ts'
import { seenTwice } from './seen-twice.ts'

/** Sets of up to so many uses are all looked at; what they leave is added one machine at a time. */
const ALL_LOOKED_AT = 3

/** A machine at a point, with how well it meets each contaminant that counts there. */
interface Candidate<Placed extends Standing> {
  readonly point: number
  readonly option: Placed
  readonly levels: ReadonlyMap<number, number>
}

/** How well a size is met: 3 yes, 2 partly, 1 maybe, 0 not. */
const levelOf = ({ meets }: Finding): number =>
  meets === 'yes' ? 3 : meets === 'partly' ? 2 : meets === 'maybe' ? 1 : 0

function* subsets<T>(items: readonly T[], size: number, from = 0): Generator<T[]> {
  if (size === 0) {
    yield []
    return
  }
  for (let i = from; i <= items.length - size; i++) {
    for (const rest of subsets(items, size - 1, i + 1)) yield [items[i]!, ...rest]
  }
}

/** True for an option that can be put into use: in the order, not ruled out, and of a build that takes the pack. */
export const isUsable = ({ rank, excluded, askFor }: Standing): boolean =>
  rank !== null && !excluded && askFor === null

function candidatesOf<Placed extends Standing>(
  brief: Brief,
  line: Line,
  options: readonly (readonly Placed[])[],
): Candidate<Placed>[] {
  return line.points.flatMap((point) =>
    options[point]!.filter(isUsable).flatMap((option) => {
      const counts = option.findings.filter(
        (f) => isAsked(f) && isExpected(f.meets) && entersBehind(brief, f.contaminant, point) !== true,
      )
      return counts.length === 0
        ? []
        : [{ point, option, levels: new Map(counts.map((f) => [f.contaminant, levelOf(f)])) }]
    }),
  )
}

const levelIn = <P extends Standing>(set: readonly Candidate<P>[], contaminant: number): number =>
  Math.max(0, ...set.map(({ levels }) => levels.get(contaminant) ?? 0))

/** Each use with the contaminants it is there for: of several that meet one as well, the last in the flow. */
function jobs<P extends Standing>(set: readonly Candidate<P>[], wanted: readonly number[]): Use<P>[] {
  const last = [...set].sort((a, b) => b.point - a.point)
  const workerOf = (c: number) => last.find(({ levels }) => (levels.get(c) ?? 0) === levelIn(set, c))
  return set
    .map((one) => ({
      point: one.point,
      option: one.option,
      contaminants: wanted.filter((c) => levelIn(set, c) > 0 && workerOf(c) === one),
    }))
    .filter(({ contaminants }) => contaminants.length > 0)
    .sort((a, b) => a.point - b.point)
}

const SEVERITIES = [5, 4, 3, 2, 1] as const

/** Sizes a set does not promise, severity by severity from the gravest, then those it does not even expect. */
function lossOf<P extends Standing>(brief: Brief, set: readonly Candidate<P>[], wanted: readonly number[]) {
  const below = (level: number) => wanted.filter((c) => levelIn(set, c) < level)
  return [
    ...SEVERITIES.map((s) => below(2).filter((c) => brief.contaminants[c]!.severity === s).length),
    below(1).length,
  ]
}

/** What a set costs; of two lists the first difference decides, and less is better. */
function costOf<P extends Standing>(set: readonly Candidate<P>[], wanted: readonly number[]) {
  return [
    set.length,
    set.reduce((sum, { option }) => sum + trialStanding(option.findings), 0),
    wanted.filter((c) => levelIn(set, c) === 2).length,
    set.reduce((sum, { option }) => sum + option.burden, 0),
    set.reduce((sum, { option }) => sum + option.rank!, 0),
    -Math.max(...set.map(({ point }) => point)),
  ]
}

function difference(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, i) => value !== b[i])
  return at < 0 ? 0 : a[at]! - b[at]!
}

/** Without those that another one equals or betters in everything. */
function undominated<P extends Standing>(candidates: readonly Candidate<P>[]): Candidate<P>[] {
  const asGood = (a: Candidate<P>, b: Candidate<P>) =>
    a.option.burden <= b.option.burden &&
    a.option.rank! <= b.option.rank! &&
    a.point >= b.point &&
    [...b.levels].every(([c, level]) => (a.levels.get(c) ?? 0) >= level)
  return candidates.filter(
    (one, at) =>
      !candidates.some((other, i) => i !== at && asGood(other, one) && (i < at || !asGood(one, other))),
  )
}

/** Of candidates the best of each point, by the order there. */
const firstOfEachPoint = <P extends Standing>(candidates: readonly Candidate<P>[]) =>
  candidates.filter(({ point, option }) =>
    candidates.every((other) => other.point !== point || other.option.rank! >= option.rank!),
  )

/**
 * The smallest set of uses over the points of one line that does the most: every size promised that any machine
 * there promises, then every one that is at least expected. Where one machine does it alone, it is the first of its
 * point's order; of points, and of larger sets, the one that trials on the product speak for, then that with the fewest places left out, then the least burden, then
 * the better ranks, then the one that works latest in the flow (nothing more can enter behind it). A use does not
 * count for what the flow says enters behind its point.
 */
export function combine<Placed extends Standing>(
  brief: Brief,
  line: Line,
  options: readonly (readonly Placed[])[],
): Combined<Placed> {
  const asked = brief.contaminants.flatMap(({ mustFindMm }, c) => (mustFindMm === null ? [] : [c]))
  if (asked.length === 0) return { kind: 'nothing-asked', uses: [], seenTwice: [] }
  const all = candidatesOf(brief, line, options)
  const reachable = asked.filter((c) => levelIn(all, c) > 0)
  if (reachable.length === 0) return { kind: 'nothing-met', uses: [], seenTwice: [] }
  const least = lossOf(brief, all, reachable)
  const alone = all.filter((one) => difference(lossOf(brief, [one], reachable), least) === 0)
  const able = alone.length > 0 ? firstOfEachPoint(alone) : undominated(all)
  const set = bestSet(able, least, (one) => [...lossOf(brief, one, reachable), ...costOf(one, reachable)])
  const uses = jobs(set, reachable)
  return { kind: 'met', uses, seenTwice: seenTwice(uses.map(({ option }) => option)) }
}

/** The set of least worth that loses no more than `least`: of the smallest size that does, or grown from it. */
function bestSet<C>(
  candidates: readonly C[],
  least: readonly number[],
  worthOf: (set: readonly C[]) => number[],
) {
  const better = (a: readonly C[], b: readonly C[]) => difference(worthOf(a), worthOf(b)) < 0
  const isDone = (set: readonly C[]) =>
    set.length > 0 && difference(worthOf(set).slice(0, least.length), least) === 0
  let best: readonly C[] = []
  for (let size = 1; size <= ALL_LOOKED_AT && !isDone(best); size++)
    for (const set of subsets(candidates, size)) if (best.length === 0 || better(set, best)) best = set
  while (!isDone(best)) {
    const rest = candidates.filter((one) => !best.includes(one))
    best = rest.map((one) => [...best, one]).reduce((a, b) => (better(b, a) ? b : a))
  }
  return best
}
