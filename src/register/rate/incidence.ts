import { gammaQuantile } from '../../numerics/gamma.ts'

/**
 * What a log holds at one control, and how the streams of pieces reach it. Stream k enters right before control k;
 * `reach[k]` is the share of stream k that this control finds, ∫ f·Π(1 − Pᵢ)·Pⱼ; 0 for what enters later.
 */
export interface Log {
  /** Events: one broken screen that sheds many pieces is one. */
  readonly events: number
  readonly millionPacks: number
  readonly reach: readonly number[]
}

/**
 * Events that arrive per million packs in each stream, from the controls in turn: what an earlier stream explains
 * is taken off first. Never negative: where the earlier stream explains all, the later one is 0.
 */
export function streamsFrom(logs: readonly Log[]): number[] {
  const rates: number[] = []
  for (const [k, { events, millionPacks, reach }] of logs.entries()) {
    const explained = rates.reduce((sum, rate, i) => sum + rate * (reach[i] ?? 0), 0)
    const own = reach[k] ?? 0
    rates.push(own > 0 ? Math.max(0, (events / millionPacks - explained) / own) : 0)
  }
  return rates
}

/** Upper 95 % bound on what arrives where nothing was found: 2.9957 ÷ (packs · mean chance), per million. */
export function upperWithoutFinds(millionPacks: number, meanChance: number): number {
  return -Math.log(0.05) / (millionPacks * meanChance)
}

export interface Range {
  readonly low: number
  readonly high: number
}

const LOW = 0.05
const HIGH = 0.95
const BINS = 6000
/** Grid points along each stream, by the number of streams. */
const GRID = [0, 0, 420, 96] as const

/**
 * 5 and 95 % of Σ weights·rates for each list of weights, from the joint posterior of the streams' rates with
 * prior rate^-0.5 each and Poisson counts of events. One stream: a gamma distribution. Two or three: a grid on the
 * square roots of the rates (which takes the prior's pole away) with bins of a six-thousandth. More: null.
 */
export function rangesOf(logs: readonly Log[], weightLists: readonly (readonly number[])[]): Range[] | null {
  if (logs.length === 1) return weightLists.map(([weight = 0]) => oneStream(logs[0]!, weight))
  const points = GRID[logs.length]
  return points === undefined || points === 0 ? null : manyStreams(logs, weightLists, points)
}

function oneStream({ events, millionPacks, reach }: Log, weight: number): Range {
  const scale = weight / (millionPacks * reach[0]!)
  return {
    low: gammaQuantile(events + 0.5, LOW) * scale,
    high: gammaQuantile(events + 0.5, HIGH) * scale,
  }
}

/** The rate above which a stream's own log alone leaves less than 1e-7. */
function ceiling({ events, millionPacks, reach }: Log, k: number): number {
  return gammaQuantile(events + 0.5, 1 - 1e-7) / (millionPacks * Math.max(reach[k]!, 1e-12))
}

function manyStreams(logs: readonly Log[], weightLists: readonly (readonly number[])[], points: number) {
  const roots = logs.map((log, k) => {
    const top = Math.sqrt(ceiling(log, k))
    return Array.from({ length: points }, (_, i) => (top * (i + 0.5)) / points)
  })
  const tops = weightLists.map((weights) =>
    roots.reduce((sum, list, k) => sum + (weights[k] ?? 0) * list.at(-1)! ** 2, 0),
  )
  const bins = weightLists.map(() => new Float64Array(BINS))
  const rates: number[] = logs.map(() => 0)
  const best = logLikelihood(logs, streamsFrom(logs))
  const walk = (k: number): void => {
    if (k === logs.length) {
      const mass = Math.exp(logLikelihood(logs, rates) - best)
      for (const [w, weights] of weightLists.entries()) {
        const value = rates.reduce((sum, rate, i) => sum + (weights[i] ?? 0) * rate, 0)
        bins[w]![Math.min(BINS - 1, Math.floor((value / tops[w]!) * BINS))]! += mass
      }
      return
    }
    for (const root of roots[k]!) {
      rates[k] = root * root
      walk(k + 1)
    }
  }
  walk(0)
  return bins.map((bin, w) => ({ low: quantile(bin, tops[w]!, LOW), high: quantile(bin, tops[w]!, HIGH) }))
}

/** Poisson log-likelihood of the logs without its constants. */
function logLikelihood(logs: readonly Log[], rates: readonly number[]): number {
  let sum = 0
  for (const { events, millionPacks, reach } of logs) {
    const expected = millionPacks * rates.reduce((all, rate, k) => all + rate * (reach[k] ?? 0), 0)
    sum += (events > 0 ? events * Math.log(Math.max(expected, 1e-300)) : 0) - expected
  }
  return sum
}

function quantile(bin: Float64Array, top: number, chance: number): number {
  const wanted = chance * bin.reduce((sum, mass) => sum + mass, 0)
  let below = 0
  for (const [i, mass] of bin.entries()) {
    if (below + mass >= wanted && mass > 0) return (top * (i + (wanted - below) / mass)) / BINS
    below += mass
  }
  return top
}
