/** Smallest size the search goes down to, mm. */
export const SMALLEST_MM = 0.002

/** d′ at a size in mm. */
type Detectability = (sizeMm: number) => number

/** d′ falls with the size no faster than this power: objects below the pixel in noise of low frequencies. */
const STEEPEST_POWER = 3
/** A dip deeper than this between two steps of the walk would not be seen. */
const DEEPEST_DIP = 1.3
const SMALLEST_STEP = 1.06
const LARGEST_STEP = 2.5

/** How far the walk may step down while d′ stands at a multiple of the needed one, without passing below it. */
function stepRatio(multiple: number): number {
  return Math.min(LARGEST_STEP, Math.max(SMALLEST_STEP, (multiple / DEEPEST_DIP) ** (1 / STEEPEST_POWER)))
}

/** Two neighbouring sizes of a walk, mm, with their d′: needed at the upper one, not at the lower. */
interface Bracket {
  readonly low: number
  readonly high: number
  readonly atLow: number
  readonly atHigh: number
}

/**
 * Walks down from the largest size, where the needed d′ is reached, to the smallest; gives where it is lost first,
 * null where it never is. In textured food d′ can fall again where a piece grows into the size of a grain.
 */
export function walkDown(
  dPrime: Detectability,
  needed: number,
  fromMm: number,
  toMm: number,
): Bracket | null {
  let high = fromMm
  let atHigh = dPrime(high)
  if (!(atHigh >= needed)) return { low: high, high, atLow: atHigh, atHigh }
  while (high > toMm) {
    const low = Math.max(toMm, high / stepRatio(atHigh / needed))
    const atLow = dPrime(low)
    if (atLow < needed) return { low, high, atLow, atHigh }
    high = low
    atHigh = atLow
  }
  return null
}

/**
 * Size above which every size (up to limitMm) reaches the needed d′; null when limitMm itself does not.
 * Walks down from the top, then closes in on the crossing to 1e-6: the last crossing is the one that counts.
 */
export function lastCrossing(dPrime: Detectability, needed: number, limitMm: number): number | null {
  const lost = walkDown(dPrime, needed, limitMm, SMALLEST_MM)
  if (lost === null) return SMALLEST_MM
  return lost.low === lost.high ? null : closeIn(dPrime, needed, lost)
}

/** d′ grows about as this power of the size near its threshold: where the first guess goes. */
export const USUAL_POWER = 1.8
/** A guess goes no further than this in ln size, and where d′ lies far above the needed one, down. */
const LARGEST_GUESS = 0.4
const LARGEST_GUESS_DOWN = 1.2
const GUESSES = 6
/** A crossing closed in to this in ln d′ moves a size by half of it. */
const CLOSE_ENOUGH = 1e-4

/**
 * The crossing sought from a neighbouring size, for a d′ that does not fall again: follows the usual power law to it
 * and closes in to 1e-4; between a size that reaches it and a smaller one that does not once it has both. Where the
 * guesses find neither, walks the whole range.
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
  let below: { size: number; height: number } | null = null
  let above: { size: number; height: number } | null = null
  for (let k = 0; k < GUESSES; k++) {
    if (Math.abs(height) < CLOSE_ENOUGH) return size
    if (height < 0 && (!below || size > below.size)) below = { size, height }
    if (height > 0 && (!above || size < above.size)) above = { size, height }
    const furthest = height > 1 ? LARGEST_GUESS_DOWN : LARGEST_GUESS
    const step = Math.max(-furthest, Math.min(LARGEST_GUESS, -height / power))
    const next = Math.max(SMALLEST_MM, Math.min(limitMm, size * Math.exp(step)))
    if (next === size) break
    const there = Math.log(dPrime(next) / needed)
    const slope = (there - height) / Math.log(next / size)
    power = slope > 0.3 && slope < 6 ? slope : USUAL_POWER
    size = next
    height = there
  }
  if (!(below && above && below.size < above.size)) return lastCrossing(dPrime, needed, limitMm)
  const [low, high] = [below.size, above.size]
  return closeIn(dPrime, needed, {
    low,
    high,
    atLow: needed * Math.exp(below.height),
    atHigh: needed * Math.exp(above.height),
  })
}

/** The crossing between low (below the needed d′) and high (at or above it): Illinois rule, log against log. */
function closeIn(dPrime: Detectability, needed: number, { low, high, atLow, atHigh }: Bracket): number {
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
