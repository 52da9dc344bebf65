import { isExpected } from '../advice/assess/meets.ts'
import type { Finding } from '../contract/index.ts'
import { sizesDiffer } from './differences.ts'
import type { YearlyCost } from './running-cost.ts'
import type { Side } from './sides.ts'

/** How a contaminant stands with the one side and with the other. */
export interface Change {
  readonly contaminant: number
  readonly from: Finding
  readonly to: Finding
  /** Expected size, mm smaller; null where one of both is none. */
  readonly smallerByMm: number | null
  /** now-met: the other side does not meet the size asked and this one does, at least in a test. */
  readonly asked: 'now-met' | 'met-by-both' | 'met-by-neither' | 'no-longer-met' | 'no-size-asked'
}

/** What one side adds over another, and what it loses. */
export interface Added {
  readonly over: Side
  readonly with: Side
  readonly gains: readonly Change[]
  readonly losses: readonly Change[]
}

const meets = ({ meets: how }: Finding) => isExpected(how)

function askedOf(from: Finding, to: Finding): Change['asked'] {
  if (to.mustFindMm === null) return 'no-size-asked'
  if (meets(to)) return meets(from) ? 'met-by-both' : 'now-met'
  return meets(from) ? 'no-longer-met' : 'met-by-neither'
}

function changeOf(from: Finding, to: Finding): Change {
  const { expectedMm: before } = from
  const { expectedMm: after } = to
  return {
    contaminant: to.contaminant,
    from,
    to,
    smallerByMm: before === null || after === null ? null : before - after,
    asked: askedOf(from, to),
  }
}

/** Larger is better: a size found beats none, a smaller one beats a larger one. */
function better(from: Finding, to: Finding): -1 | 0 | 1 {
  if (!sizesDiffer(from.expectedMm, to.expectedMm)) return 0
  if (to.expectedMm === null) return -1
  return from.expectedMm === null || to.expectedMm < from.expectedMm ? 1 : -1
}

/** What the second side adds over the first, in sizes and contaminants. */
export function whatItAdds(over: Side, other: Side): Added {
  const pairs = other.option.findings.flatMap((to) => {
    const from = over.option.findings.find(({ contaminant }) => contaminant === to.contaminant)
    return from ? [{ from, to }] : []
  })
  const sided = (sign: 1 | -1) =>
    pairs.filter(({ from, to }) => better(from, to) === sign).map(({ from, to }) => changeOf(from, to))
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
