import type { Question } from '../../src/exercises/exercise.ts'
import { type HandScore, readHands } from '../../src/exercises/hands.ts'
import { guessWords, type Judged, judge, rightWords } from '../../src/exercises/judge.ts'
import { Page } from '../page.tsx'
import { capital } from '../words/capital.ts'
import { handoutLink, listLink, recordLink, type Sitting } from './links.ts'
import { PicturePart } from './picture.tsx'
import { markedOf } from './pictures/marked.ts'
import { pictureId, Reasons, Situation } from './question.tsx'
import { RoomNav } from './room-nav.tsx'
import { Tally } from './tally.tsx'

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
  /** Said after the last answer of an exercise; null before. */
  readonly takeHome: string | null
  /** The hands of the sitting so far, this question among them. */
  readonly room: HandScore
  readonly previous: string
  readonly next: { readonly href: string; readonly words: string }
}

export const JUDGED_WORDS: Readonly<Record<Judged, string>> = {
  right: 'right',
  wrong: 'wrong',
  'too-low': 'too low',
  'too-high': 'too high',
  none: 'no prediction',
}

/** What came out, against the prediction, with its picture and reason. */
export function RevealPage(props: RevealPageProps) {
  return props.sitting.present ? <RoomScreen {...props} /> : <ForOneReader {...props} />
}

function ForOneReader(props: RevealPageProps) {
  const { sitting, id, title, question, number, of, guess, rests, takeHome, next } = props
  return (
    <Page title={title} packed={sitting.packed} here="exercises">
      <p class="over-title">What comes out{of > 1 ? `, ${number} of ${of}` : ''}</p>
      <h1>{title}</h1>
      <Situation question={question} />
      <p>
        <strong>{question.ask}</strong>
      </p>
      <Outcome {...props} />
      <Pictures id={id} question={question} number={number} guess={guess} room={false} />
      <section aria-labelledby="why">
        <h2 id="why">Why</h2>
        <Reasons question={question} rests={sitting.level === 'full' ? rests : null} />
        {takeHome === null ? null : <p class="take-home">{takeHome}</p>}
      </section>
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
          <a href={handoutLink(sitting, true, id)}>Print this one</a>
        </li>
        <li>
          <a href={recordLink(sitting)}>Record of this sitting</a>
        </li>
      </ul>
    </Page>
  )
}

/** In front of a room the answer fills one screen and the reason another, both with the picture. */
function RoomScreen(props: RevealPageProps) {
  const { sitting, id, title, question, number, of, guess, why, takeHome, previous, next, room } = props
  const counts = readHands(guess)
  const shown = (first: boolean) => (
    <Pictures id={id} question={question} number={number} guess={guess} room first={first} />
  )
  return (
    <Page title={title} packed={sitting.packed} here="exercises" present>
      <RoomNav previous={previous} next={next} list={listLink(sitting)} />
      <div class="room-head">
        <h1>{title}</h1>
        <p class="over-title">
          {why ? 'Why' : 'What comes out'}
          {of > 1 ? `, ${number} of ${of}` : ''}
        </p>
        <p class="asked">{question.facts.length === 0 ? question.situation : question.ask}</p>
      </div>
      {why ? null : <Outcome {...props} />}
      {why ? (
        <div class="room-why">
          {shown(true)}
          <div class="reasons">
            <Reasons question={question} rests={null} />
            {takeHome === null ? null : <p class="take-home">{takeHome}</p>}
          </div>
        </div>
      ) : counts ? (
        <div class="room-split">
          <Tally
            question={question}
            counts={counts}
            id={`${pictureId(id, number, 'scene')}-hands`}
            room={room}
          />
          {shown(true)}
        </div>
      ) : (
        <div class="room-whole">{shown(false)}</div>
      )}
    </Page>
  )
}

interface PicturesProps {
  readonly id: string
  readonly question: Question
  readonly number: number
  readonly guess: string | null
  readonly room: boolean
  /** The first alone, where something stands beside it. */
  readonly first?: boolean
}

function Pictures({ id, question, number, guess, room, first = false }: PicturesProps) {
  const shown = first ? question.pictures.slice(0, 1) : question.pictures
  return (
    <div class="pictures">
      {shown.map((picture, at) => (
        <PicturePart
          picture={picture}
          id={pictureId(id, number, at)}
          marked={markedOf(question, guess)}
          room={room}
        />
      ))}
    </div>
  )
}

function Outcome({ question, guess, sitting }: RevealPageProps) {
  const judged = judge(question, guess)
  const silent = judged === 'none' && sitting.present
  return (
    <div class="outcome">
      <p class="answer">
        <strong>{capital(rightWords(question))}.</strong> {capital(question.outcome)}
      </p>
      {silent ? null : (
        <p class="judged">
          {judged === 'none' ? (
            'No prediction was made.'
          ) : (
            <>
              {sitting.present ? 'The' : 'Your'} prediction, “{guessWords(question, guess)}”, was{' '}
              <strong>{JUDGED_WORDS[judged]}</strong>.
            </>
          )}
        </p>
      )}
    </div>
  )
}
