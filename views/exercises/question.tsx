import type { Question } from '../../src/exercises/exercise.ts'

/** What is the case, before anything is asked. */
export function Situation({ question }: { question: Question }) {
  return (
    <>
      <p class="situation">{question.situation}</p>
      {question.facts.length > 0 ? (
        <dl class="facts">
          {question.facts.map(({ words, value }) => (
            <div>
              <dt>{words}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      ) : null}
    </>
  )
}

/** Why it is so, and what that rests on. */
export function Reasons({ question, rests }: { question: Question; rests: string | null }) {
  return (
    <>
      {question.reason.map((text) => (
        <p>{text}</p>
      ))}
      {rests === null ? null : <p class="small">Rests on: {rests}</p>}
    </>
  )
}

/** Pictures of a question are named by exercise and number, so that ids stand once on a page. */
export const pictureId = (exercise: string, question: number, picture: number | 'scene'): string =>
  `picture-${exercise}-${question}-${picture}`
