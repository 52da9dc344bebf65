import type { CleanRun, Demonstrated, ExactRow } from '../../contract/index.ts'
import { binomialAtMost, lowerBound } from '../../numerics/binomial.ts'
import type { SizeTally } from './units.ts'

/** The chance that has to be shown, and how sure. */
export const SHOWN_CHANCE = 0.9
export const CONFIDENCE = 0.95

/** Sizes one by one, exact: units found in every run of theirs. */
export function exactRows(tallies: readonly SizeTally[]): ExactRow[] {
  return tallies.map(({ sizeMm, units, foundAlways }) => ({
    sizeMm,
    runs: units,
    found: foundAlways,
    lower95: lowerBound(foundAlways, units, CONFIDENCE),
  }))
}

/** Chance of the piece by itself, when the machine also rejects `falseRejects` of packs with nothing in them. */
export const ownChance = (chance: number, falseRejects: number): number =>
  (chance - falseRejects) / (1 - falseRejects)

/** Fewest units that could show 0.90 at 95 % with none missed: 29. */
const enough = (units: number): boolean => binomialAtMost(0, units, 1 - SHOWN_CHANCE) <= 1 - CONFIDENCE

/**
 * Smallest size shown by its own count. Sizes with enough units are asked from the largest down and the asking stops
 * at the first that does not show it, so that asking several sizes costs no confidence (each is only asked when all
 * above it passed). The most that the clean run allows as false rejects is taken off first.
 */
export function exactlyShown(exact: readonly ExactRow[], clean: CleanRun): ExactRow | null {
  let shown: ExactRow | null = null
  for (const row of [...exact].reverse()) {
    if (!enough(row.runs)) continue
    if (ownChance(row.lower95, clean.high) < SHOWN_CHANCE) break
    shown = row
  }
  return shown
}

/** Sizes shown are rounded up to 0.01 mm: never below the bound. */
export const roundedUp = (mm: number): number => Number((Math.ceil(mm * 100 - 1e-9) / 100).toFixed(2))

/** By the curve where it has a bound, else by one size; null where neither shows it. */
export function demonstratedOf(
  a9095: number | null,
  exact: readonly ExactRow[],
  clean: CleanRun | null,
  date: string | null,
  packs: number,
): Demonstrated | null {
  if (!clean) return null
  if (a9095 !== null) return { sizeMm: roundedUp(a9095), basis: 'curve', date, packs }
  const shown = exactlyShown(exact, clean)
  return shown ? { sizeMm: shown.sizeMm, basis: 'exact', date, packs: shown.runs } : null
}
