import { choleskyFactor, inverseOf, logDeterminant, type Matrix } from '../../numerics/cholesky.ts'
import { type Link, linkValue } from './link.ts'

/**
 * Runs at one setting of the columns: `runs` of which `found` found, P = c + (1 − c)·q(offset + Σ bⱼ·xⱼ).
 * Columns null: clean packs, P = c. Weights need not be whole (a unit run several times and counted once).
 */
export interface Row {
  readonly columns: readonly number[] | null
  readonly offset?: number
  readonly runs: number
  readonly found: number
}

/** A point of the model: constants of the line, and the floor c (chance of a reject with nothing to find). */
export interface At {
  readonly b: readonly number[]
  readonly floor: number
}

/** Log-likelihood without the binomial coefficients, its slopes, and the expected information. */
export interface Likelihood {
  readonly logL: number
  readonly scoreB: readonly number[]
  readonly scoreFloor: number
  readonly information: Matrix
  readonly informationFloor: number
  readonly informationCross: readonly number[]
  /** d(information)/dbⱼ = Σ bendWeight·xⱼ·x·xᵀ: kept per row for Jeffreys' term. */
  readonly rows: readonly WeighedRow[]
}

interface WeighedRow {
  readonly columns: readonly number[]
  /** Weight w of the row in the information, and its slopes against η and c. */
  readonly weight: number
  readonly weightByEta: number
  readonly weightByFloor: number
}

const TINY = 1e-300

/** k·ln(p), 0 where k is 0. */
const times = (count: number, chance: number): number =>
  count === 0 ? 0 : count * Math.log(Math.max(chance, TINY))

/**
 * With p = c + (1 − c)q: score per row (k/p − (n−k)/(1−p))·dp, information n·dp²/(p(1−p)) (McCullagh & Nelder
 * 1989, Generalized Linear Models, 2.5 and 4.4, with a floor). dp/dη = (1 − c)q′, dp/dc = 1 − q.
 */
export function likelihood(link: Link, rows: readonly Row[], { b, floor }: At): Likelihood {
  const size = b.length
  const scoreB = new Array<number>(size).fill(0)
  const information = Array.from({ length: size }, () => new Array<number>(size).fill(0))
  const informationCross = new Array<number>(size).fill(0)
  const weighed: WeighedRow[] = []
  let logL = 0
  let scoreFloor = 0
  let informationFloor = 0
  for (const { columns, offset = 0, runs, found } of rows) {
    if (columns === null) {
      logL += times(found, floor) + times(runs - found, 1 - floor)
      if (floor > 0) informationFloor += runs / (floor * (1 - floor))
      scoreFloor += (found > 0 ? found / Math.max(floor, TINY) : 0) - (runs - found) / (1 - floor)
      continue
    }
    let eta = offset
    for (let j = 0; j < size; j++) eta += b[j]! * columns[j]!
    const q = linkValue(link, eta)
    const p = Math.max(floor + (1 - floor) * q.found, TINY)
    const not = Math.max((1 - floor) * q.missed, TINY)
    const byEta = (1 - floor) * q.slope
    const pull = found / p - (runs - found) / not
    logL += times(found, p) + times(runs - found, not)
    scoreFloor += pull * q.missed
    informationFloor += (runs * q.missed * q.missed) / (p * not)
    const weight = runs * (byEta / p) * (byEta / not)
    const lean = (not - p) / (p * not)
    weighed.push({
      columns,
      weight,
      weightByEta: runs * 2 * (byEta / p) * (((1 - floor) * q.bend) / not) - weight * byEta * lean,
      weightByFloor: (-2 * weight) / (1 - floor) - weight * q.missed * lean,
    })
    for (let j = 0; j < size; j++) {
      scoreB[j]! += pull * byEta * columns[j]!
      informationCross[j]! += runs * (byEta / p) * (q.missed / not) * columns[j]!
      for (let k = 0; k < size; k++) information[j]![k]! += weight * columns[j]! * columns[k]!
    }
  }
  return {
    logL,
    scoreB,
    scoreFloor,
    information,
    informationFloor,
    informationCross,
    rows: weighed,
  }
}

/** Jeffreys' term ½·ln det of the line's information (of the model with its floor), and its slopes. */
export interface Penalty {
  readonly value: number
  readonly scoreB: readonly number[]
  readonly scoreFloor: number
}

/**
 * Firth 1993, Biometrika 80:27; Heinze & Schemper 2002, Stat. Med. 21:2409. The term is of the line's constants
 * only: with the floor's own it would grow without bound as c → 0. Null where the information is singular.
 */
export function jeffreys({ information, rows }: Likelihood): Penalty | null {
  const lower = choleskyFactor(information)
  if (!lower) return null
  const inverse = inverseOf(lower)
  const size = information.length
  const scoreB = new Array<number>(size).fill(0)
  let scoreFloor = 0
  for (const { columns, weightByEta, weightByFloor } of rows) {
    let leverage = 0
    for (let j = 0; j < size; j++)
      for (let k = 0; k < size; k++) leverage += columns[j]! * inverse[j]![k]! * columns[k]!
    for (let j = 0; j < size; j++) scoreB[j]! += 0.5 * leverage * weightByEta * columns[j]!
    scoreFloor += 0.5 * leverage * weightByFloor
  }
  return { value: 0.5 * logDeterminant(lower), scoreB, scoreFloor }
}
