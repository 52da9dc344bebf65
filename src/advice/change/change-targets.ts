import type { Advice, Brief, Option } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import { isPromised, meetsAll } from '../assess/meets.ts'
import { isFoil } from '../facts/kinds/pack-kind.ts'
import { standing } from '../order/order.ts'

/** One size that stands between a machine and a better verdict at its point. */
export interface Pair {
  readonly point: number
  readonly option: Option
  readonly contaminant: number
}

type Points = readonly { readonly options: readonly Option[] }[]

/**
 * Machines worth changing the line for at one point: the one that comes first, or, where one fits best
 * already (or misses only what all miss), the first that asks less of its owner and
 * finds the same at some size; and a coil that only the foil of the pack keeps out.
 */
function targetsAt(brief: Brief, options: readonly Option[], point: number): Option[] {
  const best = options.find((o) => o.verdict === 'best-fit' || missesOnlyWhatAllMiss(o, options))
  const open = options.filter((o) => o.rank !== null && !meetsAll(o.findings))
  const able = open.filter((o) => !standing(o).excluded)
  const first = best && meetsAll(best.findings) ? undefined : able[0]
  const met = metByAny(options)
  const reaches = (o: Option) => o.findings.every((f) => !met.has(f.contaminant) || f.expectedMm !== null)
  const lighter = best ? able.find((o) => o.burden < best.burden && reaches(o)) : undefined
  const wrapped = brief.points[point]!.parts.some((part) => isFoil(part, materials))
  const coil = wrapped ? open.find((o) => o.family === 'coil') : undefined
  const tooSmall = options.find((o) => o.rank !== null && o.askFor !== null)
  return [...new Set([first, lighter, coil, tooSmall])].filter((o) => o !== undefined)
}

/** Contaminants that some ranked option meets. */
function metByAny(options: readonly Option[]): ReadonlySet<number> {
  const ranked = options.filter((o) => o.rank !== null)
  return new Set(
    ranked.flatMap((o) => o.findings.filter((f) => isPromised(f.meets)).map((f) => f.contaminant)),
  )
}

/** A ranked option that meets every size that any option here meets, while some size is met by none. */
function missesOnlyWhatAllMiss(option: Option, options: readonly Option[]): boolean {
  const met = metByAny(options)
  if (option.rank === null || met.size === 0 || standing(option).excluded) return false
  return option.findings.every((f) => isPromised(f.meets) || !met.has(f.contaminant))
}

/**
 * Sizes missed by the machines worth changing something for: those with a size first, of
 * these what nothing meets yet, then the nearest.
 */
export function blockingPairs(brief: Brief, points: Points, unmet: Advice['combination']['unmet']): Pair[] {
  const pairs = points.flatMap(({ options }, point) =>
    targetsAt(brief, options, point).flatMap((option) =>
      option.findings
        .filter((f) => (option.askFor !== null || f.meets !== 'yes') && f.mustFindMm !== null)
        .map((f) => ({
          pair: { point, option, contaminant: f.contaminant },
          met: unmet.some(({ contaminant }) => contaminant === f.contaminant) ? 0 : 1,
          gap: (f.cautiousMm ?? f.expectedMm ?? Number.POSITIVE_INFINITY) / f.mustFindMm!,
        })),
    ),
  )
  const nearer = (a: number, b: number) => (a === b ? 0 : a - b)
  const far = (gap: number) => (gap === Number.POSITIVE_INFINITY ? 1 : 0)
  return pairs
    .sort((a, b) => far(a.gap) - far(b.gap) || a.met - b.met || nearer(a.gap, b.gap))
    .map(({ pair }) => pair)
}
