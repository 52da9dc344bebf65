/**
 * Cards of every demo under many seeds (npm run inversions [seeds] [demo …]): how often each piece was found, and where a
 * larger piece of a kind was found significantly less often than a smaller one (Fisher's exact test, one-sided p < 0.01).
 * Every seed lays the card anew: where a piece lies within a pixel is chance over seeds, but the same in all runs of one.
 */
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { type CardRun, cardMachines, cardOf } from '../../src/card/card.ts'
import type { Brief } from '../../src/contract/index.ts'
import { logGamma } from '../../src/numerics/gamma.ts'

const SIGNIFICANT = 0.01

const lnChoose = (n: number, k: number) => logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1)

/** Chance of so few of `most` or fewer for the larger, if both were found alike (Fisher 1935, hypergeometric tail). */
export function fisherLess(larger: number, smaller: number, most: number): number {
  const all = larger + smaller
  let chance = 0
  for (let k = Math.max(0, all - most); k <= larger; k++)
    chance += Math.exp(lnChoose(most, k) + lnChoose(most, all - k) - lnChoose(2 * most, all))
  return Math.min(1, chance)
}

export interface Inverted {
  readonly smaller: CardRun
  readonly larger: CardRun
  readonly chance: number
}

const kindOf = (run: CardRun) => [run.equipment, run.material, run.shape, run.lengthMm, run.placement].join()

/** Pairs of one kind on one machine whose larger piece was found less often than chance explains, and pairs looked at. */
export function inversionsIn(runs: readonly CardRun[]): { pairs: number; inverted: Inverted[] } {
  const pieces = runs.filter(({ material }) => material !== '')
  const inverted: Inverted[] = []
  let pairs = 0
  for (const smaller of pieces) {
    for (const larger of pieces) {
      if (kindOf(smaller) !== kindOf(larger) || larger.sizeMm! <= smaller.sizeMm!) continue
      pairs++
      const chance = fisherLess(larger.found, smaller.found, larger.runs)
      if (chance < SIGNIFICANT) inverted.push({ smaller, larger, chance })
    }
  }
  return { pairs, inverted }
}

/** The lines of a machine's cards under so many seeds, each piece once with what was counted over all of them. */
function overSeeds(brief: Brief, point: number, machine: string, seeds: number): CardRun[] {
  const sums = new Map<string, CardRun>()
  for (let seed = 1; seed <= seeds; seed++) {
    for (const run of cardOf(brief, { point, equipment: [machine], seed }).machines[0]!.runs) {
      const key = `${kindOf(run)} ${run.sizeMm}`
      const sum = sums.get(key)
      sums.set(key, sum ? { ...sum, runs: sum.runs + run.runs, found: sum.found + run.found } : run)
    }
  }
  return [...sums.values()]
}

if (process.argv[1]?.endsWith('inversions.ts')) {
  const seeds = Number(process.argv[2] ?? 10)
  const named = process.argv.slice(3)
  let [pairs, inverted] = [0, 0]
  for (const { id, brief } of demos) {
    const parsed = parseBrief(brief)
    if (!parsed.ok || (named.length > 0 && !named.includes(id))) continue
    const points = parsed.brief.points.map((_, point) => point)
    for (const point of points) {
      let machines: string[] = []
      try {
        machines = cardMachines(parsed.brief, { point })
      } catch {
        continue
      }
      for (const machine of machines) {
        const found = inversionsIn(overSeeds(parsed.brief, point, machine, seeds))
        pairs += found.pairs
        inverted += found.inverted.length
        console.log(
          `${id}, point ${point}, ${machine}: ${found.pairs} pairs, ${found.inverted.length} inverted`,
        )
        for (const { smaller, larger, chance } of found.inverted)
          console.log(
            `   ${larger.material} ${larger.shape} ${larger.sizeMm} mm ${larger.found} of ${larger.runs}, ${smaller.sizeMm} mm ${smaller.found}: p = ${chance.toExponential(1)}`,
          )
      }
    }
  }
  console.log(`${seeds} seeds: ${pairs} pairs, ${inverted} significant inversions`)
}
