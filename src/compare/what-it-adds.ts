import { isExpected, isPromised } from '../advice/assess/meets.ts'
import type { Finding } from '../contract/index.ts'
import { sizesDiffer } from './differences.ts'
import type { YearlyCost } from './running-cost.ts'
import type { Side } from './sides.ts'

/**
 * What a change of machine or pack makes of a size asked. promised, expected: not met before; firmer: expected
 * before and promised now; weaker: promised before and only expected now; lost: met before.
 */
export type Turn =
  | 'promised'
  | 'expected'
  | 'firmer'
  | 'as-before'
  | 'neither'
  | 'weaker'
  | 'lost'
  | 'no-size-asked'

/** How a contaminant stands with the one side and with the other. */
export interface Change {
  readonly contaminant: number
  readonly from: Finding
  readonly to: Finding
  /** Expected size, mm smaller, of unrounded sizes; null where one of both is none. */
  readonly smallerByMm: number | null
  readonly turn: Turn
}

/** What one side adds over another, and what it loses. */
export interface Added {
  readonly over: Side
  readonly with: Side
  readonly gains: readonly Change[]
  readonly losses: readonly Change[]
}

/** 2 promised, 1 expected, 0 not met. */
const standing = ({ meets }: Finding): 0 | 1 | 2 => (isPromised(meets) ? 2 : isExpected(meets) ? 1 : 0)

function turnOf(from: Finding, to: Finding): Turn {
  if (to.mustFindMm === null) return 'no-size-asked'
  const [before, after] = [standing(from), standing(to)]
  if (before === after) return before === 0 ? 'neither' : 'as-before'
  if (after > before) return before === 1 ? 'firmer' : after === 2 ? 'promised' : 'expected'
  return after === 1 ? 'weaker' : 'lost'
}

function changeOf(contaminant: number, from: Finding, to: Finding): Change {
  const { expectedMm: before } = from
  const { expectedMm: after } = to
  return {
    contaminant,
    from,
    to,
    smallerByMm: before === null || after === null ? null : before - after,
    turn: turnOf(from, to),
  }
}

/** Larger is better: what is met of the size asked first, then a size found beats none, a smaller one a larger. */
function better(from: Finding, to: Finding): number {
  const met = standing(to) - standing(from)
  if (met !== 0) return met
  if (!sizesDiffer(from.expectedMm, to.expectedMm)) return 0
  if (to.expectedMm === null) return -1
  return from.expectedMm === null || to.expectedMm < from.expectedMm ? 1 : -1
}

/** What the second side adds over the first, in sizes and contaminants. */
export function whatItAdds(over: Side, other: Side): Added {
  const pairs = other.findings.flatMap((to, contaminant) => {
    const from = over.findings[contaminant]
    return from && to ? [{ contaminant, from, to }] : []
  })
  const sided = (sign: 1 | -1) =>
    pairs
      .filter(({ from, to }) => Math.sign(better(from, to)) === sign)
      .map(({ contaminant, from, to }) => changeOf(contaminant, from, to))
  return { over, with: other, gains: sided(1), losses: sided(-1) }
}

export interface ByCost {
  /** Cheapest first. */
  readonly order: readonly Side[]
  /** What says which is the dearer: the sums entered, or the burden of the advice; "unknown" where all are alike. */
  readonly basis: 'entered' | 'burden' | 'unknown'
}

/** The sides from cheap to dear: by the yearly sums where every side has a whole one, else by burden. */
export function byCost(sides: readonly Side[], costs: readonly YearlyCost[]): ByCost {
  const sums = costs.map(({ sum, complete }) => (complete ? sum : null))
  const entered = sums.every((sum) => sum !== null)
  const weight = (side: Side) => (entered ? sums[sides.indexOf(side)]! : side.option.burden)
  const order = [...sides].sort((a, b) => weight(a) - weight(b))
  const alike = order.every((side) => weight(side) === weight(order[0]!))
  return { order, basis: alike ? 'unknown' : entered ? 'entered' : 'burden' }
}
