/**
 * Places for labels that want to stand at `wanted` (px, in any order): at least `apart` px from each other,
 * in the same order from top to bottom, between `top` and `bottom` as long as they fit.
 */
export function spreadLabels(
  wanted: readonly number[],
  apart: number,
  top: number,
  bottom: number,
): number[] {
  const order = wanted.map((_, at) => at).sort((a, b) => wanted[a]! - wanted[b]! || a - b)
  const placed = [...wanted]
  let least = top
  for (const at of order) {
    placed[at] = Math.max(placed[at]!, least)
    least = placed[at]! + apart
  }
  let most = bottom
  for (const at of order.reverse()) {
    placed[at] = Math.min(placed[at]!, most)
    most = placed[at]! - apart
  }
  return placed
}
