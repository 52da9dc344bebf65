/** Smallest size the search goes down to, mm. */
export const SMALLEST_MM = 0.02

/**
 * Size above which every size (up to limitMm) reaches the needed d′; null when limitMm itself does not.
 * Walks down a log grid of the given ratio from the top, then closes in on the crossing to 1e-5.
 */
export function lastCrossing(
  dPrime: (sizeMm: number) => number,
  needed: number,
  limitMm: number,
  ratio = 1.06,
): number | null {
  let high = limitMm
  let excess = dPrime(high) - needed
  if (!(excess >= 0)) return null
  while (high > SMALLEST_MM) {
    const low = Math.max(SMALLEST_MM, high / ratio)
    const shortfall = dPrime(low) - needed
    if (shortfall < 0) return closeIn(dPrime, needed, low, high, shortfall, excess)
    if (low === SMALLEST_MM) return SMALLEST_MM
    high = low
    excess = shortfall
  }
  return high
}

/** The crossing between low (below the needed d′) and high (at or above it), by the Illinois rule in log size. */
function closeIn(
  dPrime: (sizeMm: number) => number,
  needed: number,
  low: number,
  high: number,
  atLow: number,
  atHigh: number,
): number {
  let a = Math.log(low)
  let b = Math.log(high)
  let fa = atLow
  let fb = atHigh
  let side = 0
  for (let k = 0; k < 40 && b - a > 1e-6; k++) {
    const middle = fb === fa ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa)
    const value = dPrime(Math.exp(middle)) - needed
    if (Math.abs(value) < 1e-6 * needed) return Math.exp(middle)
    if (value < 0) {
      a = middle
      fa = value
      if (side === -1) fb /= 2
      side = -1
    } else {
      b = middle
      fb = value
      if (side === 1) fa /= 2
      side = 1
    }
  }
  return Math.exp(b)
}
