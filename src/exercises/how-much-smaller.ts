import type { Answer } from './exercise.ts'

/** Steps a size may change by, as a room of people can vote on them; each begins where the one before it ends. */
const SMALLER = [
  { id: 'larger', upTo: Number.POSITIVE_INFINITY, words: 'It gets larger, by more than a twentieth' },
  { id: 'same', upTo: 1.05, words: 'It stays the same, within a twentieth' },
  { id: 'a-little', upTo: 0.95, words: 'Smaller, by a twentieth to a fifth' },
  { id: 'a-third', upTo: 0.8, words: 'Smaller, by a fifth to two fifths' },
  { id: 'half', upTo: 0.6, words: 'Smaller, by more than two fifths' },
] as const

const LARGER = [
  { id: 'smaller', from: 0, words: 'It gets smaller, by more than a twentieth' },
  { id: 'same', from: 0.95, words: 'It stays the same, within a twentieth' },
  { id: 'larger', from: 1.05, words: 'Larger, by a twentieth to a half' },
  { id: 'much-larger', from: 1.5, words: 'One and a half times to three times as large' },
  { id: 'huge', from: 3, words: 'More than three times as large, or not found at all' },
] as const

const ratioOf = (beforeMm: number | null, afterMm: number | null) =>
  afterMm === null ? Number.POSITIVE_INFINITY : beforeMm === null ? 0 : afterMm / beforeMm

const choices = (steps: readonly { readonly id: string; readonly words: string }[]) =>
  steps.map(({ id, words }) => ({ id, words }))

/** The choice that fits a size after over a size before; a size against none counts as smallest, none as larger. */
export function howMuchSmaller(beforeMm: number | null, afterMm: number | null): Answer {
  const ratio = ratioOf(beforeMm, afterMm)
  const step = SMALLER.findLast(({ upTo }) => ratio <= upTo) ?? SMALLER[0]
  return { kind: 'choice', choices: choices(SMALLER), right: step.id }
}

/** The same where a size is expected to grow; none after counts as the largest step. */
export function howMuchLarger(beforeMm: number | null, afterMm: number | null): Answer {
  const ratio = ratioOf(beforeMm, afterMm)
  const step = LARGER.findLast(({ from }) => ratio >= from) ?? LARGER[0]
  return { kind: 'choice', choices: choices(LARGER), right: step.id }
}
