import { factsOfApart } from '../advice/answer/facts-apart.ts'
import { placedAt } from '../advice/answer/facts-two.ts'
import type { Rulebook } from '../advice/book/rulebook.ts'
import { explainAll } from '../advice/decide/rule-outcome.ts'
import { type Asked, contrastOf } from '../advice/order/contrast.ts'
import { standing } from '../advice/order/order.ts'
import { contrastWords } from '../advice/say/contrast.ts'
import { toRuleTrace } from '../advice/say/reason.ts'
import type { Advice, Brief, Contrast, Option, RuleTrace } from '../contract/index.ts'

/** The part of an advice that two options of a point are compared in. */
export type Compared = { readonly trace: Pick<Advice['trace'], 'rules'> } & {
  readonly points: readonly Pick<Advice['points'][number], 'name' | 'options'>[]
}

/** Two options side by side, with every rule that was asked about them. */
interface Tried {
  readonly contrast: Contrast
  readonly rules: readonly RuleTrace[]
}

/** Any two options of one point of an advice side by side, in the words of a book. */
export const rather = (...given: Parameters<typeof ratherTried>): Contrast => ratherTried(...given).contrast

/** The same with every rule tried. */
export function ratherTried(
  book: Rulebook,
  brief: Brief,
  advice: Compared,
  pointIndex: number,
  first: Option,
  second: Option,
): Tried {
  const { name: point, options } = advice.points[pointIndex]!
  const tried = advice.trace.rules.flatMap((one): Asked[] =>
    one.point === point ? [{ ...one, rule: one.id }] : [],
  )
  const apart = contrastOf(
    brief.contaminants,
    tried,
    options.filter(({ rank }) => rank !== null).map(standing),
    standing(first),
    standing(second),
  )
  const two = [first, second] as const
  const asked = explainAll(book, 'apart', factsOfApart(brief, pointIndex, apart, two).facts).map((one) => ({
    ...one,
    line: null,
    pointIndex,
    equipment: second.equipment,
    contaminant: null,
    beside: placedAt({ point: pointIndex, option: first }),
  }))
  const said = asked.filter(({ outcome }) => outcome === 'fired')
  return {
    contrast: contrastWords(pointIndex, apart, two, said),
    rules: asked.map((one) => toRuleTrace(one, brief)),
  }
}
