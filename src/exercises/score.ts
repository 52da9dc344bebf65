import type { Question } from './exercise.ts'
import { judge } from './judge.ts'

/** What came of one exercise: predictions that were right, of those that were made. */
export interface Score {
  readonly right: number
  readonly made: number
}

/** The score of one person in an exercise; a count of hands says nothing of one person and does not count. */
export function scoreOfExercise(questions: readonly Question[], guesses: readonly string[]): Score {
  const judged = questions
    .map((question, at) => judge(question, guesses[at] ?? null))
    .filter((one) => one !== 'none')
  return { right: judged.filter((one) => one === 'right').length, made: judged.length }
}

/** True where a score reaches a pass mark in percent; null where nothing was predicted. */
export const reaches = ({ right, made }: Score, passPercent: number): boolean | null =>
  made === 0 ? null : right * 100 >= passPercent * made

export const added = (scores: readonly Score[]): Score => ({
  right: scores.reduce((sum, { right }) => sum + right, 0),
  made: scores.reduce((sum, { made }) => sum + made, 0),
})
