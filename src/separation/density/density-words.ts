import { mm, plain } from '../plain-number.ts'
import type { Variant } from '../variant.ts'
import { equalSizeMm, sideOf, speedRange } from './separated-piece.ts'
import type { Separator } from './separator.ts'

/** What stays with the food, with the sizes that settle as it does. */
export function staysWords(separator: Separator, variants: readonly Variant[]): string {
  const [, foodSpeed] = separator.foodSpeeds
  if (foodSpeed <= 0) return 'Whatever floats as the food does.'
  const first = variants[0]!
  const { label } = first.material
  const equal = equalSizeMm(separator, first)
  if (equal === null) return 'Pieces that settle about as fast as the food.'
  const { ratio } = separator
  const [from, to] = [mm(equal / ratio ** 2), mm(equal * ratio ** 2)]
  return sideOf(separator, first) === 'heavy'
    ? `Pieces that settle about as fast as the food (${label}: ${from} to ${to}); smaller ones neither, where only what is heavy is taken out.`
    : `Pieces that settle about as fast as the food (${label}: ${from} to ${to}); larger ones neither, where only what is light is taken out.`
}

/** The two speeds, and what follows from them. */
export function settlingWords(separator: Separator, variants: readonly Variant[]): string {
  const { medium, ratio } = separator
  const [, foodSpeed] = separator.foodSpeeds
  const ranges = variants.map((variant) => speedRange(separator, variant))
  const slow = Math.min(...ranges.map((r) => r[0]))
  const fast = Math.max(...ranges.map((r) => r[1]))
  if (foodSpeed <= 0)
    return slow > 0 ? 'The food floats and the piece sinks.' : 'The food floats; so may the piece.'
  const piece = `The piece settles in ${medium} at ${plain(slow)} to ${plain(fast)} m/s, the food at ${plain(foodSpeed)}`
  if (slow >= ratio * foodSpeed) return `${piece}: it leaves as heavy.`
  if (fast <= foodSpeed / ratio) return `${piece}: only a stream that takes out what is light removes it.`
  return `${piece}: too close to be parted for sure.`
}

/** What the separator needs to work at all. */
export function separatorCondition({ ratio, medium }: Separator): string {
  const wet = medium === 'water' ? 'and the food may get wet' : 'dry and not sticking'
  return `One stream takes out either what settles faster or what settles slower; a fluidised deck forgives angular shapes, a free stream does not. Graded first: grains of one run within a factor of about ${plain(ratio ** 2)} in size, fed evenly, ${wet}.`
}
