import type { Question } from '../../src/exercises/exercise.ts'
import { guessWords, judge, rightWords } from '../../src/exercises/judge.ts'
import { Page } from '../page.tsx'
import { exerciseLink, listLink, recordLink, type Sitting } from './links.ts'
import { JUDGED_WORDS } from './reveal-page.tsx'
import { RoomNav } from './room-nav.tsx'

interface Common {
  readonly sitting: Sitting
  readonly id: string
  readonly title: string
  readonly about: string
}

/** Before a timed exercise: the clock starts with a link, on the server. */
export function StartPage({ sitting, id, title, about, of }: Common & { of: number }) {
  const start = exerciseLink(sitting, id, { start: true })
  return (
    <Page title={title} packed={sitting.packed} here="exercises" present={sitting.present}>
      {sitting.present ? (
        <RoomNav previous={null} next={{ href: start, words: 'Start the clock' }} list={listLink(sitting)} />
      ) : null}
      <p class="over-title">Against the clock</p>
      <h1>{title}</h1>
      <p class="standfirst">{about}</p>
      <p class="before-start">
        {of} questions in a row; the answers come after the last one. The clock starts when you follow the
        link, and stops with your last answer.
      </p>
      {sitting.present ? (
        <p class="start-clock">
          <a href={start} class="onward">
            Start the clock
          </a>
        </p>
      ) : (
        <ul class="acts">
          <li>
            <a href={start} class="onward">
              Start the clock
            </a>
          </li>
          <li>
            <a href={listLink(sitting)}>All exercises</a>
          </li>
        </ul>
      )}
    </Page>
  )
}

/** Seconds as people say them: "1 min 20 s". */
export function clockWords(seconds: number): string {
  const whole = Math.round(seconds)
  const minutes = Math.floor(whole / 60)
  return minutes === 0 ? `${whole} s` : `${minutes} min ${whole % 60} s`
}

export interface SummaryPageProps extends Common {
  readonly questions: readonly Question[]
  readonly guesses: readonly string[]
  readonly seconds: number
  /** Packs that would have gone by in that time. */
  readonly packsGoneBy: number
  /** First screen of the answers one by one. */
  readonly answers: string
  readonly next: { readonly href: string; readonly words: string }
}

/** After a timed exercise: the time, what it would have cost, and every step. */
export function SummaryPage(props: SummaryPageProps) {
  const { sitting, title, questions, guesses, seconds, packsGoneBy, answers, next } = props
  const right = questions.filter((question, at) => judge(question, guesses[at] ?? null) === 'right').length
  return (
    <Page title={title} packed={sitting.packed} here="exercises" present={sitting.present}>
      {sitting.present ? (
        <RoomNav previous={null} next={{ href: answers, words: 'The answers' }} list={listLink(sitting)} />
      ) : null}
      <p class="over-title">The clock has stopped</p>
      <h1>{title}</h1>
      <p class="answer">
        {clockWords(seconds)}, {right} of {questions.length} right. On a running line{' '}
        {new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 }).format(packsGoneBy)} packs would have
        gone by.
      </p>
      <section class="scroll steps" tabindex={0} aria-labelledby="steps">
        <table>
          <caption id="steps">Step by step</caption>
          <thead>
            <tr>
              <th scope="col">Step</th>
              <th scope="col">You</th>
              <th scope="col">Right</th>
              {sitting.present ? null : <th scope="col">Why</th>}
            </tr>
          </thead>
          <tbody>
            {questions.map((question, at) => (
              <tr>
                <th scope="row">{question.ask}</th>
                <td>{stepWords(question, guesses[at] ?? null)}</td>
                <td>{rightWords(question)}</td>
                {sitting.present ? null : (
                  <td class="prose">
                    {question.outcome} {question.reason.join(' ')}
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {sitting.present ? null : (
        <ul class="acts">
          <li>
            <a href={next.href} class="onward">
              {next.words}
            </a>
          </li>
          <li>
            <a href={listLink(sitting)}>All exercises</a>
          </li>
          <li>
            <a href={recordLink(sitting)}>Record of this sitting</a>
          </li>
        </ul>
      )}
    </Page>
  )
}

/** "right", or what was answered and that it is not so. */
function stepWords(question: Question, guess: string | null): string {
  const judged = judge(question, guess)
  return judged === 'right' ? 'right' : `${JUDGED_WORDS[judged]}: ${guessWords(question, guess)}`
}
