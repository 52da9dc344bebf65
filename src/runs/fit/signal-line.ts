import { choleskyFactor, choleskySolve } from '../../numerics/cholesky.ts'
import { normalChance, normalUpperQuantile } from '../../numerics/normal.ts'
import { studentQuantile } from '../../numerics/student.ts'
import { Z_95 } from './size-bound.ts'

/** One piece read as a signal: its number, or only that it lay below or above the threshold. */
export interface SignalReading {
  /** ln of the size in mm. */
  readonly x: number
  /** ln of the signal; of the threshold where it was not a number. */
  readonly y: number
  readonly seen: 'number' | 'below' | 'above'
}

/** ln signal = b₀ + b₁·ln size, normal about it with standard deviation `spread`. */
export interface SignalLine {
  readonly b0: number
  readonly b1: number
  readonly spread: number
  readonly logL: number
}

/** A reading as a residual r = u·θ + o in θ = (1/spread, …), and 1/spread as u₀ of a number. */
interface Residual {
  readonly u: readonly number[]
  readonly o: number
  readonly seen: SignalReading['seen']
}

/** Constants of the line: two. */
const USED = 2
const SQRT_2PI = Math.sqrt(2 * Math.PI)

/**
 * Greatest of Σ ln γ − r²/2 over numbers, ln Φ(±r) over the others, γ = θ₀: concave in θ (Olsen 1978,
 * Econometrica 46:1211), so Newton steps with halving end at the one top. Null where they do not.
 */
function greatest(
  residuals: readonly Residual[],
  start: readonly number[],
  taken = 0,
): { theta: number[]; logL: number } | null {
  if (residuals.filter(({ seen }) => seen === 'number').length <= taken + 1) return null
  const value = (theta: readonly number[]): number => {
    if (!(theta[0]! > 0)) return Number.NEGATIVE_INFINITY
    return residuals.reduce((sum, { u, o, seen }) => {
      const r = u.reduce((part, v, j) => part + v * theta[j]!, o)
      if (seen === 'number') return sum + Math.log(theta[0]!) - (r * r) / 2
      return sum + Math.log(Math.max(normalChance(seen === 'below' ? r : -r), 1e-300))
    }, -taken * Math.log(theta[0]!))
  }
  let theta = [...start]
  let best = value(theta)
  for (let step = 0; step < 200; step++) {
    const gradient = theta.map((v, j) => (j === 0 ? -taken / v : 0))
    const bend = theta.map((v, j) => theta.map((_, k) => (j === 0 && k === 0 ? -taken / v ** 2 : 0)))
    for (const { u, o, seen } of residuals) {
      const r = u.reduce((part, v, j) => part + v * theta[j]!, o)
      const [pull, stiff] = seen === 'number' ? [-r, 1] : millsOf(r, seen === 'below' ? 1 : -1)
      for (let j = 0; j < theta.length; j++) {
        gradient[j]! += pull * u[j]!
        for (let k = 0; k < theta.length; k++) bend[j]![k]! += stiff * u[j]! * u[k]!
      }
      if (seen === 'number') {
        gradient[0]! += 1 / theta[0]!
        bend[0]![0]! += 1 / theta[0]! ** 2
      }
    }
    const lower = choleskyFactor(bend)
    if (!lower) return null
    const move = choleskySolve(lower, gradient)
    if (move.reduce((sum, v, j) => sum + v * gradient[j]!, 0) < 1e-13) return { theta, logL: best }
    let share = 1
    for (; share > 1e-9; share /= 2) {
      const next = theta.map((v, j) => v + share * move[j]!)
      const there = value(next)
      if (there >= best) {
        theta = next
        best = there
        break
      }
    }
    if (share <= 1e-9) return { theta, logL: best }
  }
  return null
}

/** Slope of ln Φ(s·r) against r, and its bend with the sign turned. */
function millsOf(r: number, s: 1 | -1): [number, number] {
  const a = s * r
  const chance = normalChance(a)
  // Far below, φ/Φ → −a (the tail's first term).
  const ratio = chance > 1e-290 ? Math.exp((-a * a) / 2) / SQRT_2PI / chance : -a
  return [s * ratio, ratio * (ratio + a)]
}

/**
 * The line through readings of which some are only known to lie below or above the threshold. `taken` takes the
 * constants that the line used off the count behind the spread (restricted likelihood): 0 for plain maximum
 * likelihood, 2 for a bound.
 */
export function fitSignal(readings: readonly SignalReading[], taken = 0): SignalLine | null {
  const residuals = readings.map(({ x, y, seen }): Residual => ({ u: [y, -1, -x], o: 0, seen }))
  const numbers = readings.filter(({ seen }) => seen === 'number')
  const spreadY = Math.max(1e-3, spreadOf(numbers.map(({ y }) => y)))
  const middle = numbers.reduce((sum, { y }) => sum + y, 0) / Math.max(1, numbers.length)
  const top = greatest(residuals, [1 / spreadY, middle / spreadY, 0], taken)
  if (!top) return null
  const [gamma, d0, d1] = top.theta as [number, number, number]
  return { b0: d0 / gamma, b1: d1 / gamma, spread: 1 / gamma, logL: top.logL }
}

function spreadOf(values: readonly number[]): number {
  const mean = values.reduce((sum, v) => sum + v, 0) / Math.max(1, values.length)
  return Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / Math.max(1, values.length))
}

/** ln size whose signal passes ln threshold with this chance. */
export function signalSize(line: SignalLine, lnThreshold: number, chance: number): number {
  return (lnThreshold - line.b0 - normalUpperQuantile(chance) * line.spread) / line.b1
}

/**
 * One-sided 95 % upper bound on that ln size by profile likelihood: the line is held to pass through the chance at
 * x, with the two constants of the line off the count behind the spread. The drop is (n − 2)·ln(1 + t²/(n − 2)), the
 * exact one for a line through normal readings without censoring, in place of χ². ∞ where the signal is not shown
 * to rise with size.
 */
export function signalBound(readings: readonly SignalReading[], lnThreshold: number, chance: number): number {
  const best = fitSignal(readings, USED)
  if (!best || !(best.b1 > 0)) return Infinity
  const z = normalUpperQuantile(1 - chance)
  const left = readings.length - USED
  const drop = left * Math.log1p(studentQuantile(Z_95, left) ** 2 / left)
  const loss = (x: number): number => {
    const residuals = readings.map(
      (r): Residual => ({ u: [r.y - lnThreshold, -(r.x - x)], o: -z, seen: r.seen }),
    )
    const held = greatest(residuals, [1 / best.spread, best.b1 / best.spread], USED)
    return held ? 2 * (best.logL - held.logL) - drop : Infinity
  }
  let low = signalSize(best, lnThreshold, chance)
  let stride = best.spread / best.b1
  let high = low + stride
  while (loss(high) < 0) {
    low = high
    stride *= 1.7
    high += stride
    if (stride > 50) return Infinity
  }
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2
    if (loss(middle) < 0) low = middle
    else high = middle
  }
  return high
}
