/**
 * Fits the three practice constants to the readings of the thick pack (npm run calibrate) and prints them with
 * the objective. They are written into src/xray/observer/practice.ts by hand; a test keeps the two together.
 */
import { PRACTICE, type PracticeConstants } from '../../src/xray/observer/practice.ts'
import { logPosterior, PRIORS } from './likelihood.ts'

/** Cyclic search along each constant with shrinking steps: slow, plain and repeatable. */
export function calibrate(start: PracticeConstants): { constants: PracticeConstants; value: number } {
  let constants = start
  let value = logPosterior(constants)
  for (let step = 0.2; step > 0.005; step /= 2) {
    let moved = true
    for (let round = 0; moved && round < 8; round++) {
      moved = false
      for (const { key, least, most } of PRIORS) {
        for (const factor of [Math.exp(step), Math.exp(-step)]) {
          const next = Math.min(most, Math.max(least, constants[key] * factor))
          const trial = { ...constants, [key]: next }
          const better = logPosterior(trial)
          if (better > value + 1e-9) {
            constants = trial
            value = better
            moved = true
          }
        }
      }
    }
  }
  return { constants, value }
}

if (process.argv[1]?.endsWith('calibrate.ts')) {
  console.log('start ', PRACTICE, logPosterior(PRACTICE).toFixed(3))
  const { constants, value } = calibrate({
    ...PRACTICE,
    textureScale: 1.2,
    compositionResidual: 0.03,
    gatheredWireMm: 2,
  })
  console.log('fitted', constants, value.toFixed(3))
}
