import { type Asked, contrastOf } from '../advice/order/contrast.ts'
import { standing } from '../advice/order/order.ts'
import { contrastWords } from '../advice/say/contrast.ts'
import type { Advice, Brief, Contrast, Option } from '../contract/index.ts'

/** The part of an advice that two options of a point are compared in. */
export type Compared = { readonly trace: Pick<Advice['trace'], 'rules'> } & {
  readonly points: readonly Pick<Advice['points'][number], 'name' | 'options'>[]
}

/** Any two options of one point of an advice side by side. */
export function rather(
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
  return contrastWords(brief, pointIndex, apart, [first, second])
}
