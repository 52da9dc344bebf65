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

/** d′ grows about as this power of the size near its threshold: where the first guess goes. */
const USUAL_POWER = 1.8

/**
 * The last crossing sought from a neighbouring size, for noise in which d′ hardly ever falls again: follows
 * the usual power law to it, closes in to 1e-4, and makes sure that larger sizes hold; where they do not, or
 * where the guesses do not come together, walks the whole range.
 */
export function crossingNear(
  dPrime: Detectability,
  needed: number,
  limitMm: number,
  nearMm: number,
): number | null {
  let size = Math.min(nearMm, limitMm)
  let height = Math.log(dPrime(size) / needed)
  let power = USUAL_POWER
  let found: number | null = null
  for (let k = 0; k < 6; k++) {
    if (Math.abs(height) < 1e-4) {
      found = size
      break
    }
    const step = Math.max(-0.4, Math.min(0.4, -height / power))
    const next = Math.max(SMALLEST_MM, Math.min(limitMm, size * Math.exp(step)))
    if (next === size) break
    const there = Math.log(dPrime(next) / needed)
    const slope = (there - height) / Math.log(next / size)
    power = slope > 0.3 && slope < 6 ? slope : USUAL_POWER
    size = next
    height = there
  }
  if (found === null) return lastCrossing(dPrime, needed, limitMm)
  for (const up of [found * 1.3, limitMm]) {
    if (up > found && up <= limitMm && dPrime(up) < needed) return lastCrossing(dPrime, needed, limitMm)
  }
  return found
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
    if (Math.abs(value) < 2e-5) return Math.exp(middle)
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
