import type { Answer } from './exercise.ts'

/** Steps a size may change by, as a room of people can vote on them. */
const STEPS = [
  { id: 'larger', upTo: Number.POSITIVE_INFINITY, words: 'It gets larger' },
  { id: 'same', upTo: 1.05, words: 'It stays about the same' },
  { id: 'a-little', upTo: 0.95, words: 'A little smaller, by a tenth or so' },
  { id: 'a-third', upTo: 0.8, words: 'Smaller by about a third' },
  { id: 'half', upTo: 0.6, words: 'About half, or less' },
] as const

/** The choice that fits a size after over a size before; a size against none counts as half, none as larger. */
export function howMuchSmaller(beforeMm: number | null, afterMm: number | null): Answer {
  const ratio = afterMm === null ? Number.POSITIVE_INFINITY : beforeMm === null ? 0 : afterMm / beforeMm
  const step = STEPS.findLast(({ upTo }) => ratio <= upTo) ?? STEPS[0]
  return { kind: 'choice', choices: STEPS.map(({ id, words }) => ({ id, words })), right: step.id }
}
