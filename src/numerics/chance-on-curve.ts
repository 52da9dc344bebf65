/**
 * Chance of finding at a size, mm, read off a finding's curve: straight between its points, its ends beyond
 * them; null where there is no curve.
 */
export function chanceOnCurve(
  { sizesMm, chance }: { readonly sizesMm: readonly number[]; readonly chance: readonly number[] },
  sizeMm: number,
): number | null {
  const last = sizesMm.length - 1
  if (last < 0) return null
  if (sizeMm <= sizesMm[0]!) return chance[0]!
  if (sizeMm >= sizesMm[last]!) return chance[last]!
  const after = sizesMm.findIndex((size) => size >= sizeMm)
  const share = (sizeMm - sizesMm[after - 1]!) / (sizesMm[after]! - sizesMm[after - 1]!)
  return chance[after - 1]! + share * (chance[after]! - chance[after - 1]!)
}
