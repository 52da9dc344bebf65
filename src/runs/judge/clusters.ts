import { group } from 'd3-array'
import type { RunGroup } from '../../contract/index.ts'
import type { Unit } from './units.ts'

/** Degrees of freedom between units below which their likeness is not estimated: too few units say nothing of it. */
const FEWEST_BETWEEN = 12

/** Counted once: however often a unit is run, it is one. */
export const COUNTED_ONCE = 1

/**
 * Intra-cluster correlation ρ of repeated runs: what the runs of one unit have in common, by the analysis of variance
 * of 0 and 1 between and within units, pooled over the sizes of which some runs found and some missed,
 *
 *   ρ = (B − W)/(B + (n₀ − 1)·W),  n₀ = Σ(N − Σm²/N)/Σ(k − 1)
 *
 * (B, W mean squares; m runs of a unit, N runs and k units of a size), not below 0. Ridout, Demétrio & Firth 1999,
 * Biometrics 55:137 (cited from memory). Null where no unit was run twice, or with fewer than 12 degrees of freedom between units.
 */
export function likenessOf(units: readonly Unit[]): number | null {
  const sum = { between: 0, within: 0, freeBetween: 0, freeWithin: 0, spare: 0 }
  for (const here of group(units, ({ sizeMm }) => sizeMm).values()) {
    const total = (of: (unit: Unit) => number) => here.reduce((part, one) => part + one.alike * of(one), 0)
    const [runs, found] = [total((one) => one.runs), total((one) => one.found)]
    if (found === 0 || found === runs) continue
    const count = total(() => 1)
    sum.between += total((one) => one.runs * (one.found / one.runs - found / runs) ** 2)
    sum.within += total((one) => (one.found * (one.runs - one.found)) / one.runs)
    sum.freeBetween += count - 1
    sum.freeWithin += runs - count
    sum.spare += runs - total((one) => one.runs ** 2) / runs
  }
  if (sum.freeWithin === 0 || sum.freeBetween < FEWEST_BETWEEN) return null
  const [between, within] = [sum.between / sum.freeBetween, sum.within / sum.freeWithin]
  const each = sum.spare / sum.freeBetween
  return Math.max(0, (between - within) / (between + (each - 1) * within))
}

/** How many runs of a unit count, m/(1 + (m − 1)·ρ): its runs over the design effect (Kish 1965, Survey Sampling; cited from memory). */
export const runsThatCount = (runs: number, likeness: number): number => runs / (1 + (runs - 1) * likeness)

/** What repeated runs are worth; null where every unit was run once. */
export function clustersOf(units: readonly Unit[], likeness: number | null): RunGroup['clusters'] {
  const runs = units.reduce((sum, one) => sum + one.alike * one.runs, 0)
  const pieces = units.reduce((sum, one) => sum + one.alike, 0)
  if (runs === pieces) return null
  const counted = units.reduce(
    (sum, one) => sum + one.alike * runsThatCount(one.runs, likeness ?? COUNTED_ONCE),
    0,
  )
  return { likeness, designEffect: runs / counted, counted }
}
