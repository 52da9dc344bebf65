/** Sizes test pieces are made in, mm: the steps common in the trade (no source); between them nothing is promised. */
export const SERIES_MM = [
  0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 7, 8, 10, 12, 15, 20,
] as const

/** Chance of finding a piece of a size at one place of the pack on a healthy machine. */
export type ChanceBySize = (sizeMm: number) => number

/** Smallest of the sizes with at least this chance, nothing rounded; null where none has it. */
export function smallestWith(
  series: readonly number[],
  chance: ChanceBySize,
  atLeast: number,
): number | null {
  return series.find((sizeMm) => chance(sizeMm) >= atLeast) ?? null
}

/** Chance that a healthy machine fails a check of these passes, each with its own chance of finding. */
export function failsByItself(passes: readonly number[]): number {
  return 1 - passes.reduce((all, chance) => all * chance, 1)
}

/** Checks of a healthy machine that fail in a year. */
export function falseFailuresAYear(
  passes: readonly number[],
  checksPerDay: number,
  daysPerYear: number,
): number {
  return failsByItself(passes) * checksPerDay * daysPerYear
}

/**
 * Chance per pass at which false failures come at most so many a year, passes being alike. 0.9999 for one in a
 * quarter of 63 days with 17 checks of 9 passes.
 */
export function chanceNeeded(mostAYear: number, passes: number, checksPerDay: number, daysPerYear: number) {
  return (1 - mostAYear / (checksPerDay * daysPerYear)) ** (1 / passes)
}

/** Smallest piece whose passes bring at most so many false failures a year; null where none of the sizes does. */
export function routinePiece(
  series: readonly number[],
  passes: readonly ChanceBySize[],
  plan: { readonly checksPerDay: number; readonly daysPerYear: number; readonly mostAYear: number },
): { sizeMm: number; falseFailuresPerYear: number } | null {
  for (const sizeMm of series) {
    const chances = passes.map((chance) => chance(sizeMm))
    const falseFailuresPerYear = falseFailuresAYear(chances, plan.checksPerDay, plan.daysPerYear)
    if (falseFailuresPerYear <= plan.mostAYear) return { sizeMm, falseFailuresPerYear }
  }
  return null
}

/** What a check sees of a machine whose sizes have grown: 1.1 is 10 % worse. */
export interface Noticed {
  readonly worseBy: number
  /** Chance that one check fails, and that one of a day's checks does. */
  readonly chance: number
  readonly inADay: number
}

/** Chance that a check with a piece of this size notices that all findable sizes grew by each factor. */
export function notices(
  sizeMm: number,
  passes: readonly ChanceBySize[],
  worse: readonly number[],
  checksPerDay: number,
): Noticed[] {
  return worse.map((worseBy) => {
    const chance = failsByItself(passes.map((pass) => pass(sizeMm / worseBy)))
    return { worseBy, chance, inADay: 1 - (1 - chance) ** checksPerDay }
  })
}
