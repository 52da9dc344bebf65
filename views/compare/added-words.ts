import type { Comparison } from '../../src/compare/comparison.ts'
import type { Added } from '../../src/compare/what-it-adds.ts'

const list = (words: readonly string[]) =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`

/** What one side adds over another, in one or two sentences a buyer can repeat. */
export function addedWords({ over, with: other, gains, losses }: Added, pieces: readonly string[]): string {
  const named = (changes: Added['gains']) => list(changes.map(({ contaminant }) => pieces[contaminant] ?? ''))
  const met = gains.filter(({ asked }) => asked === 'now-met')
  const beyond = gains.filter(({ asked }) => asked === 'met-by-both')
  const open = gains.filter(({ asked }) => asked === 'no-size-asked')
  const short = gains.filter(({ asked }) => asked === 'met-by-neither')
  const sentences = [
    met.length > 0 ? `Of the two only ${other.words} reaches the size you must find of ${named(met)}.` : '',
    met.length === 0 && gains.length > 0
      ? `${capital(other.words)} reaches no size you must find that ${over.words} does not reach as well.`
      : '',
    beyond.length > 0 ? `It finds smaller ${named(beyond)}, below what you asked for.` : '',
    short.length > 0 ? `It comes nearer with ${named(short)}, still not near enough.` : '',
    open.length > 0 ? `It finds smaller ${named(open)}, of which you asked no size.` : '',
    gains.length === 0 ? `In sizes ${other.words} adds nothing over ${over.words}.` : '',
    losses.length > 0 ? `It finds only larger ${named(losses)}.` : '',
  ]
  return sentences.filter(Boolean).join(' ')
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1)

/** What says which side is the dearer. */
export function basisWords({ byCost }: Comparison): string {
  const order = byCost.order.map(({ words }) => words).join(', then ')
  if (byCost.basis === 'entered') return `By the yearly cost you entered, from cheap to dear: ${order}.`
  if (byCost.basis === 'burden')
    return `By burden (1 light to 5 heavy: purchase, upkeep, space, skill), from cheap to dear: ${order}. Enter prices below to go by them.`
  return 'Which is the dearer is not known: the burden is the same. Enter prices below.'
}
