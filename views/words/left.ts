import type { AnswerRow } from '../../src/contract/answer.ts'

/** What is left to do about a contaminant, in a word or two. */
export const LEFT_WORDS: Readonly<Record<AnswerRow['left']['kind'], string>> = {
  done: 'show it at acceptance',
  test: 'test it',
  prevent: 'keep it out',
  agree: 'agree another size',
  'look-elsewhere': 'look elsewhere',
  'set-a-size': 'set a size',
}
