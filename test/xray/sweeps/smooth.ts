/** A jump in a sweep: where, and the two sizes in mm. */
export interface Jump {
  readonly from: number
  readonly to: number
  readonly sizesMm: readonly [number | null, number | null]
}

/** Most a size may change where what is swept changes by 2 %, as the issue of smoothness asks. */
const MOST_PER_STEP = 0.05
const STEP = 0.02

/**
 * Sweeps a quantity from `from` to `to` in equal ratios and gives the jumps: two values at most 2 % apart between which
 * the size moves by more than 5 %, or is lost or found well inside the range the model speaks of.
 */
export function jumpsIn(
  [from, to]: readonly [number, number],
  steps: number,
  largestMm: number,
  sizeAt: (value: number) => number | null,
): Jump[] {
  const ratio = (to / from) ** (1 / (steps - 1))
  const reach = Math.max(1, Math.floor(Math.log(1 + STEP) / Math.log(ratio)))
  const values = Array.from({ length: steps }, (_, k) => from * ratio ** k)
  const sizes = values.map(sizeAt)
  return values.flatMap((value, k): Jump[] => {
    const next = Math.min(steps - 1, k + reach)
    const [a, b] = [sizes[k] ?? null, sizes[next] ?? null]
    const jumped =
      a === null || b === null
        ? a !== b && (a ?? b)! < 0.9 * largestMm
        : Math.abs(Math.log(b / a)) > Math.log(1 + MOST_PER_STEP)
    return jumped ? [{ from: value, to: values[next]!, sizesMm: [a, b] }] : []
  })
}
