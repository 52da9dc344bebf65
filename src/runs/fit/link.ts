import { normalChance, normalUpperQuantile } from '../../numerics/normal.ts'

/** How a chance of finding follows a straight line η in the size's logarithm. */
export const LINKS = ['logit', 'probit'] as const
export type Link = (typeof LINKS)[number]

/** Chance q at η, its complement (kept apart: both keep their digits), and dq/dη, d²q/dη². */
export interface LinkValue {
  readonly found: number
  readonly missed: number
  readonly slope: number
  readonly bend: number
}

const SQRT_2PI = Math.sqrt(2 * Math.PI)
/** Beyond these η a chance is 0 or 1 to working precision. */
const FARTHEST: Record<Link, number> = { logit: 700, probit: 37 }

export function linkValue(link: Link, eta: number): LinkValue {
  const at = Math.max(-FARTHEST[link], Math.min(FARTHEST[link], eta))
  if (link === 'logit') {
    const found = 1 / (1 + Math.exp(-at))
    const missed = 1 / (1 + Math.exp(at))
    const slope = found * missed
    return { found, missed, slope, bend: slope * (missed - found) }
  }
  const slope = Math.exp((-at * at) / 2) / SQRT_2PI
  return { found: normalChance(at), missed: normalChance(-at), slope, bend: -at * slope }
}

/** η at which the chance is `chance`. */
export function linkInverse(link: Link, chance: number): number {
  if (!(chance > 0 && chance < 1))
    throw new RangeError(`a chance lies between 0 and 1, without the ends; ${chance} was given`)
  return link === 'logit' ? Math.log(chance / (1 - chance)) : -normalUpperQuantile(chance)
}
