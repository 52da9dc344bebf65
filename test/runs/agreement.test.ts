import { describe, expect, it } from 'vitest'
import { agreementOf, type PredictedSize, statedSpread } from '../../src/runs/against/agreement.ts'
import { chanceAt, truthOf } from '../../src/runs/plan/truth.ts'
import { randomStream } from '../../src/xray/image/food/random.ts'

const SIX = [1.9, 2.1, 2.3, 2.5, 2.7, 3.0]
const truth = truthOf(2.31, 2.625)
const trial = (found: readonly number[], runs = 10): PredictedSize[] =>
  SIX.map((size, i) => ({ runs, found: found[i]!, chance: (factor) => chanceAt(truth, size / factor) }))

describe('agreement of a trial with what was predicted', () => {
  it('agrees with counts near the prediction, and not with a machine that is blind or sees everything', () => {
    expect(agreementOf(trial([0, 2, 5, 8, 9, 10]), 0.05)).toBeGreaterThan(0.3)
    expect(agreementOf(trial([0, 0, 0, 0, 1, 2]), 0.05)).toBeLessThan(0.01)
    expect(agreementOf(trial([10, 10, 10, 10, 10, 10]), 0.05)).toBeLessThan(0.01)
  })

  it('notices a wrong steepness although the total is right', () => {
    expect(agreementOf(trial([6, 6, 6, 6, 5, 5]), 0.05)).toBeLessThan(0.01)
  })

  it('is forgiving by as much as the prediction states', () => {
    const found = [0, 0, 1, 4, 6, 9]
    expect(agreementOf(trial(found), 0.15)).toBeGreaterThan(agreementOf(trial(found), 0.01))
    expect(statedSpread(2, 2.4)).toBeCloseTo(Math.log(1.2) / 1.2815516, 6)
    expect(statedSpread(2, null)).toBe(0.1)
  })

  /** A short form; `npm run coverage` asks 400 trials. More than 6 of 40 has chance 0.003. */
  it('seldom falls below 0.05 where the prediction is right', () => {
    const random = randomStream(9, 'trials')
    let below = 0
    const trials = 40
    for (let t = 0; t < trials; t++) {
      const factor = Math.exp(0.05 * random.normal())
      const found = SIX.map((size) => {
        const p = chanceAt(truth, size / factor)
        return Array.from({ length: 10 }, () => random.uniform()).filter((u) => u < p).length
      })
      if (agreementOf(trial(found), 0.05) < 0.05) below++
    }
    expect(below).toBeLessThanOrEqual(6)
  })
})
