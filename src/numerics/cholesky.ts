/**
 * Small symmetric positive definite matrices (information of a handful of constants), by the factor L of
 * A = L·Lᵀ. A matrix that is not positive definite gives null: there the data say nothing about some direction.
 */
export type Matrix = readonly (readonly number[])[]

/** Lower factor of A, or null where A is not positive definite to working precision. */
export function choleskyFactor(matrix: Matrix): number[][] | null {
  const size = matrix.length
  const lower: number[][] = Array.from({ length: size }, () => new Array<number>(size).fill(0))
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i]![j]!
      for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!
      if (i === j) {
        if (!(sum > 1e-14 * Math.abs(matrix[i]![i]!)) || sum === 0) return null
        lower[i]![i] = Math.sqrt(sum)
      } else lower[i]![j] = sum / lower[j]![j]!
    }
  }
  return lower
}

/** Solution of A·x = right from the factor of A. */
export function choleskySolve(lower: Matrix, right: readonly number[]): number[] {
  const size = lower.length
  const x = [...right]
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < i; k++) x[i]! -= lower[i]![k]! * x[k]!
    x[i]! /= lower[i]![i]!
  }
  for (let i = size - 1; i >= 0; i--) {
    for (let k = i + 1; k < size; k++) x[i]! -= lower[k]![i]! * x[k]!
    x[i]! /= lower[i]![i]!
  }
  return x
}

/** ln det A from its factor. */
export function logDeterminant(lower: Matrix): number {
  return 2 * lower.reduce((sum, row, i) => sum + Math.log(row[i]!), 0)
}

/** A⁻¹ from its factor. */
export function inverseOf(lower: Matrix): number[][] {
  const size = lower.length
  const columns = Array.from({ length: size }, (_, j) =>
    choleskySolve(
      lower,
      Array.from({ length: size }, (_, i) => (i === j ? 1 : 0)),
    ),
  )
  return columns.map((_, i) => columns.map((column) => column[i]!))
}
