import type { Advice, Brief, Problem } from '../contract/index.ts'
import { type Acceptance, acceptanceOf } from './acceptance.ts'
import { type AskedCosts, readCosts } from './cost-fields.ts'
import { type Differences, differencesOf } from './differences.ts'
import { type Question, questionsTo, questionsToOurselves } from './questions.ts'
import { type YearlyCost, yearlyCost } from './running-cost.ts'
import { namedShort, pickSides, type Side, sidesOf } from './sides.ts'
import { readTerms, type Terms } from './terms.ts'
import { type Added, type ByCost, byCost, whatItAdds } from './what-it-adds.ts'

/** Everything the comparison page shows. */
export interface Comparison {
  readonly all: readonly Side[]
  readonly sides: readonly Side[]
  readonly differences: Differences
  readonly byCost: ByCost
  /** What each dearer side adds over the cheapest; both ways round where none is known to be dearer. */
  readonly added: readonly Added[]
  readonly asked: AskedCosts
  readonly costs: readonly YearlyCost[]
  readonly questions: readonly { readonly side: Side; readonly questions: readonly Question[] }[]
  /** What the buyer has to find out first. */
  readonly ourselves: readonly Question[]
  readonly acceptance: readonly Acceptance[]
  readonly terms: Terms
  readonly problems: readonly Problem[]
}

export interface Asked {
  readonly keys: readonly string[]
  readonly given: Readonly<Record<string, string | undefined>>
  /** Contaminants in words, in the order of the brief. */
  readonly pieces: readonly string[]
}

/**
 * Two or three machines or quotes of a brief side by side; one alone keeps its cost, questions and clause. Null
 * where the advice has no machine at all.
 */
export function compare(brief: Brief, advice: Advice, { keys, given, pieces }: Asked): Comparison | null {
  const all = sidesOf(brief, advice)
  const sides = namedShort(pickSides(all, keys))
  if (sides.length === 0) return null
  const asked = readCosts(sides, given)
  const costs = sides.map((side, at) => yearlyCost(asked.own[at]!, asked.shared, side.point))
  const ordered = byCost(sides, costs)
  const [cheapest, ...others] = ordered.order
  const terms = readTerms(given)
  return {
    all,
    sides,
    differences: differencesOf(sides, brief.contaminants.length),
    byCost: ordered,
    added:
      ordered.basis === 'unknown'
        ? others.flatMap((other) => [whatItAdds(cheapest!, other), whatItAdds(other, cheapest!)])
        : others.map((other) => whatItAdds(cheapest!, other)),
    asked,
    costs,
    questions: sides.map((side) => ({ side, questions: questionsTo(side, { brief, advice, pieces }) })),
    ourselves: questionsToOurselves(sides, advice),
    acceptance: sides.map((side) => acceptanceOf(side, terms)),
    terms,
    problems: asked.problems,
  }
}
