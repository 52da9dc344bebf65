import { gaussLegendre } from '../../numerics/gauss-legendre.ts'
import { normalUpperTail } from '../../numerics/normal.ts'

/** One shape that pieces come in: how many of them, and the test piece that stands for one of longest length L. */
export interface PieceShape {
  readonly name: string
  /** Share of all pieces; the shares of a list add up to 1. */
  readonly share: number
  /** Size of the equivalent test piece ÷ longest length, both in mm. */
  readonly perLength: number
}

/**
 * Sizes of the pieces that arrive: longest length lognormal. No published distribution of fragment lengths by
 * material was found; median, factor and shapes are assumptions to be confirmed by a person who saw the finds.
 */
export interface FragmentSizes {
  readonly medianMm: number
  /** Lengths a factor apart: 68 % of pieces lie between median ÷ factor and median × factor; above 1. */
  readonly factor: number
  readonly shapes: readonly PieceShape[]
}

const PANELS = 36
const NODES = 12
/** Integration ends so many standard deviations of ln L from the median; what lies beyond is below 1e-18. */
const REACH = 9

/** Standard deviation of ln L. */
export const spreadOf = ({ factor }: Pick<FragmentSizes, 'factor'>): number => Math.log(factor)

/** Share of pieces at least so long; 1 for a length of 0. */
export function shareFrom(sizes: FragmentSizes, fromLengthMm: number): number {
  if (fromLengthMm <= 0) return 1
  return normalUpperTail(Math.log(fromLengthMm / sizes.medianMm) / spreadOf(sizes))
}

/**
 * Integral over length and shapes of f(L) · g(d), with d = perLength · L the equivalent piece of each shape.
 * Gauss–Legendre on ln L in 36 panels of 12 nodes, from the smallest length counted: absolute error below 1e-6 for
 * chances that rise over 3 % of size or more (s ≥ 0.03). Shapes are added with their weights, never averaged first.
 */
export function overPieces(
  sizes: FragmentSizes,
  fromLengthMm: number,
  g: (equivalentMm: number) => number,
): number {
  const spread = spreadOf(sizes)
  const middle = Math.log(sizes.medianMm)
  const from = Math.max(middle - REACH * spread, fromLengthMm > 0 ? Math.log(fromLengthMm) : -Infinity)
  const to = middle + REACH * spread
  if (from >= to) return 0
  const { nodes, weights } = gaussLegendre(NODES)
  const half = (to - from) / PANELS / 2
  let sum = 0
  for (let panel = 0; panel < PANELS; panel++) {
    const centre = from + (2 * panel + 1) * half
    for (let i = 0; i < NODES; i++) {
      const logLength = centre + half * nodes[i]!
      const z = (logLength - middle) / spread
      const density = Math.exp((-z * z) / 2) / (spread * Math.sqrt(2 * Math.PI))
      const lengthMm = Math.exp(logLength)
      let value = 0
      for (const { share, perLength } of sizes.shapes) value += share * g(perLength * lengthMm)
      sum += half * weights[i]! * density * value
    }
  }
  return sum
}
