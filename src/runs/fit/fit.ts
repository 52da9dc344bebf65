import { choleskyFactor, choleskySolve, inverseOf, type Matrix } from '../../numerics/cholesky.ts'
import { type At, jeffreys, type Likelihood, likelihood, type Penalty, type Row } from './likelihood.ts'
import type { Link } from './link.ts'

export const METHODS = ['ml', 'firth'] as const
export type Method = (typeof METHODS)[number]

/** The floor: a chance held fixed, or fitted jointly with the line (and with the clean rows, if there are any). */
export type Floor = { readonly kind: 'fixed'; readonly chance: number } | { readonly kind: 'estimated' }

export interface Asked {
  readonly link: Link
  /** ml: maximum likelihood. firth: of the likelihood with Jeffreys' term, finite even where all is separated. */
  readonly method: Method
  readonly floor: Floor
  /** Constants held at a value while the others are fitted (profile likelihood), by their number. */
  readonly held?: ReadonlyMap<number, number>
  readonly start?: At
  /** Gain in log-likelihood below which no further step is taken, relative; 1e-15 unless given. */
  readonly smallestGain?: number
}

export interface Fitted extends At {
  /** Without binomial coefficients; with Jeffreys' term for firth. */
  readonly logL: number
  /** From the expected information, of b and then c where it is estimated off its edge; null where singular. */
  readonly covariance: Matrix | null
  readonly converged: boolean
}

const MOST_STEPS = 400
const LONGEST_STEP = 6

interface State {
  readonly at: At
  readonly value: number
  readonly like: Likelihood
  readonly penalty: Penalty | null
}

/** The constants that make the (penalised) likelihood greatest, by scoring steps that never go downhill. */
export function fitModel(rows: readonly Row[], asked: Asked): Fitted {
  const size = rows.find((row) => row.columns)?.columns?.length ?? 0
  let state = stateAt(rows, asked, asked.start ?? startOf(rows, size, asked))
  for (const [j, value] of asked.held ?? [])
    if (state.at.b[j] !== value) throw new RangeError('a fit starts where its held constants are')
  let converged = false
  for (let step = 0; step < MOST_STEPS && !converged; step++) {
    const next = stepFrom(rows, asked, state)
    converged = next === null
    if (next) state = next
  }
  return { ...state.at, logL: state.value, covariance: covarianceOf(state.like, asked, state.at), converged }
}

function startOf(rows: readonly Row[], size: number, { floor, held }: Asked): At {
  const b = Array.from({ length: size }, (_, j) => held?.get(j) ?? 0)
  if (floor.kind === 'fixed') return { b, floor: floor.chance }
  const clean = rows.filter((row) => row.columns === null)
  const runs = clean.reduce((sum, row) => sum + row.runs, 0)
  const found = clean.reduce((sum, row) => sum + row.found, 0)
  return { b, floor: runs > 0 ? Math.min(0.5, found / runs) : 0.01 }
}

function stateAt(rows: readonly Row[], { link, method }: Asked, at: At): State {
  const like = likelihood(link, rows, at)
  if (method === 'ml') return { at, value: like.logL, like, penalty: null }
  const penalty = jeffreys(like)
  return { at, value: penalty ? like.logL + penalty.value : Number.NEGATIVE_INFINITY, like, penalty }
}

/** One scoring step with halving; null where no step gains anything. */
function stepFrom(rows: readonly Row[], asked: Asked, state: State): State | null {
  const { at, like, penalty } = state
  const free = at.b.map((_, j) => j).filter((j) => !asked.held?.has(j))
  const score = free.map((j) => like.scoreB[j]! + (penalty?.scoreB[j] ?? 0))
  const scoreFloor = like.scoreFloor + (penalty?.scoreFloor ?? 0)
  const withFloor = asked.floor.kind === 'estimated' && (at.floor > 0 || scoreFloor > 0)
  const information = free.map((j) => free.map((k) => like.information[j]![k]!))
  if (withFloor) {
    for (const [i, j] of free.entries()) information[i]!.push(like.informationCross[j]!)
    information.push([...free.map((j) => like.informationCross[j]!), Math.max(like.informationFloor, 1e-8)])
    score.push(scoreFloor)
  }
  if (score.length === 0) return null
  const lower = choleskyFactor(
    information.map((row, i) => row.map((v, j) => (i === j ? v * (1 + 1e-12) : v))),
  )
  let step = lower ? choleskySolve(lower, score) : score
  const longest = Math.max(...step.map(Math.abs))
  if (longest > LONGEST_STEP) step = step.map((v) => (v * LONGEST_STEP) / longest)
  const gain = step.reduce((sum, v, i) => sum + v * score[i]!, 0)
  if (gain < (asked.smallestGain ?? 1e-15) * (1 + Math.abs(state.value))) return null
  for (let share = 1; share > 1e-10; share /= 2) {
    const b = [...at.b]
    for (const [i, j] of free.entries()) b[j] = at.b[j]! + share * step[i]!
    const floor = withFloor ? Math.min(0.999, Math.max(0, at.floor + share * step.at(-1)!)) : at.floor
    const next = stateAt(rows, asked, { b, floor })
    if (next.value > state.value) return next
  }
  return null
}

function covarianceOf(like: Likelihood, { floor }: Asked, at: At): Matrix | null {
  const information = like.information.map((row) => [...row])
  if (floor.kind === 'estimated' && at.floor > 0) {
    for (const [j, row] of information.entries()) row.push(like.informationCross[j]!)
    information.push([...like.informationCross, like.informationFloor])
  }
  const lower = choleskyFactor(information)
  return lower ? inverseOf(lower) : null
}
