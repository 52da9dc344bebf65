import type { ExposedPack } from '../pack/exposed-pack.ts'
import { attenuationAt, signalTables } from '../pack/signal-table.ts'

/**
 * How the food itself is cancelled between energies: each channel against the last one along a cubic, fitted
 * to a wedge of the food (without noise) as a machine is taught one. With it a place with nothing but food
 * reads zero whatever its thickness.
 */
export interface FoodCurve {
  /** Coefficients of g_i = c0 + c1·x + c2·x² + c3·x³, x = g_last − centre; one row per channel but the last. */
  readonly coefficients: readonly (readonly [number, number, number, number])[]
  readonly centre: number
}

/** Wedge the curve is fitted to, as shares of the pack's own food. */
const WEDGE_FROM = 0.1
const WEDGE_TO = 2
const WEDGE_STEPS = 40

/** The curves of a pack's channels; none for single energy. */
export function foodCurve(exposed: ExposedPack): FoodCurve {
  const { pack } = exposed
  const mean = pack.packing * pack.pathMm
  const tables = signalTables(exposed, WEDGE_TO * mean, null)
  const last = tables.at(-1)!
  const centre = attenuationAt(last, mean, 0)
  const wedge = Array.from(
    { length: WEDGE_STEPS },
    (_, i) => mean * (WEDGE_FROM + ((WEDGE_TO - WEDGE_FROM) * i) / (WEDGE_STEPS - 1)),
  )
  const x = wedge.map((mm) => attenuationAt(last, mm, 0) - centre)
  const coefficients = tables.slice(0, -1).map((table) =>
    cubicThrough(
      x,
      wedge.map((mm) => attenuationAt(table, mm, 0)),
    ),
  )
  return { coefficients, centre }
}

/** Least squares cubic by the normal equations (x of order 1, so well conditioned enough). */
function cubicThrough(x: readonly number[], y: readonly number[]): [number, number, number, number] {
  const n = 4
  const rows = Array.from({ length: n }, (_, i) => [
    ...Array.from({ length: n }, (_, j) => x.reduce((sum, v) => sum + v ** (i + j), 0)),
    x.reduce((sum, v, k) => sum + v ** i * y[k]!, 0),
  ])
  for (let i = 0; i < n; i++) {
    const pivot = rows[i]![i]!
    for (let k = 0; k < n; k++) {
      if (k === i) continue
      const share = rows[k]![i]! / pivot
      for (let j = i; j <= n; j++) rows[k]![j]! -= share * rows[i]![j]!
    }
  }
  const [a, b, c, d] = rows.map((row, i) => row[n]! / row[i]!) as [number, number, number, number]
  return [a, b, c, d]
}

/** Channel i with the food cancelled, from the log pictures of all channels. */
export function withoutFood(curve: FoodCurve, channels: readonly Float32Array[], i: number): Float32Array {
  const [a, b, c, d] = curve.coefficients[i]!
  const last = channels.at(-1)!
  return channels[i]!.map((g, at) => {
    const x = last[at]! - curve.centre
    return g - (a + x * (b + x * (c + x * d)))
  })
}

/** Slope of channel i against the last where the pack's food is: what a small signal loses to the curve. */
export function slopeOf(curve: FoodCurve, i: number): number {
  return curve.coefficients[i]![1]
}
