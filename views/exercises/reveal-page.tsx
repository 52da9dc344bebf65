import type { Question } from '../../src/exercises/exercise.ts'
import { guessWords, type Judged, judge, rightWords } from '../../src/exercises/judge.ts'
import { Page } from '../page.tsx'
import { handoutLink, listLink, recordLink, type Sitting } from './links.ts'
import { PicturePart } from './picture.tsx'
import { pictureId, Reasons, Situation } from './question.tsx'
import { RoomNav } from './room-nav.tsx'

export interface RevealPageProps {
  readonly sitting: Sitting
  readonly id: string
  readonly title: string
  readonly question: Question
  readonly number: number
  readonly of: number
  readonly guess: string | null
  readonly rests: string
  /** For a room: the reason alone, after the answer alone. */
  readonly why: boolean
  readonly previous: string
  readonly next: { readonly href: string; readonly words: string }
}

export const JUDGED_WORDS: Readonly<Record<Judged, string>> = {
  right: 'right',
  wrong: 'not so',
  'too-low': 'too low',
  'too-high': 'too high',
  none: 'no prediction',
}

/** What came out, against the prediction, with its picture and reason. */
export function RevealPage(props: RevealPageProps) {
  const { sitting, id, title, question, number, of, rests, why, previous, next } = props
  const { present } = sitting
  const showsAnswer = !present || !why
  const showsReason = !present || why
  return (
    <Page title={title} packed={sitting.packed} here="exercises" present={present}>
      {present ? <RoomNav previous={previous} next={next} list={listLink(sitting)} /> : null}
      <p class="over-title">
        {present && why ? 'Why' : 'What comes out'}
        {of > 1 ? `, ${number} of ${of}` : ''}
      </p>
      <h1>{title}</h1>
      {present ? null : (
        <>
          <Situation question={question} />
          <p>
            <strong>{question.ask}</strong>
          </p>
        </>
      )}
      {showsAnswer ? <Outcome {...props} /> : null}
      {showsAnswer ? (
        <div class="pictures">
          {question.pictures.map((picture, at) => (
            <PicturePart picture={picture} id={pictureId(id, number, at)} withoutNumbers={present} />
          ))}
        </div>
      ) : null}
      {showsReason ? (
        present ? (
          <Reasons question={question} rests={null} />
        ) : (
          <section aria-labelledby="why">
            <h2 id="why">Why</h2>
            <Reasons question={question} rests={sitting.level === 'full' ? rests : null} />
          </section>
        )
      ) : null}
      {present ? null : (
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
            <a href={handoutLink(sitting, true, id)}>This one for paper</a>
          </li>
          <li>
            <a href={recordLink(sitting)}>Record of this sitting</a>
          </li>
        </ul>
      )}
    </Page>
  )
}

function Outcome({ question, guess, sitting }: RevealPageProps) {
  const judged = judge(question, guess)
  const silent = judged === 'none' && sitting.present
  return (
    <div class="outcome">
      <p class="answer">
        {question.answer.kind === 'choice' ? <strong>{rightWords(question)}. </strong> : null}
        {question.outcome}
      </p>
      {silent ? null : (
        <p class="judged">
          {judged === 'none' ? (
            'No prediction was made.'
          ) : (
            <>
              Your prediction: {guessWords(question, guess)}. That is <strong>{JUDGED_WORDS[judged]}</strong>.
            </>
          )}
        </p>
      )}
    </div>
  )
}
