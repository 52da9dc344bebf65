/** Smallest size the search goes down to, mm. */
export const SMALLEST_MM = 0.002

/** d′ at a size in mm. */
type Detectability = (sizeMm: number) => number

/**
 * How far the walk may step down while d′ stands at a multiple of the needed one: far above it a dip that
 * reaches the threshold cannot hide between two steps; near it the steps are fine.
 */
function stepRatio(multiple: number): number {
  if (multiple > 2.5) return 1.3
  if (multiple > 1.4) return 1.14
  return 1.06
}

/**
 * Size above which every size (up to limitMm) reaches the needed d′; null when limitMm itself does not.
 * Walks down from the top, then closes in on the crossing to 1e-6. In textured food d′ can fall again where a
 * piece grows into the size of a grain, so the last crossing is the one that counts.
 */
export function lastCrossing(dPrime: Detectability, needed: number, limitMm: number): number | null {
  let high = limitMm
  let atHigh = dPrime(high)
  if (!(atHigh >= needed)) return null
  while (high > SMALLEST_MM) {
    const low = Math.max(SMALLEST_MM, high / stepRatio(atHigh / needed))
    const atLow = dPrime(low)
    if (atLow < needed) return closeIn(dPrime, needed, low, high, atLow, atHigh)
    high = low
    atHigh = atLow
  }
  return SMALLEST_MM
}

/**
 * The last crossing sought from a neighbouring size, for noise in which d′ hardly ever falls again: brackets
 * it from there and makes sure that larger sizes hold; where they do not, walks the whole range.
 */
export function crossingNear(
  dPrime: Detectability,
  needed: number,
  limitMm: number,
  nearMm: number,
): number | null {
  const walk = () => lastCrossing(dPrime, needed, limitMm)
  let high = Math.min(nearMm, limitMm)
  let atHigh = dPrime(high)
  let low = high
  let atLow = atHigh
  while (atHigh < needed) {
    if (high >= limitMm) return null
    low = high
    atLow = atHigh
    high = Math.min(limitMm, high * 1.12)
    atHigh = dPrime(high)
  }
  while (atLow >= needed) {
    high = low
    atHigh = atLow
    low /= 1.12
    if (low < SMALLEST_MM) return walk()
    atLow = dPrime(low)
  }
  for (const up of [high * 1.15, high * 1.5, limitMm]) {
    if (up <= limitMm && dPrime(up) < needed) return walk()
  }
  return closeIn(dPrime, needed, low, high, atLow, atHigh)
}

/** The crossing between low (below the needed d′) and high (at or above it): Illinois rule, log against log. */
function closeIn(
  dPrime: Detectability,
  needed: number,
  low: number,
  high: number,
  atLow: number,
  atHigh: number,
): number {
  let a = Math.log(low)
  let b = Math.log(high)
  let fa = Math.log(Math.max(atLow, 1e-12) / needed)
  let fb = Math.log(atHigh / needed)
  let side = 0
  for (let k = 0; k < 40 && b - a > 1e-7; k++) {
    const middle = fb === fa ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa)
    const value = Math.log(Math.max(dPrime(Math.exp(middle)), 1e-12) / needed)
    if (Math.abs(value) < 2e-6) return Math.exp(middle)
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
