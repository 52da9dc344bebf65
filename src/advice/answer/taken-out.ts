import type { Ordered } from '../stages.ts'

/** What takes most of a contaminant out on a line, %. */
export interface TakenOut {
  readonly label: string
  readonly leastPct: number
  readonly mostPct: number
}

/**
 * The machine without sizes (sieve, magnet, sorter, separator) that takes most of a contaminant out at a point of
 * the line, by the middle of its range; null where none has a use. What rules speak against does not count.
 */
export function takenOut(
  { removals, outcomes }: Pick<Ordered, 'removals' | 'outcomes'>,
  points: readonly number[],
  contaminant: number,
): TakenOut | null {
  const ruledOut = (point: number, equipment: string) =>
    outcomes.some(
      (o) =>
        o.outcome === 'fired' &&
        o.type === 'excludes' &&
        o.pointIndex === point &&
        o.equipment === equipment &&
        (o.contaminant === null || o.contaminant === contaminant),
    )
  const shares = points.flatMap((point) =>
    removals[point]!.filter(({ equipment }) => !ruledOut(point, equipment)).flatMap(({ label, findings }) =>
      findings
        .filter((f) => f.contaminant === contaminant && f.applicable)
        .map(({ shareRemoved: [least, most] }) => ({ label, least, most })),
    ),
  )
  const best = shares.sort((a, b) => b.least + b.most - (a.least + a.most))[0]
  return best
    ? { label: best.label, leastPct: Math.round(100 * best.least), mostPct: Math.round(100 * best.most) }
    : null
}
