import type { Lever, Move } from './lever.ts'

/** What a trial of some moves showed: the size that can be promised over the size to find, and whether it is met. */
export interface Trial {
  readonly met: boolean
  /** Above 1 where the size is missed; infinite where there is none. */
  readonly ratio: number
}

/** Trials after the one at the full share. */
const STEPS = 4

/** Where a trial is put between two known ones: near the crossing of ratio 1 in logarithms, never at an end. */
function between(low: number, high: number, missed: Trial, met: Trial): number {
  const [a, b] = [Math.log(missed.ratio), Math.log(met.ratio)]
  const guess = Number.isFinite(a) && Number.isFinite(b) && a > b ? a / (a - b) : 0.5
  return low + (high - low) * Math.min(0.85, Math.max(0.15, guess + 0.03))
}

/**
 * The smallest share of a lever at which a size is met, closed in from both sides with few trials; null when
 * even all of it does not do, or when trials run out (`tryOut` gives null).
 */
export async function smallestShare(
  lever: Lever,
  asItIs: Trial,
  tryOut: (moves: readonly Move[]) => Promise<Trial | null>,
): Promise<Move[] | null> {
  let met = await tryOut(lever.at(1))
  if (!met?.met) return null
  if (!lever.dosed) return lever.at(1)
  let missed = asItIs
  let [low, high] = [0, 1]
  for (let k = 0; k < STEPS; k++) {
    const middle = between(low, high, missed, met)
    const trial = await tryOut(lever.at(middle))
    if (!trial) break
    if (trial.met) {
      high = middle
      met = trial
    } else {
      low = middle
      missed = trial
    }
    if (JSON.stringify(lever.at(low)) === JSON.stringify(lever.at(high))) break
  }
  return lever.at(high)
}
