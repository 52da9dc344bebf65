import type { Paired, RunRow } from '../../contract/index.ts'
import { binomialAtMost } from '../../numerics/binomial.ts'

/** Fewest pairs that differ with which a difference can show at 95 %: 2·0.5⁶ = 0.031. */
const FEWEST_DISCORDANT = 6

/** Exact McNemar (McNemar 1947, Psychometrika 12:153): of the pairs that differ, a fair coin decides. */
export function mcNemar(onlyFirst: number, onlySecond: number): number | null {
  const differ = onlyFirst + onlySecond
  if (differ === 0) return null
  return Math.min(1, 2 * binomialAtMost(Math.min(onlyFirst, onlySecond), differ, 0.5))
}

/** Machines two by two on the same packs with the same pieces; only pairs that both machines ran. */
export function pairedMachines(rows: readonly RunRow[]): Paired[] {
  const results = new Map<string, Map<string, { runs: number; found: number }>>()
  for (const row of rows) {
    if (row.material === '' || !row.pack) continue
    const pair = JSON.stringify([row.pack, row.piece, row.material, row.shape, row.sizeMm, row.position])
    const units = results.get(row.equipment) ?? new Map()
    const unit = units.get(pair) ?? { runs: 0, found: 0 }
    units.set(pair, { runs: unit.runs + row.runs, found: unit.found + row.found })
    results.set(row.equipment, units)
  }
  const machines = [...results.keys()].sort()
  return machines.flatMap((first, i) =>
    machines.slice(i + 1).flatMap((second) => {
      const count = tally(results.get(first)!, results.get(second)!)
      const pairs = count.both + count.onlyFirst + count.onlySecond + count.neither
      return pairs === 0 ? [] : [pairOf(first, second, count)]
    }),
  )
}

type Count = Pick<Paired, 'both' | 'onlyFirst' | 'onlySecond' | 'neither'>
type Units = ReadonlyMap<string, { readonly runs: number; readonly found: number }>

function tally(first: Units, second: Units): Count {
  const count = { both: 0, onlyFirst: 0, onlySecond: 0, neither: 0 }
  for (const [pair, a] of first) {
    const b = second.get(pair)
    if (!b) continue
    const [byA, byB] = [a.found === a.runs, b.found === b.runs]
    if (byA && byB) count.both++
    else if (byA) count.onlyFirst++
    else if (byB) count.onlySecond++
    else count.neither++
  }
  return count
}

function pairOf(first: string, second: string, count: Count): Paired {
  const p = mcNemar(count.onlyFirst, count.onlySecond)
  const differ = count.onlyFirst + count.onlySecond
  const better = count.onlyFirst > count.onlySecond ? first : second
  const few =
    differ < FEWEST_DISCORDANT
      ? `; with ${differ} that differ none can show (at least ${FEWEST_DISCORDANT} are needed)`
      : ''
  const words =
    p !== null && p <= 0.05
      ? `${better} found pieces that the other missed more often than chance explains (p ${p.toFixed(3)})`
      : `no difference shown${few}. That is not "the same"`
  return { first, second, ...count, p, words }
}
