import { type Asked, type Fitted, fitModel } from './fit.ts'
import type { At, Row } from './likelihood.ts'
import { linkInverse } from './link.ts'

/** Runs at one x (ln of a size in mm, or whatever scale a published set uses); x null: clean packs. */
export interface SizeRow {
  readonly x: number | null
  readonly runs: number
  readonly found: number
}

export type Curve = Omit<Asked, 'held' | 'start'>

/** χ² with one degree of freedom exceeded with probability 0.10: one-sided 95 %. */
export const ONE_SIDED_95 = 2.705543454095404
/** z exceeded with probability 0.05. */
export const Z_95 = 1.6448536269514722

/** Share of the best curve's steepness below which a line counts as level. */
const FLAT = 1e-4

const columnsFrom = (rows: readonly SizeRow[], origin: number): Row[] =>
  rows.map(({ x, runs, found }) => ({ columns: x === null ? null : [1, x - origin], runs, found }))

/** P = c + (1 − c)·q(b₀ + b₁·x), fitted. */
export function fitCurve(rows: readonly SizeRow[], curve: Curve): Fitted {
  // Scoring is steadier about the middle of the sizes; the line is then moved back to x = 0.
  const middle = middleOf(rows)
  const fitted = fitModel(columnsFrom(rows, middle), curve)
  const [b0, b1] = fitted.b as [number, number]
  return { ...fitted, b: [b0 - b1 * middle, b1], covariance: moved(fitted.covariance, middle) }
}

function middleOf(rows: readonly SizeRow[]): number {
  const sizes = rows.flatMap(({ x, runs }) => (x === null ? [] : [{ x, runs }]))
  const runs = sizes.reduce((sum, row) => sum + row.runs, 0)
  return sizes.reduce((sum, row) => sum + row.x * row.runs, 0) / Math.max(runs, 1)
}

/** Covariance of (b₀ − m·b₁, b₁, …) from that of (b₀, b₁, …). */
function moved(covariance: Fitted['covariance'], m: number): Fitted['covariance'] {
  if (!covariance) return null
  const first = covariance[0]!.map((value, j) => value - m * covariance[1]![j]!)
  const rows = [first, ...covariance.slice(1).map((row) => [...row])].map((row) => [...row])
  for (const row of rows) row[0] = row[0]! - m * row[1]!
  rows[0]![0] = covariance[0]![0]! - 2 * m * covariance[0]![1]! + m * m * covariance[1]![1]!
  return rows
}

/** x at which the piece's own curve (the floor apart) has this chance. */
export function xAt({ b }: Pick<Fitted, 'b'>, curve: Curve, chance: number): number {
  return (linkInverse(curve.link, chance) - b[0]!) / b[1]!
}

/** Greatest log-likelihood of the curves that have this chance at exactly x. */
export function logLThrough(
  rows: readonly SizeRow[],
  curve: Curve,
  chance: number,
  x: number,
  near?: At,
): Fitted {
  const through = linkInverse(curve.link, chance)
  return fitModel(columnsFrom(rows, x), {
    ...curve,
    held: new Map([[0, through]]),
    start: { b: [through, near ? near.b[1]! : 1], floor: near?.floor ?? startFloor(rows, curve) },
  })
}

function startFloor(rows: readonly SizeRow[], { floor }: Curve): number {
  if (floor.kind === 'fixed') return floor.chance
  const clean = rows.filter((row) => row.x === null)
  const runs = clean.reduce((sum, row) => sum + row.runs, 0)
  return runs > 0 ? clean.reduce((sum, row) => sum + row.found, 0) / runs : 0.01
}

/**
 * End of the profile-likelihood interval of the x at which the curve has this chance: where twice the loss
 * against the best curve is `drop` (2.7055: one-sided 95 %; 3.8415: two-sided). ±∞ where the loss never gets so
 * large, that is, where the runs do not show that the chance changes with size.
 */
export function profileEnd(
  rows: readonly SizeRow[],
  curve: Curve,
  chance: number,
  side: 'upper' | 'lower' = 'upper',
  drop: number = ONE_SIDED_95,
): number {
  const best = fitCurve(rows, curve)
  const at = xAt(best, curve, chance)
  const way = (side === 'upper' ? 1 : -1) * Math.sign(best.b[1]!)
  if (!Number.isFinite(at) || way === 0) return side === 'upper' ? Infinity : -Infinity
  const middle = xAt(best, curve, 0.5)
  const through = linkInverse(curve.link, chance)
  let near: Fitted = best
  const loss = (x: number): number => {
    // Far out the last slope would put every size at 0 or 1, where there is nothing to climb: start no steeper than
    // the line that keeps the best curve's middle.
    const gentle = Math.min(Math.abs(near.b[1]!), Math.abs(through / (x - middle)))
    const start = { b: [through, Math.sign(best.b[1]!) * gentle], floor: near.floor }
    near = logLThrough(rows, curve, chance, x, start)
    return 2 * (best.logL - near.logL) - drop
  }
  let inner = at
  let lossInner = -drop
  let stride = 1 / Math.abs(best.b[1]!)
  for (let k = 0; k < 40; k++) {
    const outer = inner + way * stride
    const lossOuter = loss(outer)
    if (lossOuter >= 0) return root(loss, inner, lossInner, outer, lossOuter)
    // A line this much flatter than the best is the level one: no size further out is lost.
    if (Math.abs(near.b[1]!) < FLAT * Math.abs(best.b[1]!)) break
    inner = outer
    lossInner = lossOuter
    stride *= 1.7
  }
  return way > 0 ? Infinity : -Infinity
}

/** Root between a (below 0) and b (above 0), by false position; an end kept twice counts half (Illinois rule). */
function root(f: (x: number) => number, a: number, fa: number, b: number, fb: number): number {
  let [low, fLow, high, fHigh] = [a, fa, b, fb]
  let kept: 'low' | 'high' | null = null
  for (let k = 0; k < 100 && Math.abs(high - low) > 1e-11 * (1 + Math.abs(high)); k++) {
    const x = (low * fHigh - high * fLow) / (fHigh - fLow)
    const fx = f(x)
    if (Math.abs(fx) < 1e-11) return x
    if (fx > 0) {
      ;[high, fHigh] = [x, fx]
      if (kept === 'low') fLow /= 2
      kept = 'low'
    } else {
      ;[low, fLow] = [x, fx]
      if (kept === 'high') fHigh /= 2
      kept = 'high'
    }
  }
  return (low + high) / 2
}

/** x at this chance and its standard error by the delta method; null where the information is singular. */
export function deltaAt(
  fitted: Fitted,
  curve: Curve,
  chance: number,
): { x: number; standardError: number } | null {
  const { b, covariance } = fitted
  if (!covariance) return null
  const x = xAt(fitted, curve, chance)
  const slope = [-1 / b[1]!, -x / b[1]!]
  const variance = slope.reduce(
    (sum, g, i) => sum + slope.reduce((part, h, j) => part + g * h * covariance[i]![j]!, 0),
    0,
  )
  return { x, standardError: Math.sqrt(variance) }
}
