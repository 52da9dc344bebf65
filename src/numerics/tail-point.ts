import { normalUpperTail } from './normal.ts'

/** Answers h, each times a scale, with their expected numbers λ·dA, and how many of them count. */
export interface ShotNoise {
  readonly answers: Float64Array
  readonly numbers: Float64Array
  readonly count: number
  readonly scale: number
}

/** An answer below this share of a standard deviation has no third moment to speak of. */
const SMALLEST_ANSWER = 0.01
/** Answers stand for one another in steps of 1/(this × the normal point): s·h changes by about a sixteenth. */
const STEPS = 16

/** Numbers at whole multiples of a step of h, from the `first` multiple on. */
interface OnSteps {
  readonly step: number
  readonly first: number
  readonly count: number
}
let onSteps = new Float64Array(0)

/**
 * Every answer shared out between the two multiples of a step around it, so that Σ n·h stays as it is. Σ n·e^(sh) then
 * is larger by (s·step)²/12 of itself on average, 3e-4 at a sixteenth; what that adds to Σ n·h² the normal part of the
 * noise has less.
 */
function sharedOut({ answers, numbers, count, scale }: ShotNoise, step: number): OnSteps {
  let low = 0
  let high = 0
  for (let i = 0; i < count; i++) {
    const h = answers[i]!
    if (h < low) low = h
    else if (h > high) high = h
  }
  const perStep = scale / step
  const first = Math.floor(low * perStep)
  const steps = Math.floor(high * perStep) + 2 - first
  if (onSteps.length < steps) onSteps = new Float64Array(2 * steps)
  onSteps.fill(0, 0, steps)
  const least = SMALLEST_ANSWER / scale
  for (let i = 0; i < count; i++) {
    const h = answers[i]!
    if (h < least && h > -least) continue
    const at = h * perStep - first
    const row = at | 0
    const n = numbers[i]!
    const above = n * (at - row)
    onSteps[row]! += n - above
    onSteps[row + 1]! += above
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
  const wanted = -Math.log(tail)
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
    const depth = chance > 0 ? -Math.log(chance) : height
    // The logarithm of the depth is nearly straight, for normal noise as for answers of many deviations.
    const newton = (Math.log(wanted / depth) * depth) / (s * bend)
    // The rest of the way is a straight line: the next step would be its square.
    if (Math.abs(newton) < 1e-3 * s) return point + bend * newton
    s = Math.max(s / 2, s + Math.min(1, newton))
  }
  return point
}
