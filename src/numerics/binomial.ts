import { logGamma } from './gamma.ts'

/**
 * Exact statements about runs of which each either finds the piece or not. Runs are taken as independent and
 * alike: fresh packs, not one piece sent round again. Nothing here rests on the normal approximation.
 */

/**
 * P(X ≤ count) for X of `runs` independent trials with chance `chance` each, by the ratio of neighbouring terms
 * in logarithms; relative error below 1e-9 up to 10⁵ runs. 0 ≤ chance ≤ 1, count and runs whole.
 */
export function binomialAtMost(count: number, runs: number, chance: number): number {
  if (!(Number.isInteger(runs) && runs >= 0))
    throw new RangeError(`runs is a whole number; ${runs} was given`)
  if (!(chance >= 0 && chance <= 1))
    throw new RangeError(`a chance lies between 0 and 1; ${chance} was given`)
  if (count < 0) return 0
  if (count >= runs || chance === 0) return 1
  if (chance === 1) return 0
  if (count > MANY) return atMostOfMany(count, runs, chance)
  const logOdds = Math.log(chance) - Math.log1p(-chance)
  let logTerm = runs * Math.log1p(-chance)
  let sum = Math.exp(logTerm)
  for (let k = 1; k <= count; k++) {
    logTerm += Math.log((runs - k + 1) / k) + logOdds
    sum += Math.exp(logTerm)
  }
  return Math.min(1, sum)
}

/** Above so many terms only those are added that count. */
const MANY = 1000

/** The same from the side of the sum whose terms fall away from `count`; relative error below 1e-7 up to 10⁶ runs. */
function atMostOfMany(count: number, runs: number, chance: number): number {
  const above = count > runs * chance
  const first = above ? count + 1 : count
  let term = Math.exp(
    logGamma(runs + 1) -
      logGamma(first + 1) -
      logGamma(runs - first + 1) +
      first * Math.log(chance) +
      (runs - first) * Math.log1p(-chance),
  )
  const odds = chance / (1 - chance)
  let sum = 0
  for (let k = first; k >= 0 && k <= runs && term > sum * 1e-17; above ? k++ : k--) {
    sum += term
    term *= above ? ((runs - k) / (k + 1)) * odds : k / ((runs - k + 1) * odds)
  }
  return Math.min(1, Math.max(0, above ? 1 - sum : sum))
}

/** What a demonstration is to show: at least `chance` of finding, with one-sided confidence `confidence`. */
export interface Demonstration {
  readonly chance: number
  readonly confidence: number
}

/**
 * Fewest runs that demonstrate it with so many misses allowed: the smallest n with
 * P(X ≤ misses | n, 1 − chance) ≤ 1 − confidence. 29 for 0.90 at 0.95 with none missed.
 */
export function runsToDemonstrate({ chance, confidence }: Demonstration, misses: number): number {
  if (!(chance > 0 && chance < 1 && confidence > 0 && confidence < 1))
    throw new RangeError('chance and confidence lie between 0 and 1, without the ends')
  const risk = (runs: number) => binomialAtMost(misses, runs, 1 - chance)
  let enough = misses + 1
  while (risk(enough) > 1 - confidence) enough *= 2
  let few = Math.max(misses, enough >> 1)
  while (enough - few > 1) {
    const middle = (few + enough) >> 1
    if (risk(middle) > 1 - confidence) few = middle
    else enough = middle
  }
  return enough
}

/**
 * One-sided lower bound on the chance behind so many found of so many runs (Clopper & Pearson 1934): the
 * chance at which finding that many or more has probability 1 − confidence. 0 where none was found.
 */
export function lowerBound(found: number, runs: number, confidence: number): number {
  if (found <= 0) return 0
  const missed = runs - found
  const thatMany = (chance: number) =>
    missed < found ? binomialAtMost(missed, runs, 1 - chance) : 1 - binomialAtMost(found - 1, runs, chance)
  return solve((chance) => thatMany(chance) - (1 - confidence))
}

/** One-sided upper bound, the mirror of {@link lowerBound}; 1 where all were found. */
export function upperBound(found: number, runs: number, confidence: number): number {
  return 1 - lowerBound(runs - found, runs, confidence)
}

/** Two-sided exact interval: each side takes half of what the confidence leaves. */
export function exactInterval(found: number, runs: number, confidence: number): [number, number] {
  const side = 1 - (1 - confidence) / 2
  return [lowerBound(found, runs, side), upperBound(found, runs, side)]
}

/** Root of a function that rises from below 0 to above 0 on 0 to 1, by halving. */
function solve(rising: (x: number) => number): number {
  let low = 0
  let high = 1
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2
    if (rising(middle) < 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}
