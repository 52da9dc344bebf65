import type { Question } from './exercise.ts'
import { readHands, scoreOf } from './hands.ts'
import { judge } from './judge.ts'

/** What came of one exercise: predictions or hands that were right, of those that were made. */
export interface Score {
  readonly right: number
  readonly made: number
}

/** The score of an exercise; a count of hands counts each hand. */
export function scoreOfExercise(questions: readonly Question[], guesses: readonly string[]): Score {
  return questions.reduce<Score>(
    ({ right, made }, question, at) => {
      const guess = guesses[at] ?? null
      const counts = readHands(guess)
      if (counts) {
        const hands = scoreOf(question, counts)
        return { right: right + hands.right, made: made + hands.all }
      }
      const judged = judge(question, guess)
      return { right: right + (judged === 'right' ? 1 : 0), made: made + (judged === 'none' ? 0 : 1) }
    },
    { right: 0, made: 0 },
  )
}

/** True where a score reaches a pass mark in percent; null where nothing was predicted. */
export const reaches = ({ right, made }: Score, passPercent: number): boolean | null =>
  made === 0 ? null : right * 100 >= passPercent * made

export const added = (scores: readonly Score[]): Score => ({
  right: scores.reduce((sum, { right }) => sum + right, 0),
  made: scores.reduce((sum, { made }) => sum + made, 0),
})
