import type { Choice, Question } from './exercise.ts'
import { judge } from './judge.ts'
import { amount } from './numbers.ts'

/** Begins a prediction that is a count of hands; the counts follow in the order of the choices. */
const BEGINS = 'hands.'
/** Most hands one choice can have. */
export const MOST_HANDS = 999

/** Counts of hands as one prediction that can travel in an address: "hands.3.5.0.4". */
export const writeHands = (counts: readonly number[]): string => BEGINS + counts.join('.')

/** The counts in a prediction; null where it is none. */
export function readHands(guess: string | null): number[] | null {
  if (!guess?.startsWith(BEGINS)) return null
  const counts = guess.slice(BEGINS.length).split('.').map(Number)
  return counts.every((count) => Number.isInteger(count) && count >= 0 && count <= MOST_HANDS) ? counts : null
}

/** What a room can raise hands for: the choices, or the value among what people say who forget something. */
export function votable({ answer }: Question): readonly Choice[] {
  if (answer.kind === 'choice') return answer.choices
  return [answer.value, ...answer.others]
    .sort((a, b) => a - b)
    .map((value) => ({
      id: String(Number(value.toPrecision(6))),
      words: amount(value, answer.unit),
    }))
}

/** Where among the choices of a room the right one stands. */
export const rightAt = (question: Question): number =>
  votable(question).findIndex(({ id }) => judge(question, id) === 'right')

/** Hands that were right, of all that went up. */
export interface HandScore {
  readonly right: number
  readonly all: number
}

export function scoreOf(question: Question, counts: readonly number[]): HandScore {
  return { right: counts[rightAt(question)] ?? 0, all: counts.reduce((sum, count) => sum + count, 0) }
}

/** The score of a room over the questions of its sitting; all is 0 where no hands were counted. */
export function roomScore(
  sitting: readonly { readonly questions: readonly Question[]; readonly guesses: readonly string[] }[],
): HandScore {
  const scores = sitting.flatMap(({ questions, guesses }) =>
    questions.flatMap((question, at) => {
      const counts = readHands(guesses[at] ?? null)
      return counts ? [scoreOf(question, counts)] : []
    }),
  )
  return {
    right: scores.reduce((sum, { right }) => sum + right, 0),
    all: scores.reduce((sum, { all }) => sum + all, 0),
  }
}
