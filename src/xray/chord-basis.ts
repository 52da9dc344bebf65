import { besselJ0 } from '../numerics/bessel.ts'
import { gaussLegendre } from '../numerics/gauss-legendre.ts'

/**
 * Transforms of a round object whose signal is a polynomial in u = cos θ, the chord being diameter × u:
 * sphere B_j(k) = 2π∫ u^j · J0(k sin θ) sin θ cos θ dθ, wire B_j(k) = 2∫ u^j · cos(k sin θ) cos θ dθ over
 * 0 to π/2, with k = 2πf·radius and j = 1 … 7. Tabulated once per kind in steps of 1/32 (read linearly);
 * beyond the table a transform is below 1e-4 of its value at k = 0 and is taken as zero.
 */
export const DEGREE = 7
export const STEPS_PER_UNIT = 32
export const TABLE_END = 96

export type RoundKind = 'sphere' | 'wire'

/** Angles θ of a rule over 0 to π/2: sin θ, and weight × cos θ × cos^j θ for j = 1 … 7. */
function angles(points: number): { sine: Float64Array; terms: Float64Array } {
  const rule = gaussLegendre(points)
  const sine = new Float64Array(points)
  const terms = new Float64Array(points * DEGREE)
  for (let i = 0; i < points; i++) {
    const theta = ((rule.nodes[i]! + 1) * Math.PI) / 4
    const cosine = Math.cos(theta)
    sine[i] = Math.sin(theta)
    for (let j = 0; j < DEGREE; j++)
      terms[i * DEGREE + j] = rule.weights[i]! * (Math.PI / 4) * cosine ** (j + 2)
  }
  return { sine, terms }
}

function tabulate(kind: RoundKind): Float64Array {
  const rows = TABLE_END * STEPS_PER_UNIT + 2
  const table = new Float64Array(rows * DEGREE)
  const rules = new Map<number, ReturnType<typeof angles>>()
  for (let row = 0; row < rows; row++) {
    const k = row / STEPS_PER_UNIT
    const points = 16 * Math.ceil((12 + k * 0.45) / 16)
    const { sine, terms } = rules.get(points) ?? angles(points)
    if (!rules.has(points)) rules.set(points, { sine, terms })
    for (let i = 0; i < points; i++) {
      const x = k * sine[i]!
      const wave = kind === 'sphere' ? 2 * Math.PI * sine[i]! * besselJ0(x) : 2 * Math.cos(x)
      for (let j = 0; j < DEGREE; j++) table[row * DEGREE + j]! += terms[i * DEGREE + j]! * wave
    }
  }
  return table
}

const kept: Partial<Record<RoundKind, Float64Array>> = {}

/** The table of one kind: DEGREE numbers per step of k. */
export function chordBasis(kind: RoundKind): Float64Array {
  kept[kind] ??= tabulate(kind)
  return kept[kind]
}

/**
 * Places u in (0, 1) where a signal is read to find its polynomial: the Chebyshev points, moved to whole
 * multiples of 1/80 so that one exponential per energy serves them all.
 */
export const FIT_PLACES = [79 / 80, 71 / 80, 57 / 80, 40 / 80, 23 / 80, 9 / 80, 1 / 80] as const

/** Matrix from signal/u at the places to the coefficients of u¹ … u⁷, row by row. */
export const FIT_MATRIX: Float64Array = invertedVandermonde(FIT_PLACES)

function invertedVandermonde(places: readonly number[]): Float64Array {
  const n = places.length
  const matrix = new Float64Array(n * n)
  places.forEach((u, column) => {
    let polynomial = [1]
    let scale = 1
    places.forEach((other, k) => {
      if (k === column) return
      scale *= u - other
      const next = new Array<number>(polynomial.length + 1).fill(0)
      polynomial.forEach((c, power) => {
        next[power + 1]! += c
        next[power]! -= c * other
      })
      polynomial = next
    })
    for (let power = 0; power < n; power++) matrix[power * n + column] = polynomial[power]! / scale
  })
  return matrix
}
