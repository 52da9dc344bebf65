import type { Question } from '../../src/exercises/exercise.ts'
import { NO_GUESS } from '../../src/exercises/judge.ts'
import { ErrorSummary } from '../brief/error-summary.tsx'
import { Page } from '../page.tsx'
import { exerciseLink, hiddenFields, listLink, type Screen, type Sitting } from './links.ts'
import { Situation } from './question.tsx'
import { RoomNav } from './room-nav.tsx'

export interface AskPageProps {
  readonly sitting: Sitting
  readonly id: string
  readonly title: string
  readonly question: Question
  /** From 1. */
  readonly number: number
  readonly of: number
  /** The screen as the address has it, without a prediction. */
  readonly screen: Screen
  readonly previous: string | null
  /** True while a clock runs: nothing is shown before the last answer. */
  readonly timed: boolean
  readonly typed: string
  readonly problem: string | null
}

/** One question, to be predicted before it is revealed. */
export function AskPage(props: AskPageProps) {
  const { sitting, id, title, question, number, of, screen, previous, timed, problem } = props
  const reveal = exerciseLink(sitting, id, { ...screen, guess: NO_GUESS })
  return (
    <Page
      title={`${problem ? 'Error: ' : ''}${title}`}
      packed={sitting.packed}
      here="exercises"
      present={sitting.present}
    >
      {sitting.present ? (
        <RoomNav
          previous={previous}
          next={timed ? null : { href: reveal, words: 'Show the answer' }}
          list={listLink(sitting)}
        />
      ) : null}
      {problem ? <ErrorSummary problems={[{ path: 'guess', message: problem }]} /> : null}
      <p class="over-title">
        Predict{of > 1 ? `, ${number} of ${of}` : ''}
        {timed ? ', the clock is running' : ''}
      </p>
      <h1>{title}</h1>
      <Situation question={question} />
      {sitting.present && question.answer.kind === 'choice' ? (
        <OptionLinks {...props} />
      ) : (
        <PredictionForm {...props} />
      )}
      {sitting.present || timed ? null : (
        <ul class="acts">
          <li>
            <a href={reveal}>Show the answer without a prediction</a>
          </li>
          <li>
            <a href={listLink(sitting)}>All exercises</a>
          </li>
        </ul>
      )}
    </Page>
  )
}

/** In front of a room every choice is a link; the vote of the room is taken by following one. */
function OptionLinks({ sitting, id, question, screen }: AskPageProps) {
  const { answer } = question
  if (answer.kind !== 'choice') return null
  return (
    <>
      <h2 class="ask">{question.ask}</h2>
      <ol class="options">
        {answer.choices.map((choice) => (
          <li>
            <a href={exerciseLink(sitting, id, { ...screen, guess: choice.id })}>{choice.words}</a>
          </li>
        ))}
      </ol>
    </>
  )
}

function PredictionForm({ sitting, id, question, screen, typed, problem, timed }: AskPageProps) {
  const { answer } = question
  return (
    <form class="prediction" method="get" action={`/exercises/${id}`} novalidate>
      {hiddenFields(sitting, screen).map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
      {answer.kind === 'choice' ? (
        <fieldset
          class={`radios${problem ? ' wrong' : ''}`}
          {...(problem ? { 'aria-describedby': 'error-guess' } : {})}
        >
          <legend>{question.ask}</legend>
          <Wrong problem={problem} />
          {answer.choices.map((choice, at) => (
            <label class="prediction-choice">
              <input
                type="radio"
                name="guess"
                value={choice.id}
                {...(at === 0 ? { id: 'guess' } : {})}
                {...(typed === choice.id ? { checked: true } : {})}
              />
              <span>{choice.words}</span>
            </label>
          ))}
        </fieldset>
      ) : (
        <div class={`field${problem ? ' wrong' : ''}`}>
          <label for="guess">{question.ask}</label>
          <Wrong problem={problem} />
          <span class="measure">
            <input
              type="text"
              inputmode="decimal"
              autocomplete="off"
              id="guess"
              name="guess"
              value={typed}
              {...(problem ? { 'aria-invalid': 'true' as const, 'aria-describedby': 'error-guess' } : {})}
            />
            <span class="unit">{answer.unit}</span>
          </span>
        </div>
      )}
      <button type="submit">{timed ? 'Go on' : 'Predict, and show the answer'}</button>
    </form>
  )
}

function Wrong({ problem }: { problem: string | null }) {
  return problem ? (
    <p class="error" id="error-guess">
      <span class="unseen">Error: </span>
      {problem}
    </p>
  ) : null
}
