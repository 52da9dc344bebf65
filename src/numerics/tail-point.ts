import { normalUpperTail } from './normal.ts'

/** Answers h with their expected numbers λ·dA, and how many of them count. */
export interface ShotNoise {
  readonly answers: Float64Array
  readonly numbers: Float64Array
  readonly count: number
}

/** Answers stand for one another in steps of 1/(this × the normal point): s·h changes by about an eighth. */
const STEPS = 8

/** Numbers at whole multiples of a step of h, from the `first` multiple on. */
interface OnSteps {
  readonly step: number
  readonly first: number
  readonly count: number
}
let onSteps = new Float64Array(0)

/**
 * Every answer shared out among the four multiples of a step around it, so that Σ n·hᵏ stays as it is for k up to 3
 * (Lagrange's cubic). Σ n·e^(sh) then is off by less than (s·step)⁴·3/128 of itself, 6e-6 at an eighth.
 */
function sharedOut({ answers, numbers, count }: ShotNoise, step: number): OnSteps {
  let low = 0
  let high = 0
  for (let i = 0; i < count; i++) {
    low = Math.min(low, answers[i]!)
    high = Math.max(high, answers[i]!)
  }
  const first = Math.floor(low / step) - 1
  const steps = Math.floor(high / step) + 3 - first
  if (onSteps.length < steps) onSteps = new Float64Array(2 * steps)
  onSteps.fill(0, 0, steps)
  for (let i = 0; i < count; i++) {
    const at = answers[i]! / step - first
    const row = at | 0
    const t = at - row
    const n = numbers[i]!
    const outer = (n * t * (t - 1)) / 6
    const inner = (n * (t + 1) * (t - 2)) / 2
    onSteps[row - 1]! -= outer * (t - 2)
    onSteps[row]! += inner * (t - 1)
    onSteps[row + 1]! -= inner * t
    onSteps[row + 2]! += outer * (t + 1)
  }
  return { step, first, count: steps }
}

/**
 * Point that shot noise of variance 1 exceeds with a small chance: log moments Λ(s) = ½s² + Σ n(e^{sh} − 1 − sh − ½s²h²),
 * tail P(X > Λ′(s)) = 1 − Φ(r) + φ(r)(1/u − 1/r), r = √(2(sΛ′ − Λ)), u = s√Λ″ (Lugannani & Rice 1980).
 * `start`: a first s, best the point of the normal distribution.
 */
export function tailPoint(noise: ShotNoise, tail: number, start: number): number {
  const { step, first, count } = sharedOut(noise, 1 / (STEPS * start))
  let [all, mean, square] = [0, 0, 0]
  for (let i = 0; i < count; i++) {
    const h = (first + i) * step
    const n = onSteps[i]!
    all += n
    mean += n * h
    square += n * h * h
  }
  let s = start
  let point = start
  for (let k = 0; k < 30; k++) {
    let value = (s * s * (1 - square)) / 2 - all - s * mean
    let slope = s * (1 - square) - mean
    let bend = 1 - square
    const ratio = Math.exp(s * step)
    let e = Math.exp(s * first * step)
    for (let i = 0; i < count; i++) {
      const h = (first + i) * step
      const n = onSteps[i]! * e
      value += n
      slope += n * h
      bend += n * h * h
      e *= ratio
    }
    point = slope
    // Where the second moments of what was left out are more than the rest holds up, the curve has no tail to read.
    const height = s * slope - value
    if (!(height > 0 && bend > 0)) return start
    const r = Math.sqrt(2 * height)
    const u = s * Math.sqrt(bend)
    const density = Math.exp(-height) / Math.sqrt(2 * Math.PI)
    const chance = normalUpperTail(r) + density * (1 / u - 1 / r)
    const newton = Math.log(chance / tail) / (s * bend)
    // The rest of the way is a straight line: the next step would be its square.
    if (Math.abs(newton) < 1e-3 * s) return point + bend * newton
    s = Math.max(s / 2, s + Math.max(-1, Math.min(1, newton)))
  }
  return point
}
