import type { RunRow } from '../../contract/index.ts'
import { COUNTED_ONCE, runsThatCount } from './clusters.ts'

/**
 * One piece placed anew in one pack, with all its runs. Several runs of a unit are no further pieces: a curve
 * counts as many of them as the design effect leaves, or the unit once, by the share of them that found it. A ball or
 * a wire of a test set may serve again in a new pack; a flake is one broken piece, so that all its packs are one unit.
 */
export interface Unit {
  readonly sizeMm: number
  readonly runs: number
  readonly found: number
  /** How many units are alike in all this: more than one only where no pack is named. */
  readonly alike: number
}

/** Runs of one size: units, how many were found in every run; runs that count for a curve, and how many found. */
export interface SizeTally {
  readonly sizeMm: number
  readonly units: number
  readonly foundAlways: number
  readonly counted: number
  readonly countedFound: number
}

const unitKey = (row: RunRow): string | null => {
  if (row.shape === 'flake' && row.piece) return `piece ${row.piece}`
  return row.pack ? `pack ${row.pack} piece ${row.piece ?? ''}` : null
}

/** Units of a group's rows. A row that names no pack stands for as many packs as it has runs. */
export function unitsOf(rows: readonly RunRow[]): Unit[] {
  const named = new Map<string, { sizeMm: number; runs: number; found: number; alike: 1 }>()
  const units: Unit[] = []
  for (const row of rows) {
    const sizeMm = row.sizeMm!
    const key = unitKey(row)
    if (key === null) {
      units.push({ sizeMm, runs: 1, found: 1, alike: row.found })
      units.push({ sizeMm, runs: 1, found: 0, alike: row.runs - row.found })
      continue
    }
    const at = `${sizeMm} ${key}`
    const unit = named.get(at) ?? { sizeMm, runs: 0, found: 0, alike: 1 as const }
    unit.runs += row.runs
    unit.found += row.found
    named.set(at, unit)
  }
  return [...units, ...named.values()].filter(({ alike }) => alike > 0)
}

/** Tallies by size, smallest first; repeated runs of a unit count by their likeness (1: once). */
export function talliesOf(units: readonly Unit[], likeness: number = COUNTED_ONCE): SizeTally[] {
  const bySize = new Map<number, { -readonly [Key in keyof Omit<SizeTally, 'sizeMm'>]: number }>()
  for (const { sizeMm, runs, found, alike } of units) {
    const tally = bySize.get(sizeMm) ?? { units: 0, foundAlways: 0, counted: 0, countedFound: 0 }
    const counted = alike * runsThatCount(runs, likeness)
    tally.units += alike
    tally.foundAlways += found === runs ? alike : 0
    tally.counted += counted
    tally.countedFound += counted * (found / runs)
    bySize.set(sizeMm, tally)
  }
  return [...bySize].map(([sizeMm, tally]) => ({ sizeMm, ...tally })).sort((a, b) => a.sizeMm - b.sizeMm)
}
