import { normalUpperTail } from './normal.ts'

/** Answers h with their expected numbers λ·dA, and how many of them count. */
export interface ShotNoise {
  readonly answers: Float64Array
  readonly numbers: Float64Array
  readonly count: number
}

/**
 * Point that shot noise of variance 1 exceeds with a small chance: log moments Λ(s) = ½s² + Σ n(e^{sh} − 1 − sh − ½s²h²),
 * tail P(X > Λ′(s)) = 1 − Φ(r) + φ(r)(1/u − 1/r), r = √(2(sΛ′ − Λ)), u = s√Λ″ (Lugannani & Rice 1980).
 * `start`: a first s, best the point of the normal distribution.
 */
export function tailPoint({ answers, numbers, count }: ShotNoise, tail: number, start: number): number {
  let s = start
  let point = start
  for (let k = 0; k < 30; k++) {
    let value = (s * s) / 2
    let slope = s
    let bend = 1
    for (let i = 0; i < count; i++) {
      const h = answers[i]!
      const x = s * h
      const e = Math.exp(x)
      const n = numbers[i]!
      value += n * (e - 1 - x - (x * x) / 2)
      slope += n * h * (e - 1 - x)
      bend += n * h * h * (e - 1)
    }
    point = slope
    // Where the second moments of what was left out are more than the rest holds up, the curve has no tail to read.
    const height = s * slope - value
    if (!(height > 0 && bend > 0)) return start
    const r = Math.sqrt(2 * height)
    const u = s * Math.sqrt(bend)
    const density = Math.exp(-height) / Math.sqrt(2 * Math.PI)
    const chance = normalUpperTail(r) + density * (1 / u - 1 / r)
    const step = Math.log(chance / tail) / (s * bend)
    // The rest of the way is a straight line: the next step would be its square.
    if (Math.abs(step) < 1e-3 * s) return point + bend * step
    s = Math.max(s / 2, s + Math.max(-1, Math.min(1, step)))
  }
  return point
}
