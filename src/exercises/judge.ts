import { readMeasure } from '../brief/form/measure.ts'
import type { Question } from './exercise.ts'
import { amount, written } from './numbers.ts'

/** How a prediction stands to what was worked out. */
export type Judged = 'right' | 'wrong' | 'too-low' | 'too-high' | 'none'

/** A predicted number as typed; "5,600" is read as the pages write it. */
export const readNumber = (typed: string) =>
  readMeasure(/^\s*[1-9]\d{0,2}(?:,\d{3})+\s*$/.test(typed) ? typed.replaceAll(',', '') : typed, '')

/** Stands for "no prediction" in an address. */
export const NO_GUESS = '-'

/** Judges a prediction as it was typed or chosen; what cannot be read counts as none. */
export function judge({ answer }: Question, guess: string | null): Judged {
  if (guess === null || guess === NO_GUESS || guess.trim() === '') return 'none'
  if (answer.kind === 'choice') {
    if (!answer.choices.some(({ id }) => id === guess)) return 'none'
    return guess === answer.right ? 'right' : 'wrong'
  }
  const reading = readNumber(guess)
  if (!reading.ok) return 'none'
  if (reading.value < answer.value / answer.within) return 'too-low'
  return reading.value > answer.value * answer.within ? 'too-high' : 'right'
}

/** A prediction in words; empty where there is none. */
export function guessWords({ answer }: Question, guess: string | null): string {
  if (guess === null || guess === NO_GUESS) return ''
  if (answer.kind === 'choice') return answer.choices.find(({ id }) => id === guess)?.words ?? ''
  const reading = readNumber(guess)
  return reading.ok ? `${written(reading.value)} ${answer.unit}`.trim() : ''
}

/** The right answer in words. */
export function rightWords({ answer }: Question): string {
  if (answer.kind === 'choice') return answer.choices.find(({ id }) => id === answer.right)?.words ?? ''
  return amount(answer.value, answer.unit)
}
