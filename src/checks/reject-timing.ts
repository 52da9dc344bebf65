/** g, m/s² (standard acceleration of free fall, rounded). */
const GRAVITY = 9.81

export interface BeltReject {
  readonly speedMPerMin: number
  readonly packMm: number
  readonly pitchMm: number
  readonly distanceMm: number
  readonly cycleMs: number
  readonly positionErrorMm: number
  /** Shortest gap seen, not the mean. */
  readonly shortestGapMm: number
}

export interface BeltTiming {
  readonly delayMs: number
  /** The reject acts at least and at most so long, centred on the pack. */
  readonly actAtLeastMs: number
  readonly actAtMostMs: number
  readonly neededGapMm: number
  /** Time between two packs; the cycle must fit for two bad packs in a row. */
  readonly pitchMs: number
  readonly twoInARow: boolean
  readonly possible: boolean
}

/**
 * Reject on a belt, tracked by travel: needed gap = max(2·e, v·cycle − pack). Possible only when the SHORTEST gap is
 * larger: a gap that just equals it is lost by any jitter. Lengths mm, times ms, speed m/min.
 */
export function beltTiming(reject: BeltReject): BeltTiming {
  const mmPerMs = reject.speedMPerMin / 60
  const { packMm, pitchMm, positionErrorMm: e } = reject
  const gap = pitchMm - packMm
  const neededGapMm = Math.max(2 * e, mmPerMs * reject.cycleMs - packMm)
  const pitchMs = pitchMm / mmPerMs
  const twoInARow = reject.cycleMs <= pitchMs
  return {
    delayMs: reject.distanceMm / mmPerMs,
    actAtLeastMs: (packMm + 2 * e) / mmPerMs,
    actAtMostMs: (packMm + 2 * gap - 2 * e) / mmPerMs,
    neededGapMm,
    pitchMs,
    twoInARow,
    possible: reject.shortestGapMm > neededGapMm * (1 + 1e-9) && twoInARow,
  }
}

export interface FallTiming {
  readonly fallMs: number
  readonly possible: boolean
}

/** Time to fall a distance from a start speed: t = (−v + √(v² + 2·g·h))/g. Metres, m/s, seconds. */
export const fallSeconds = (speedMPerS: number, distanceM: number): number =>
  (-speedMPerS + Math.sqrt(speedMPerS ** 2 + 2 * GRAVITY * distanceM)) / GRAVITY

/** Speed after falling so far from rest, m/s. */
export const speedAfterFall = (distanceM: number): number => Math.sqrt(2 * GRAVITY * distanceM)

/** Reject in free fall: what decides and moves must be done before the piece is there. */
export function fallTiming(speedMPerS: number, distanceMm: number, readyMs: number): FallTiming {
  const fallMs = 1000 * fallSeconds(speedMPerS, distanceMm / 1000)
  return { fallMs, possible: readyMs < fallMs }
}

/** Food lost with each reject while a flap stands open, kg. */
export const lossPerRejectKg = (kgPerHour: number, openMs: number): number => (kgPerHour / 3.6e6) * openMs
