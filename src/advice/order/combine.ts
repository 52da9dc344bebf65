import { entersBehind } from '../../brief/entry.ts'
import type { Advice, Brief, Option } from '../../contract/index.ts'
import { isPromised } from '../assess/meets.ts'
import { independenceWords } from '../say/independence.ts'
import { stillEnters } from '../say/still-enters.ts'

interface Use {
  readonly point: number
  readonly option: Option
  readonly covers: readonly number[]
}

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
function jobs(brief: Brief, uses: readonly Use[]): Advice['combination']['uses'] {
  const taken = new Set<number>()
  const named = [...uses]
    .sort((a, b) => b.point - a.point)
    .map(({ point, option, covers }) => {
      const contaminants = covers.filter((c) => !taken.has(c))
      for (const c of contaminants) taken.add(c)
      return { point: brief.points[point]!.name, equipment: option.equipment, contaminants }
    })
  return named.filter((use) => use.contaminants.length > 0).reverse()
}

function reachOf(set: readonly Use[]): Set<number> {
  return new Set(set.flatMap((use) => use.covers))
}

/**
 * The smallest set of uses over the inspection points that meets every size at its cautious value; among sets
 * of one size the one with the least burden, then the one that works latest in the flow (nothing more can
 * enter behind it). A use does not count for what the flow says enters behind its point. What no option meets
 * stays unmet and is named.
 */
export function combine(
  brief: Brief,
  points: readonly { readonly options: readonly Option[] }[],
): Advice['combination'] {
  const wanted = brief.contaminants.map((_, c) => c).filter((c) => brief.contaminants[c]!.mustFindMm !== null)
  const all: Use[] = points.flatMap(({ options }, point) =>
    options
      .filter((o) => o.rank !== null && o.verdict !== 'not-suitable')
      .map((option) => ({
        point,
        option,
        covers: option.findings
          .filter((f) => isPromised(f.meets) && entersBehind(brief, f.contaminant, point) !== true)
          .map((f) => f.contaminant),
      })),
  )
  const useful = all.filter((use) => use.covers.length > 0)
  const reachable = reachOf(useful)
  const unmet = wanted.filter((c) => !reachable.has(c))
  const target = wanted.filter((c) => reachable.has(c))
  if (target.length === 0) {
    const because =
      wanted.length === 0
        ? 'No contaminant has a size to find, so nothing can be met or missed.'
        : 'No machine compared here meets any size to find at the value that can be promised.'
    return { uses: [], unmet, because, independence: '', stillEnters: stillEnters(brief) }
  }
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
  if (!best) {
    return {
      uses: [],
      unmet: wanted,
      because: `More than ${MOST_USES} machines would be needed; look at the line itself first.`,
      independence: '',
      stillEnters: stillEnters(brief),
    }
  }
  const uses = jobs(brief, best.uses)
  const count = uses.length
  const because =
    count === 1
      ? 'One machine meets every size that any machine here meets, at the value that can be promised.'
      : `${count} machines together meet every size that any machine here meets; no smaller set does.`
  return {
    uses,
    unmet,
    because,
    independence: independenceWords(brief, best.uses),
    stillEnters: stillEnters(brief),
  }
}
