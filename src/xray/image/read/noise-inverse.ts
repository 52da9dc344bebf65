import { invertSymmetric } from '../../noise/noise.ts'
import type { MeasuredNoise } from './measured-noise.ts'

/** Inverse of a noise covariance over frequency, tabulated finely: [step][i][j], 1/mm². */
export interface NoiseInverse {
  readonly channels: number
  readonly stepPerMm: number
  readonly steps: number
  readonly values: Float64Array
}

const STEPS = 1024
/** Rings below this one hold what patch and background have taken away: nothing is read there. */
const FIRST_RING = 0.75

/** Step of the table for a pixel of a mm: its last step is the corner of the pixel's band, √2/(2a). */
export function noiseStepPerMm(pixelMm: number): number {
  return Math.SQRT1_2 / pixelMm / STEPS
}

/** From a measured noise, linear between its rings. */
export function inverseOfMeasured(noise: MeasuredNoise, pixelMm: number): NoiseInverse {
  const { channels: n, rings, covariance } = noise
  return tabulate(n, pixelMm, (f, into) => {
    const at = f / noise.stepPerMm
    if (at < FIRST_RING) return false
    const low = Math.max(1, Math.min(rings - 2, Math.floor(at)))
    const share = Math.min(1, Math.max(0, at - low))
    for (let k = 0; k < n * n; k++) {
      const a = covariance[low * n * n + k]!
      into[k] = a + share * (covariance[(low + 1) * n * n + k]! - a)
    }
    return true
  })
}

/** From a covariance given as a function of frequency in 1/mm (fills a row-by-row matrix, mm²). */
export function inverseOfKnown(
  channels: number,
  pixelMm: number,
  covarianceAt: (f: number, into: Float64Array) => void,
): NoiseInverse {
  return tabulate(channels, pixelMm, (f, into) => {
    covarianceAt(f, into)
    return true
  })
}

function tabulate(
  n: number,
  pixelMm: number,
  fill: (f: number, into: Float64Array) => boolean,
): NoiseInverse {
  const stepPerMm = noiseStepPerMm(pixelMm)
  const values = new Float64Array((STEPS + 1) * n * n)
  const k = new Float64Array(n * n)
  for (let step = 0; step <= STEPS; step++) {
    if (!fill(step * stepPerMm, k)) continue
    invertSymmetric(k, n)
    values.set(k, step * n * n)
  }
  return { channels: n, stepPerMm, steps: STEPS, values }
}
