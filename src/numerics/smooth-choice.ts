/** The choice between settings of a machine: the one kept, the runner-up, and what each makes of all it must find. */
export interface Choice {
  readonly index: number
  /** The next best setting outside what counts as equal; null where all others are as good or there is none. */
  readonly runnerUp: number | null
  /** (Σ (size / size to find)⁸)^⅛ per setting; null where no setting finds anything. */
  readonly norms: readonly (number | null)[]
}

/** High enough that the worst contaminant leads, smooth so that the choice does not jump when two take turns. */
const POWER = 8
/** Settings within this share of the least norm are equal. */
export const EQUAL_SHARE = 0.03

/**
 * Chooses a setting from the expected sizes, mm ([setting][contaminant]), the settings lying in a row. A contaminant
 * without a size to find is measured against its smallest size over the settings; what one setting does not find
 * counts as `notFoundMm`, the largest size spoken of there; what none finds is left out. Of the neighbours that are as
 * good as the least, the middle is kept.
 */
export function chooseStep(
  sizes: readonly (readonly (number | null)[])[],
  contaminants: readonly { readonly mustFindMm: number | null }[],
  notFoundMm: number,
): Choice {
  const yardsticks = contaminants.map(({ mustFindMm }, c) => {
    const found = sizes.flatMap((row) => (row[c] == null ? [] : [row[c]!]))
    return found.length === 0 ? null : (mustFindMm ?? Math.min(...found))
  })
  const norms = sizes.map((row) => {
    const ratios = yardsticks.flatMap((y, c) => (y === null ? [] : [(row[c] ?? notFoundMm) / y]))
    return ratios.length === 0 ? null : ratios.reduce((sum, r) => sum + r ** POWER, 0) ** (1 / POWER)
  })
  const values = norms.map((norm) => norm ?? 0)
  const least = values.indexOf(Math.min(...values))
  const equal = (i: number) => i >= 0 && i < values.length && values[i]! <= values[least]! * (1 + EQUAL_SHARE)
  let [from, to] = [least, least]
  while (equal(from - 1)) from--
  while (equal(to + 1)) to++
  const others = values.flatMap((norm, i) => (i < from || i > to ? [{ norm, i }] : []))
  const next = others.sort((a, b) => a.norm - b.norm)[0]
  return { index: (from + to) >> 1, runnerUp: next?.i ?? null, norms }
}
