/** Standard normal distribution: tails that keep their digits far out. */

const SQRT_2PI = Math.sqrt(2 * Math.PI)

/** Upper tail probability P(Z > x), relative accuracy about 1e-12 (series below 2, continued fraction above). */
export function normalUpperTail(x: number): number {
  if (x < 0) return 1 - normalUpperTail(-x)
  const density = Math.exp((-x * x) / 2) / SQRT_2PI
  if (x < 2.5) {
    let term = x
    let sum = x
    for (let k = 1; k < 80 && Math.abs(term) > 1e-17; k++) {
      term *= (x * x) / (2 * k + 1)
      sum += term
    }
    return 0.5 - density * sum
  }
  let fraction = 0
  // The further out, the sooner the fraction settles: 60 terms at 2.5, 17 at 8.
  for (let k = Math.ceil(12 + 300 / (x * x)); k > 0; k--) fraction = k / (x + fraction)
  return density / (x + fraction)
}

/** P(Z <= x). */
export function normalChance(x: number): number {
  return x > 0 ? 1 - normalUpperTail(x) : normalUpperTail(-x)
}

/** z with P(Z > z) = tail, for 0 < tail < 1, by Newton steps on the logarithm of the tail. */
export function normalUpperQuantile(tail: number): number {
  if (!(tail > 0 && tail < 1)) throw new RangeError(`a tail lies between 0 and 1; ${tail} was given`)
  if (tail > 0.5) return -normalUpperQuantile(1 - tail)
  let z = tail < 0.02 ? Math.sqrt(Math.max(1, -2 * Math.log(tail) - 1.8 - Math.log(-Math.log(tail)))) : 1
  for (let k = 0; k < 60; k++) {
    const current = normalUpperTail(z)
    const slope = -Math.exp((-z * z) / 2) / SQRT_2PI / current
    const step = (Math.log(current) - Math.log(tail)) / slope
    z -= Math.max(-1, Math.min(1, step))
    if (Math.abs(step) < 1e-12) break
  }
  return z
}

/** Steps per unit of the table behind {@link normalChanceFast}, and how far it reaches. */
const STEPS = 64
const REACH = 9
let table: { readonly chance: Float64Array; readonly density: Float64Array } | null = null

function buildTable() {
  const length = 2 * REACH * STEPS + 1
  const chance = new Float64Array(length)
  const density = new Float64Array(length)
  for (let i = 0; i < length; i++) {
    const z = i / STEPS - REACH
    chance[i] = normalChance(z)
    density[i] = Math.exp((-z * z) / 2) / SQRT_2PI
  }
  return { chance, density }
}

/** P(Z <= x) for sums over many points: a table and Taylor's series to the fifth order; absolute error below 1e-12. */
export function normalChanceFast(x: number): number {
  if (x <= -REACH) return 0
  if (x >= REACH) return 1
  table ??= buildTable()
  const i = Math.round((x + REACH) * STEPS)
  const z = i / STEPS - REACH
  const d = x - z
  const square = z * z
  const rest =
    d *
    (1 -
      d *
        (z / 2 -
          d * ((square - 1) / 6 - d * ((z * (square - 3)) / 24 - (d * (square * (square - 6) + 3)) / 120))))
  return table.chance[i]! + table.density[i]! * rest
}
