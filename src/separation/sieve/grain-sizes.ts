import { normalUpperQuantile, normalUpperTail } from '../../numerics/normal.ts'

/**
 * Grains of a food, log-normal in size: median, mm, and standard deviation of the natural logarithm.
 * Assumption of form; a sieve analysis of the product replaces it.
 */
export interface GrainSizes {
  readonly medianMm: number
  readonly spread: number
}

const CLASSES = 200

/** Equal shares of grains, each by its middle size, mm, rising. */
export function grainClassesMm({ medianMm, spread }: GrainSizes): readonly number[] {
  return Array.from(
    { length: CLASSES },
    (_, i) => medianMm * Math.exp(-spread * normalUpperQuantile((i + 0.5) / CLASSES)),
  )
}

/** Size that only the share `tail` of the grains exceeds, mm: median·exp(s·z). */
export const largestGrainMm = ({ medianMm, spread }: GrainSizes, tail: number): number =>
  medianMm * Math.exp(spread * normalUpperQuantile(tail))

/** Share of grains above a size: upper normal tail of ln(size/median)/s. */
export const shareAbove = ({ medianMm, spread }: GrainSizes, mm: number): number =>
  normalUpperTail(Math.log(mm / medianMm) / spread)
