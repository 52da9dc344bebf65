import { entersBehind } from '../../brief/entry.ts'
import type { Brief } from '../../contract/index.ts'
import { isPromised } from '../assess/meets.ts'
import type { Combined, Standing, Use } from '../stages.ts'
import { seenTwice } from './seen-twice.ts'

/** Largest number of uses a combination may have; more is a sign that the line itself should change. */
const MOST_USES = 3

function* subsets<T>(items: readonly T[], size: number, from = 0): Generator<T[]> {
  if (size === 0) {
    yield []
    return
  }
  for (let i = from; i <= items.length - size; i++) {
    for (const rest of subsets(items, size - 1, i + 1)) yield [items[i]!, ...rest]
  }
}

/** Each use with the contaminants it is there for: of several that meet one, the last in the flow. */
function jobs(uses: readonly Use[]): Use[] {
  const taken = new Set<number>()
  const named = [...uses]
    .sort((a, b) => b.point - a.point)
    .map((use) => {
      const contaminants = use.contaminants.filter((c) => !taken.has(c))
      for (const c of contaminants) taken.add(c)
      return { ...use, contaminants }
    })
  return named.filter((use) => use.contaminants.length > 0).reverse()
}

const reachOf = (set: readonly Use[]): Set<number> => new Set(set.flatMap((use) => use.contaminants))

const NO_USES = { uses: [], seenTwice: [] } as const

/**
 * The smallest set of uses over the inspection points that meets every size at its cautious value; among sets
 * of one size the one with the least burden, then the one that works latest in the flow (nothing more can
 * enter behind it). A use does not count for what the flow says enters behind its point. What no option meets
 * stays unmet.
 */
export function combine(
  brief: Brief,
  points: readonly { readonly options: readonly Standing[] }[],
): Combined {
  const wanted = brief.contaminants.map((_, c) => c).filter((c) => brief.contaminants[c]!.mustFindMm !== null)
  const all: Use[] = points.flatMap(({ options }, point) =>
    options
      .filter((o) => o.rank !== null && o.verdict !== 'not-suitable')
      .map((option) => ({
        point,
        option,
        contaminants: option.findings
          .filter((f) => isPromised(f.meets) && entersBehind(brief, f.contaminant, point) !== true)
          .map((f) => f.contaminant),
      })),
  )
  const useful = all.filter((use) => use.contaminants.length > 0)
  const reachable = reachOf(useful)
  const unmet = wanted.filter((c) => !reachable.has(c))
  const target = wanted.filter((c) => reachable.has(c))
  if (target.length === 0)
    return { kind: wanted.length === 0 ? 'nothing-asked' : 'nothing-met', unmet, ...NO_USES }
  let best: { uses: Use[]; burden: number; latest: number } | null = null
  for (let size = 1; size <= MOST_USES && !best; size++) {
    for (const uses of subsets(useful, size)) {
      const reach = reachOf(uses)
      if (!target.every((c) => reach.has(c))) continue
      const burden = uses.reduce((sum, use) => sum + use.option.burden, 0)
      const latest = Math.max(...uses.map((use) => use.point))
      if (!best || burden < best.burden || (burden === best.burden && latest > best.latest)) {
        best = { uses, burden, latest }
      }
    }
  }
  if (!best) return { kind: 'too-many', unmet: wanted, ...NO_USES }
  return {
    kind: 'met',
    uses: jobs(best.uses),
    unmet,
    seenTwice: seenTwice(best.uses.map(({ option }) => option)),
  }
}
