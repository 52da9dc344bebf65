import type { Question } from '../../src/exercises/exercise.ts'
import { votable } from '../../src/exercises/hands.ts'
import { NO_GUESS } from '../../src/exercises/judge.ts'
import { ErrorSummary } from '../brief/error-summary.tsx'
import { Page } from '../page.tsx'
import { capital } from '../words/capital.ts'
import { exerciseLink, hiddenFields, listLink, type Screen, type Sitting } from './links.ts'
import { PicturePart } from './picture.tsx'
import { pictureId, Situation } from './question.tsx'
import { RoomNav } from './room-nav.tsx'
import { letterOf } from './tally.tsx'

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
  /** Hands as they were typed, in the order of the choices. */
  readonly hands: readonly string[]
  readonly problem: string | null
}

/** One question, to be predicted before it is revealed. */
export function AskPage(props: AskPageProps) {
  const { sitting, id, title, question, number, of, screen, previous, timed, problem } = props
  const { present } = sitting
  const reveal = exerciseLink(sitting, id, { ...screen, guess: NO_GUESS })
  return (
    <Page
      title={`${problem ? 'Error: ' : ''}${title}`}
      packed={sitting.packed}
      here="exercises"
      present={present}
    >
      {present ? (
        <RoomNav
          previous={previous}
          next={timed ? null : { form: HANDS_FORM, words: 'Show the answer' }}
          list={listLink(sitting)}
        />
      ) : null}
      {problem ? (
        <ErrorSummary problems={[{ path: present ? 'hand-0' : 'guess', message: problem }]} />
      ) : null}
      <p class="over-title">
        Predict{of > 1 ? `, ${number} of ${of}` : ''}
        {timed ? ', the clock is running' : ''}
      </p>
      <h1>{title}</h1>
      <div class={`room-ask ${question.scene ? 'asked-beside' : present ? roomFor(question) : ''}`.trimEnd()}>
        <div>
          <Situation question={question} />
          {present ? <RoomChoices {...props} /> : <PredictionForm {...props} />}
        </div>
        {question.scene ? (
          <PicturePart picture={question.scene} id={pictureId(id, number, 'scene')} room={present} />
        ) : null}
      </div>
      {present || timed ? null : (
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

const HANDS_FORM = 'hands'

/** Most characters and choices of a question that leave room for larger letters on the screen of a room, and for the largest. */
const SHORT = { characters: 430, choices: 5 }
const SHORTEST = { characters: 260, choices: 4 }
function roomFor(question: Question): string {
  const choices = votable(question)
  const { length } = [question.situation, question.ask, ...choices.map(({ words }) => words)].join('')
  const within = (most: typeof SHORT) => length < most.characters && choices.length <= most.choices
  return within(SHORTEST) ? 'roomy roomiest' : within(SHORT) ? 'roomy' : ''
}

/** In front of a room: hands are counted for each choice, or one choice is followed; against the clock it is followed. */
function RoomChoices({ sitting, id, question, screen, timed, hands, problem }: AskPageProps) {
  const choices = votable(question)
  return (
    <form
      id={HANDS_FORM}
      class={`hands${choices.length > 6 ? ' many' : ''}`}
      method="get"
      action={`/exercises/${id}`}
      autocomplete="off"
      novalidate
    >
      {hiddenFields(sitting, screen).map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
      <h2 class="ask">{question.ask}</h2>
      <Wrong problem={problem} />
      <ol class="options">
        {choices.map((choice, at) => (
          <li>
            {timed ? null : (
              <input
                type="text"
                inputmode="numeric"
                name="hand"
                id={`hand-${at}`}
                value={hands[at] ?? ''}
                size={2}
                aria-label={`Hands for ${letterOf(at)}`}
              />
            )}
            <a href={exerciseLink(sitting, id, { ...screen, guess: choice.id })}>{capital(choice.words)}</a>
          </li>
        ))}
      </ol>
    </form>
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
              <span>{capital(choice.words)}</span>
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
