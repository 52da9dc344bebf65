import type { Complex } from '../../numerics/complex.ts'
import type { Residual } from '../parameters.ts'

/** Something that answers in every pack, per frequency, and what the machine cannot learn of it. */
export interface ClutterSource {
  readonly responses: readonly Complex[]
  readonly residual: Residual
}

/**
 * Covariance of (Re₁, Im₁, …, Reₙ, Imₙ), m⁶, row by row: the noise on the diagonal and for each source
 * sA²·pp′ + sφ²·qq′ + ε²·diag(|P|²), p its response vector, q the same turned by 90°.
 */
export function clutterCovariance(variances: Float64Array, sources: readonly ClutterSource[]): Float64Array {
  const m = variances.length
  const covariance = new Float64Array(m * m)
  for (let i = 0; i < m; i++) covariance[i * m + i] = variances[i]!
  for (const { responses, residual } of sources) {
    const p = new Float64Array(m)
    const q = new Float64Array(m)
    responses.forEach((response, i) => {
      p[2 * i] = response.re
      p[2 * i + 1] = response.im
      q[2 * i] = -response.im
      q[2 * i + 1] = response.re
    })
    const amplitude = residual.amplitude ** 2
    const phase = residual.phaseRad ** 2
    for (let i = 0; i < m; i++) {
      for (let j = 0; j < m; j++) {
        covariance[i * m + j]! += amplitude * p[i]! * p[j]! + phase * q[i]! * q[j]!
      }
      const pair = i - (i % 2)
      covariance[i * m + i]! += residual.remainder ** 2 * (p[pair]! ** 2 + p[pair + 1]! ** 2)
    }
  }
  return covariance
}

/** Rows of a matrix W with W·C·W′ = 1, lower triangular, row by row: D² = |W·s|². */
export interface Whitening {
  readonly size: number
  readonly rows: Float64Array
}

/** Inverse Cholesky factor of a covariance; rows and columns are scaled by √diagonal first. */
export function whitening(covariance: Float64Array, size: number): Whitening {
  const scaleBy = new Float64Array(size)
  for (let i = 0; i < size; i++) scaleBy[i] = 1 / Math.sqrt(covariance[i * size + i]!)
  const factor = new Float64Array(size * size)
  const rows = new Float64Array(size * size)
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = covariance[i * size + j]! * scaleBy[i]! * scaleBy[j]!
      for (let k = 0; k < j; k++) sum -= factor[i * size + k]! * factor[j * size + k]!
      factor[i * size + j] = i === j ? Math.sqrt(sum) : sum / factor[j * size + j]!
    }
  }
  for (let column = 0; column < size; column++) {
    for (let i = column; i < size; i++) {
      let sum = i === column ? 1 : 0
      for (let k = column; k < i; k++) sum -= factor[i * size + k]! * rows[k * size + column]!
      rows[i * size + column] = sum / factor[i * size + i]!
    }
  }
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) rows[i * size + j]! *= scaleBy[j]!
  }
  return { size, rows }
}

/** D = √(s′C⁻¹s) for the real vector s = (Re α₁, Im α₁, …), m³: the optimum linear detector. */
export function decisionStatistic({ size, rows }: Whitening, signal: Float64Array): number {
  let total = 0
  for (let i = 0; i < size; i++) {
    let sum = 0
    for (let j = 0; j <= i; j++) sum += rows[i * size + j]! * signal[j]!
    total += sum * sum
  }
  return Math.sqrt(total)
}
