import { ANSWER, type Question } from '../../../src/exercises/exercise.ts'

/** What is marked in a picture: the choice that is right, and the one that was predicted. */
export interface Marked {
  readonly right: string
  readonly guess: string | null
}

/** "the answer", "your prediction" or both, beside what stands for a choice; empty where it is neither. */
export function markWords(choice: string | undefined, marked: Marked | null, room: boolean): string {
  if (choice === undefined || marked === null) return ''
  const words = [
    ...(choice === marked.right ? ['the answer'] : []),
    ...(choice === marked.guess ? [room ? 'predicted' : 'your prediction'] : []),
  ]
  return words.join(', ')
}

/** The same as a sign in a drawing, where there is no room for words; beneath it stands what the signs say. */
export function markSign(choice: string | undefined, marked: Marked | null): string {
  if (choice === undefined || marked === null) return ''
  return choice === marked.right ? ' ◀' : choice === marked.guess ? ' ◁' : ''
}

/** What to mark in the pictures of a question that was answered. */
export const markedOf = ({ answer }: Question, guess: string | null): Marked => ({
  right: answer.kind === 'choice' ? answer.right : ANSWER,
  guess,
})
