import type { Problem } from '../contract/index.ts'
import { type Acceptance, acceptanceOf } from './acceptance.ts'
import { type AskedCosts, readCosts } from './cost-fields.ts'
import { type Differences, differencesOf } from './differences.ts'
import { commonRate } from './false-rejects.ts'
import { type Laid, type Wanted, wantedIn } from './laid.ts'
import { type PackRow, packRows } from './pack-rows.ts'
import { pickSides, pickTwice, recommended } from './pick-sides.ts'
import { type Questions, questionsOf } from './questions.ts'
import { type YearlyCost, yearlyCost } from './running-cost.ts'
import { namedShort, type Side, sidesOf } from './sides.ts'
import { readTerms, type Terms } from './terms.ts'
import { type Added, type ByCost, byCost, whatItAdds } from './what-it-adds.ts'

/** Everything the comparison page shows. */
export interface Comparison {
  readonly laid: readonly Laid[]
  readonly wanted: readonly Wanted[]
  readonly all: readonly Side[]
  readonly sides: readonly Side[]
  /** What becomes of each piece with the one pack and with the other; empty where there is one pack. */
  readonly packs: readonly PackRow[]
  /** What the advice puts there, where it is none of the sides; null where it is, or there are two packs. */
  readonly passedOver: Side | null
  readonly differences: Differences
  readonly byCost: ByCost
  /**
   * Machines of one pack: what each dearer side adds over the cheapest; both ways round where none is known to be
   * dearer. Of two packs: what the second makes of each machine.
   */
  readonly added: readonly Added[]
  /** The rate of false rejects that sizes, cost and clauses hold at; null where the points keep different ones. */
  readonly falseRejectsPerPack: number | null
  readonly asked: AskedCosts
  readonly costs: readonly YearlyCost[]
  readonly questions: Questions
  readonly acceptance: readonly Acceptance[]
  readonly terms: Terms
  readonly problems: readonly Problem[]
}

export interface Asked {
  readonly keys: readonly string[]
  readonly given: Readonly<Record<string, string | undefined>>
  /** Words of a piece. */
  readonly wordsOf: (piece: Wanted['piece']) => string
  readonly ofMaterial: (id: string) => string
}

/** A machine that the advice puts on the line and that is none of those compared. */
function passedOver(laid: Laid, all: readonly Side[], sides: readonly Side[]): Side | null {
  if (laid.advice.combination.uses.length === 0) return null
  const put = recommended(laid, all)
  return put && !sides.some(({ key }) => key === put.key) ? put : null
}

/** What the second pack makes of each machine that stands with both. */
function byPack(sides: readonly Side[], [first, second]: readonly [Laid, Laid]): Added[] {
  return sides
    .filter((side) => side.laid === first)
    .flatMap((side) => {
      const twin = sides.find(
        (other) => other.laid === second && other.option.equipment === side.option.equipment,
      )
      return twin ? [whatItAdds(side, twin)] : []
    })
}

function byMachine({ basis, order }: ByCost): Added[] {
  const [cheapest, ...others] = order
  return basis === 'unknown'
    ? others.flatMap((other) => [whatItAdds(cheapest!, other), whatItAdds(other, cheapest!)])
    : others.map((other) => whatItAdds(cheapest!, other))
}

/**
 * Two or three machines of a brief side by side, or one or two machines with the packs of two briefs; one machine
 * alone keeps its cost, questions and clause. Null where the advice has no machine at all.
 */
export function compare(laid: readonly [Laid] | readonly [Laid, Laid], asked: Asked): Comparison | null {
  const { keys, given, wordsOf, ofMaterial } = asked
  const wanted = wantedIn(laid)
  const all = sidesOf(laid, wanted)
  const sides = namedShort(laid.length === 2 ? pickTwice(laid, all, keys) : pickSides(all, keys))
  if (sides.length === 0) return null
  const costsAsked = readCosts(sides, given)
  const costs = sides.map((side, at) => yearlyCost(costsAsked.own[at]!, costsAsked.shared, side.point))
  const ordered = byCost(sides, costs)
  const terms = readTerms(given)
  return {
    laid,
    wanted,
    all,
    sides,
    packs: laid.length === 2 ? packRows(laid, wanted) : [],
    passedOver: laid.length === 2 ? null : passedOver(laid[0], all, sides),
    differences: differencesOf(sides),
    byCost: ordered,
    added: laid.length === 2 ? byPack(sides, laid) : byMachine(ordered),
    falseRejectsPerPack: commonRate(sides.map(({ point }) => point)),
    asked: costsAsked,
    costs,
    questions: questionsOf(sides, { pieces: wanted.map(({ piece }) => wordsOf(piece)), ofMaterial }),
    acceptance: sides.map((side) => acceptanceOf(side, terms)),
    terms,
    problems: costsAsked.problems,
  }
}
