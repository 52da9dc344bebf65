import { besselJ0, besselJ1 } from '../../numerics/bessel.ts'
import { gaussLegendre } from '../../numerics/gauss-legendre.ts'

/**
 * Transforms of a round object whose signal is a polynomial in u = cos θ, the chord being diameter × u:
 * sphere B_j(k) = 2π∫ u^j · J0(k sin θ) sin θ cos θ dθ, wire B_j(k) = 2∫ u^j · cos(k sin θ) cos θ dθ over
 * 0 to π/2, with k = 2πf·radius and j = 1 … 7. Tabulated once per kind in steps of 1/32 (read linearly);
 * beyond the table a transform is below 1e-4 of its value at k = 0 and is taken as zero.
 */
export const DEGREE = 7
export const STEPS_PER_UNIT = 32
export const TABLE_END = 170

export type RoundKind = 'sphere' | 'wire'

/** From here on Bessel functions are climbed from order to order; below, where that loses digits, by quadrature. */
const CLIMB_FROM = 8
const QUADRATURE = gaussLegendre(16)

/** B_1 … B_7 at small k by quadrature, into `row`. */
function byQuadrature(kind: RoundKind, k: number, row: Float64Array): void {
  row.fill(0)
  for (let i = 0; i < QUADRATURE.nodes.length; i++) {
    const theta = ((QUADRATURE.nodes[i]! + 1) * Math.PI) / 4
    const sine = Math.sin(theta)
    const cosine = Math.cos(theta)
    const wave = kind === 'sphere' ? 2 * Math.PI * sine * besselJ0(k * sine) : 2 * Math.cos(k * sine)
    let term = QUADRATURE.weights[i]! * (Math.PI / 4) * cosine * wave
    for (let j = 0; j < DEGREE; j++) {
      term *= cosine
      row[j]! += term
    }
  }
}

/** Γ(j/2 + 1) for j = 0 … 7. */
const GAMMA = [1, Math.sqrt(Math.PI) / 2]
for (let j = 2; j <= DEGREE; j++) GAMMA.push((j / 2) * GAMMA[j - 2]!)

/**
 * B_1 … B_7 in closed form, into `row`: sphere 2π·2^(j/2)·Γ(j/2+1)·J_(j/2+1)(k)/k^(j/2+1) (Sonine's first finite
 * integral), wire √π·Γ(j/2+1)·(2/k)^ν·J_ν(k), ν = (j+1)/2 (Poisson's integral); Watson 1922, ch. 12 and 3.
 */
function inClosedForm(kind: RoundKind, k: number, row: Float64Array): void {
  const amplitude = Math.sqrt(2 / (Math.PI * k))
  // J of order h/2 at [h], h = 0 … 9; orders climbed two halves at a time.
  const bessel = [besselJ0(k), amplitude * Math.sin(k), besselJ1(k)]
  const orderMinusHalf = amplitude * Math.cos(k)
  for (let h = 3; h <= DEGREE + 2; h++) {
    const order = (h - 2) / 2
    const before = h === 3 ? orderMinusHalf : bessel[h - 4]!
    bessel.push(((2 * order) / k) * bessel[h - 2]! - before)
  }
  const half = Math.sqrt(2 / k)
  for (let j = 1; j <= DEGREE; j++) {
    row[j - 1] =
      kind === 'sphere'
        ? (2 * Math.PI * GAMMA[j]! * half ** j * bessel[j + 2]!) / k
        : Math.sqrt(Math.PI) * GAMMA[j]! * half ** (j + 1) * bessel[j + 1]!
  }
}

/** B_1 … B_7 of one kind at k ≥ 0. */
export function chordTransforms(kind: RoundKind, k: number): Float64Array {
  const row = new Float64Array(DEGREE)
  if (k < CLIMB_FROM) byQuadrature(kind, k, row)
  else inClosedForm(kind, k, row)
  return row
}

function tabulate(kind: RoundKind): Float64Array {
  const rows = TABLE_END * STEPS_PER_UNIT + 2
  const table = new Float64Array(rows * DEGREE)
  for (let row = 0; row < rows; row++) table.set(chordTransforms(kind, row / STEPS_PER_UNIT), row * DEGREE)
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
