import type { Question } from '../../src/exercises/exercise.ts'
import { type HandScore, readHands, rightAt, scoreOf, votable } from '../../src/exercises/hands.ts'
import { BarTable } from './pictures/bar-table.tsx'

/** A, B, C … of the choices. */
export const letterOf = (at: number): string => String.fromCharCode(65 + at)

interface Props {
  readonly question: Question
  readonly counts: readonly number[]
  readonly id: string
  readonly room: HandScore
}

/** The hands of a room beside the answer, and what the room has scored so far. */
export function Tally({ question, counts, id, room }: Props) {
  const choices = votable(question)
  const { right, all } = scoreOf(question, counts)
  return (
    <figure class="exercise-picture tally">
      <figcaption>
        {right} of {all} hands right{room.all > all ? `; the room so far ${scoreWords(room)}` : ''}
      </figcaption>
      <BarTable
        id={id}
        picture={{
          kind: 'bars',
          title: 'Hands',
          unit: '',
          bars: choices.map(({ id: choice, words }, at) => ({
            words: `${letterOf(at)}. ${words}`,
            value: counts[at] ?? 0,
            choice,
          })),
        }}
        marked={{ right: choices[rightAt(question)]?.id ?? '', guess: null }}
        room
      />
    </figure>
  )
}

/** "31 of 44 (70 %)". */
export const scoreWords = ({ right, all }: HandScore): string =>
  `${right} of ${all} (${Math.round((100 * right) / all)}\u00a0%)`

/** The hands in a prediction in words, for the record; null where it is no count of hands. */
export function handsWords(question: Question, guess: string | null): string | null {
  const counts = readHands(guess)
  return counts
    ? votable(question)
        .map((_, at) => `${letterOf(at)} ${counts[at] ?? 0}`)
        .join(', ')
    : null
}
