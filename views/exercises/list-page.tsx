import type { HandScore } from '../../src/exercises/hands.ts'
import type { DemoLink } from '../brief/demo-list.tsx'
import { Page } from '../page.tsx'
import { exerciseLink, handoutLink, lessonLink, listLink, recordLink, type Sitting } from './links.ts'
import { scoreWords } from './tally.tsx'

export interface ListedExercise {
  readonly id: string
  readonly title: string
  readonly about: string
  readonly questions: number
  readonly timed: boolean
  readonly done: boolean
}

export interface ListPageProps {
  readonly sitting: Sitting
  /** The trainer's choice, in its order; empty where there is none. */
  readonly lesson: readonly ListedExercise[]
  readonly standard: readonly ListedExercise[]
  /** Made of the brief in hand; empty where there is none. */
  readonly own: readonly ListedExercise[]
  readonly briefTitle: string | null
  /** Hands counted in this sitting. */
  readonly room: HandScore
  readonly demos: readonly DemoLink[]
}

/** All exercises, the brief's own first. */
export function ListPage(props: ListPageProps) {
  const { sitting, lesson, standard, own, briefTitle, demos, room } = props
  const plain = sitting.level === 'plain'
  return (
    <Page title="Exercises" packed={sitting.packed} here="exercises" present={sitting.present}>
      <h1>Exercises</h1>
      {sitting.present ? null : (
        <p class="standfirst">
          Predict first, then see what comes out and why. Nothing here is written down beforehand: every
          answer is worked out by the same calculation as the advice.
        </p>
      )}
      <ul class="acts">
        <li>
          <a href={listLink({ ...sitting, present: !sitting.present })}>
            {sitting.present ? 'For one reader' : 'In front of a room'}
          </a>
        </li>
        <li>
          <a href={listLink({ ...sitting, level: plain ? 'full' : 'plain' })}>
            {plain ? 'In full, with the statistics' : 'In plain words, without statistics'}
          </a>
        </li>
        {sitting.present ? null : (
          <>
            <li>
              <a href={lessonLink(sitting)}>Plan a lesson</a>
            </li>
            <li>
              <a href={handoutLink(sitting, false)}>Handout, questions only</a>
            </li>
            <li>
              <a href={handoutLink(sitting, true)}>Answer sheet</a>
            </li>
          </>
        )}
        <li>
          <a href={recordLink(sitting)}>Record of this sitting</a>
        </li>
      </ul>
      <WithPictures sitting={sitting} demo={demos[0]?.packed ?? ''} />
      {room.all > 0 ? <p>The room so far: {scoreWords(room)} hands right.</p> : null}
      {lesson.length > 0 ? (
        <section aria-labelledby="lesson">
          <h2 id="lesson">This lesson</h2>
          <ExerciseList sitting={sitting} exercises={lesson} />
        </section>
      ) : null}
      {sitting.present && lesson.length > 0 ? null : own.length > 0 ? (
        <section aria-labelledby="own">
          <h2 id="own">From your brief: {briefTitle}</h2>
          <ExerciseList sitting={sitting} exercises={own} />
        </section>
      ) : null}
      {sitting.present && lesson.length > 0 ? null : (
        <section aria-labelledby="standard">
          <h2 id="standard">On practice packs</h2>
          <ExerciseList sitting={sitting} exercises={standard} />
        </section>
      )}
      {own.length === 0 && !sitting.present ? (
        <section aria-labelledby="make">
          <h2 id="make">From a brief of your own</h2>
          <p>
            Any brief makes its own exercises: fill in the <a href="/brief">brief</a> and come back from
            there, or take an example.
          </p>
          <ul>
            {demos.map(({ title, packed }) => (
              <li>
                <a href={listLink({ ...sitting, packed })}>{title}</a>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
    </Page>
  )
}

/** What is played with simulated pictures: of the brief in hand, or of an example. */
function WithPictures({ sitting, demo }: { sitting: Sitting; demo: string }) {
  const query = `b=${sitting.packed ?? demo}${sitting.present ? '&present=1' : ''}`
  return (
    <section aria-labelledby="pictures">
      <h2 id="pictures">With pictures</h2>
      <ul class="exercise-list">
        <li>
          <a href={`/exercises/spot?${query}`}>Spot the piece</a>
          <p>Ten packs: people against the machine, false marks paid for by both.</p>
        </li>
        <li>
          <a href={`/exercises/dial?${query}`}>Move one thing</a>
          <p>X-ray: depth, speed, grain, voltage, threshold. Metal detector: angle, place, opening.</p>
        </li>
      </ul>
    </section>
  )
}

function ExerciseList({ sitting, exercises }: { sitting: Sitting; exercises: readonly ListedExercise[] }) {
  return (
    <ol class="exercise-list">
      {exercises.map(({ id, title, about, questions, timed, done }) => (
        <li>
          <a href={exerciseLink(sitting, id)}>{title}</a>
          {sitting.present ? (
            <span class="small">{done ? ' done' : ''}</span>
          ) : (
            <p>
              {about}{' '}
              <span class="small">
                {questions === 1 ? 'One question' : `${questions} questions`}
                {timed ? ', against the clock' : ''}
                {done ? '; done in this sitting' : ''}.
              </span>
            </p>
          )}
        </li>
      ))}
    </ol>
  )
}
