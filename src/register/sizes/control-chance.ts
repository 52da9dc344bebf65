import { normalChanceFast } from '../../numerics/normal.ts'

/** z of 0.90: between the sizes of chance 0.50 and 0.90 lie so many standard deviations. */
const Z90 = 1.281551565544601

/** Where a piece can lie, and how well it is seen there. Blind places have no sizes. */
export interface PlaceChance {
  /** Share of the pieces that lie there; the shares of a control add up to 1. */
  readonly share: number
  /** Size found half of the time and nine times in ten, mm; null where nothing is found. */
  readonly a50Mm: number | null
  readonly a90Mm: number | null
}

/** A control that takes pieces out: what it sees, and how often it works as it should. */
export interface ControlChance {
  readonly places: readonly PlaceChance[]
  /** Share of the time that a seen piece is really taken out: on, right setting, reject worked, bin not emptied back. */
  readonly workingShare: number
  /** Of a device that separates without seeing: share taken out by size, in place of the places. */
  readonly removes?: (sizeMm: number) => number
}

/**
 * Chance of finding a piece of a size by a probit in ln(size): Φ(ln(d/a50)/s), s = ln(a90/a50)/1.2816. The link is
 * an assumption; it matters in the tails (a logit through the same two sizes is lower at 0.995).
 */
export function chanceAt(sizeMm: number, a50Mm: number | null, a90Mm: number | null): number {
  if (a50Mm === null || a90Mm === null) return 0
  const s = Math.log(a90Mm / a50Mm) / Z90
  return normalChanceFast(Math.log(sizeMm / a50Mm) / s)
}

/** The same by a logit through the two sizes: 1/(1 + (d/a50)^−b), b = ln 9 ÷ ln(a90/a50). Lower in the upper tail. */
export function chanceByLogit(sizeMm: number, a50Mm: number | null, a90Mm: number | null): number {
  if (a50Mm === null || a90Mm === null) return 0
  return 1 / (1 + (sizeMm / a50Mm) ** (-Math.log(9) / Math.log(a90Mm / a50Mm)))
}

/** Chance averaged over the places where pieces lie, working share included: what rates are made of. */
export function meanOverPlaces({ places, workingShare, removes }: ControlChance, sizeMm: number): number {
  if (removes) return workingShare * removes(sizeMm)
  let chance = 0
  for (const { share, a50Mm, a90Mm } of places) chance += share * chanceAt(sizeMm, a50Mm, a90Mm)
  return workingShare * chance
}

/** Chance in the worst place a piece can lie, the machine working: what sizes are promised by. */
export function worstPlace({ places }: Pick<ControlChance, 'places'>, sizeMm: number): number {
  return Math.min(1, ...places.map(({ a50Mm, a90Mm }) => chanceAt(sizeMm, a50Mm, a90Mm)))
}
