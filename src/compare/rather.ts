import { factsOfApart } from '../advice/answer/facts-apart.ts'
import { placedAt } from '../advice/answer/facts-two.ts'
import type { Rulebook } from '../advice/book/rulebook.ts'
import { explainAll } from '../advice/decide/rule-outcome.ts'
import { type Asked, contrastOf } from '../advice/order/contrast.ts'
import { standing } from '../advice/order/order.ts'
import { contrastWords } from '../advice/say/contrast.ts'
import type { Advice, Brief, Contrast, Option } from '../contract/index.ts'

/** The part of an advice that two options of a point are compared in. */
export type Compared = { readonly trace: Pick<Advice['trace'], 'rules'> } & {
  readonly points: readonly Pick<Advice['points'][number], 'name' | 'options'>[]
}

/** Why two that no rule puts in order are not: neither is suitable, or one is an ideal. */
function undecided(options: readonly Option[]): string {
  const ideal = options.find(({ rank }) => rank === null)
  return ideal
    ? `${ideal.label} is an ideal shown for teaching and has no place in the order.`
    : 'Neither is suitable here, so nothing puts one before the other.'
}

/** Any two options of one point of an advice side by side, in the words of a book. */
export function rather(
  book: Rulebook,
  brief: Brief,
  advice: Compared,
  pointIndex: number,
  first: Option,
  second: Option,
): Contrast {
  const { name: point, options } = advice.points[pointIndex]!
  const asked = advice.trace.rules.flatMap((one): Asked[] =>
    one.point === point ? [{ ...one, rule: one.id }] : [],
  )
  const apart = contrastOf(
    brief.contaminants,
    asked,
    options.filter(({ rank }) => rank !== null).map(standing),
    standing(first),
    standing(second),
  )
  const two = [first, second] as const
  const said = explainAll(book, 'apart', factsOfApart(brief, pointIndex, apart, two).facts)
    .filter(({ outcome }) => outcome === 'fired')
    .map((one) => ({
      ...one,
      line: null,
      pointIndex,
      equipment: second.equipment,
      contaminant: null,
      beside: placedAt({ point: pointIndex, option: first }),
    }))
  const contrast = contrastWords(pointIndex, apart, two, said)
  return apart.parting ? contrast : { ...contrast, because: undecided(two) }
}
