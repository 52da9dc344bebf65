import type { Question } from '../../src/exercises/exercise.ts'
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
}

export interface HandoutPageProps {
  readonly exercises: readonly PrintedExercise[]
  readonly answers: boolean
  /** Sources and models are named; left out in plain words. */
  readonly withRests: boolean
  readonly printedOn: string
}

/** Exercises on paper, with or without their answers. */
export function HandoutPage({ exercises, answers, withRests, printedOn }: HandoutPageProps) {
  return (
    <Page title={answers ? 'Handout with answers' : 'Handout'} packed={null} here="exercises" print>
      <p class="over-title">{answers ? 'Handout with answers' : 'Handout'}</p>
      <h1>Exercises</h1>
      {answers ? null : (
        <p class="name-line">
          Name <span class="rule" /> Date <span class="rule short" />
        </p>
      )}
      {exercises.map((exercise, at) => (
        <section class="handout" aria-labelledby={`handout-${exercise.id}`}>
          <h2 id={`handout-${exercise.id}`}>
            {at + 1}. {exercise.title}
          </h2>
          {exercise.questions.map((question, number) => (
            <HandoutQuestion
              exercise={exercise}
              question={question}
              number={number + 1}
              answers={answers}
              withRests={withRests}
            />
          ))}
        </section>
      ))}
      <p class="versions">Printed on {printedOn}.</p>
    </Page>
  )
}

interface QuestionProps {
  readonly exercise: PrintedExercise
  readonly question: Question
  readonly number: number
  readonly answers: boolean
  readonly withRests: boolean
}

function HandoutQuestion({ exercise, question, number, answers, withRests }: QuestionProps) {
  const { answer } = question
  return (
    <article class="handout-question">
      <Situation question={question} />
      <p>
        <strong>{question.ask}</strong>
      </p>
      {answer.kind === 'choice' ? (
        <ul class="boxes">
          {answer.choices.map(({ id, words }) => (
            <li>
              <span aria-hidden="true">{answers && id === answer.right ? '☒' : '☐'}</span> {words}
            </li>
          ))}
        </ul>
      ) : (
        <p>
          {answers ? rightWords(question) : <span class="rule" />}
          {answers ? '' : ` ${answer.unit}`}
        </p>
      )}
      {answers ? (
        <>
          <p class="answer">{question.outcome}</p>
          <Reasons question={question} rests={withRests ? exercise.rests : null} />
          {question.pictures.map((picture, at) => (
            <PicturePart
              picture={picture}
              id={pictureId(exercise.id, number, at)}
              marked={markedOf(question, null)}
              open
            />
          ))}
        </>
      ) : (
        <p class="name-line">
          Because <span class="rule" />
        </p>
      )}
    </article>
  )
}
