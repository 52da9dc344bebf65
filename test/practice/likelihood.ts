import type { PracticeConstants } from '../../src/xray/observer/practice.ts'
import { CARD, predict } from './card-model.ts'

/**
 * The objective of the calibration: log chance of the readings of the thick pack, plus the priors.
 * "Found down to r" in one run means r found and the next smaller piece missed (no smaller piece: r found).
 */
export type FittedConstant = Exclude<keyof PracticeConstants, 'thresholds'>

export interface Prior {
  key: FittedConstant
  /** Log-normal prior: median and standard deviation of the logarithm (judgement), and hard limits. */
  median: number
  spread: number
  least: number
  most: number
}

export const PRIORS: readonly Prior[] = [
  { key: 'textureScale', median: 1.2, spread: 0.4, least: 1, most: 3 },
  { key: 'compositionResidual', median: 0.03, spread: 0.7, least: 0.001, most: 0.3 },
  { key: 'gatheredWireMm', median: 2, spread: 0.9, least: 0.2, most: 20 },
]

export function logPosterior(constants: PracticeConstants): number {
  let sum = 0
  for (const { key, median, spread, least, most } of PRIORS) {
    const value = constants[key]
    if (value < least || value > most) return Number.NEGATIVE_INFINITY
    sum -= (Math.log(value / median) / spread) ** 2 / 2
  }
  for (const one of predict(constants, 'calibration')) {
    const { stepMm, smallestMm } = CARD[one.piece]
    const found = one.chance(one.readMm)
    const missed = one.readMm > smallestMm + 1e-9 ? 1 - one.chance(one.readMm - stepMm) : 1
    sum += Math.log(Math.max(found * missed, 1e-9))
  }
  return sum
}
