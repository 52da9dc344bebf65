import type { Picture, Question } from '../../src/exercises/exercise.ts'
import { rightWords } from '../../src/exercises/judge.ts'
import { Page } from '../page.tsx'
import { PicturePart } from './picture.tsx'
import { markedOf } from './pictures/marked.ts'
import { pictureId, Reasons, Situation } from './question.tsx'

export interface PrintedExercise {
  readonly id: string
  readonly title: string
  readonly rests: string
  readonly questions: readonly Question[]
  /** What its trainer planned; null and empty where nothing was. */
  readonly minutes: number | null
  readonly note: string
}

export interface HandoutPageProps {
  readonly exercises: readonly PrintedExercise[]
  readonly answers: boolean
  /** Pictures beside the answers: for one exercise; a sheet of all goes without. */
  readonly pictures: boolean
  /** Sources and models are named; left out in plain words. */
  readonly withRests: boolean
  readonly printedOn: string
}

/** Exercises on paper: a handout to fill in, or the answers to it. */
export function HandoutPage({ exercises, answers, pictures, withRests, printedOn }: HandoutPageProps) {
  const title = answers ? 'Answer sheet' : 'Handout'
  return (
    <Page title={title} packed={null} here="exercises" print>
      <p class="over-title">{title}</p>
      <h1>Exercises</h1>
      {answers ? null : (
        <p class="name-line">
          Name <span class="rule" /> Date <span class="rule short" />
        </p>
      )}
      <div class={pictures ? '' : 'sheet-columns'}>
        {exercises.map((exercise, at) => (
          <section class="handout" aria-labelledby={`handout-${exercise.id}`}>
            <h2 id={`handout-${exercise.id}`}>
              {at + 1}. {exercise.title}
              {answers && exercise.minutes !== null ? `, ${exercise.minutes} min` : ''}
            </h2>
            {answers && exercise.note ? <p class="trainer-note">Note: {exercise.note}</p> : null}
            {exercise.questions.map((question, number) => {
              const which = exercise.questions.length > 1 ? `${at + 1}.${number + 1}` : ''
              return answers ? (
                <AnswerPart
                  exercise={exercise}
                  question={question}
                  number={number + 1}
                  which={which}
                  pictures={pictures}
                  rests={withRests && number === exercise.questions.length - 1 ? exercise.rests : null}
                />
              ) : (
                <QuestionPart
                  question={question}
                  which={which}
                  id={pictureId(exercise.id, number + 1, 'scene')}
                />
              )
            })}
          </section>
        ))}
      </div>
      <p class="versions ends-paper">
        Printed on {printedOn}. A prediction and no approval: a test on the real product decides.
      </p>
    </Page>
  )
}

/** A scene that shows what the choices speak of; one that only shows a pack is left to the screen. */
const tellsPlaces = (scene: Picture) => scene.kind !== 'opening' || scene.places.length > 0

/** A question to fill in. */
function QuestionPart({ question, which, id }: { question: Question; which: string; id: string }) {
  const { answer, scene } = question
  return (
    <article class="handout-question">
      <Situation question={question} />
      {scene && tellsPlaces(scene) ? <PicturePart picture={scene} id={id} /> : null}
      <p>
        <strong>
          {which} {question.ask}
        </strong>
      </p>
      {answer.kind === 'choice' ? (
        <ul class="boxes">
          {answer.choices.map(({ words }) => (
            <li>
              <span aria-hidden="true">☐</span> {words}
            </li>
          ))}
        </ul>
      ) : (
        <p>
          <span class="rule short" /> {answer.unit}
        </p>
      )}
      <p class="name-line">
        Because <span class="rule" />
      </p>
    </article>
  )
}

interface AnswerProps {
  readonly exercise: PrintedExercise
  readonly question: Question
  readonly number: number
  readonly which: string
  readonly pictures: boolean
  readonly rests: string | null
}

/** Its answer and reason; the situation stands on the handout, unless this is printed alone or the question is nothing without it. */
function AnswerPart({ exercise, question, number, which, pictures, rests }: AnswerProps) {
  return (
    <article class="handout-question">
      {pictures || question.facts.length === 0 ? <Situation question={question} /> : null}
      <p>
        <strong>
          {which} {question.ask}
        </strong>
      </p>
      <p class="answer">
        <span aria-hidden="true">☒</span> <strong>{rightWords(question)}.</strong> {question.outcome}
      </p>
      <Reasons question={question} rests={rests} />
      {pictures
        ? question.pictures.map((picture, at) => (
            <PicturePart
              picture={picture}
              id={pictureId(exercise.id, number, at)}
              marked={markedOf(question, null)}
              open
            />
          ))
        : null}
    </article>
  )
}
