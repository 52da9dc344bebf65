import type { Problem } from '../../src/contract/brief.ts'
import { MOST_NOTE } from '../../src/exercises/lesson.ts'
import { ErrorSummary } from '../brief/error-summary.tsx'
import { Page } from '../page.tsx'
import {
  exerciseLink,
  handoutLink,
  hiddenSitting,
  lessonLink,
  listLink,
  recordLink,
  type Sitting,
} from './links.ts'

export interface LessonRow {
  readonly id: string
  readonly title: string
  readonly about: string
  readonly teaches: string
  readonly questions: number
  readonly timed: boolean
  readonly order: string
  readonly minutes: string
  readonly note: string
}

export interface LessonPageProps {
  readonly sitting: Sitting
  readonly rows: readonly LessonRow[]
  readonly problems: readonly Problem[]
  /** The exercise a lesson begins with; null where none is chosen. */
  readonly first: string | null
  readonly minutes: number
  /** A lesson of ninety minutes, as it stands in an address. */
  readonly proposed: string
}

/** A trainer's page: not shown to the room, so it says what each exercise teaches. */
export function LessonPage({ sitting, rows, problems, first, minutes, proposed }: LessonPageProps) {
  const chosen = rows.filter(({ order }) => order !== '')
  const wrong = new Set(problems.map(({ path }) => path))
  return (
    <Page
      title={problems.length > 0 ? 'Error: Plan a lesson' : 'Plan a lesson'}
      packed={sitting.packed}
      here="exercises"
    >
      {problems.length > 0 ? <ErrorSummary problems={problems} /> : null}
      <p class="over-title">For the trainer</p>
      <h1>Plan a lesson</h1>
      <p class="standfirst">
        Number the exercises you want in their order. Everything you enter is kept in the address: bookmark it
        or send it. This page says what each exercise teaches, so do not show it to the room.
      </p>
      {sitting.lesson ? (
        <section aria-labelledby="yours">
          <h2 id="yours">
            Your lesson: {chosen.length === 1 ? 'one exercise' : `${chosen.length} exercises`}
            {minutes > 0 ? `, ${minutes} minutes` : ''}
          </h2>
          <ul class="acts">
            {first ? (
              <li>
                <a href={exerciseLink({ ...sitting, present: true }, first)} class="onward">
                  Begin in front of a room
                </a>
              </li>
            ) : null}
            <li>
              <a href={handoutLink(sitting, false)}>Handout, questions only</a>
            </li>
            <li>
              <a href={handoutLink(sitting, true)}>Answer sheet with your notes</a>
            </li>
            <li>
              <a href={`${recordLink(sitting)}&class=1`}>Record for a class</a>
            </li>
            <li>
              <a href={listLink(sitting)}>All exercises</a>
            </li>
          </ul>
        </section>
      ) : (
        <p>
          <a href={lessonLink({ ...sitting, lesson: proposed })}>Start from a lesson of ninety minutes</a>, or
          choose below.
        </p>
      )}
      <form method="get" action="/exercises/lesson" class="lesson" novalidate>
        {hiddenSitting({ ...sitting, lesson: '' }).map(([name, value]) => (
          <input type="hidden" name={name} value={value} />
        ))}
        <section class="scroll" tabindex={0} aria-labelledby="lesson-rows">
          <table>
            <caption id="lesson-rows" class="unseen">
              Exercises with place, minutes and note
            </caption>
            <thead>
              <tr>
                <th scope="col">Place</th>
                <th scope="col">Exercise</th>
                <th scope="col">Minutes</th>
                <th scope="col">Note to yourself</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr>
                  <td data-head="Place">
                    <Box
                      id={`order-${row.id}`}
                      words={`Place of ${row.title}`}
                      value={row.order}
                      wrong={wrong}
                    />
                  </td>
                  <th scope="row">
                    <span class="lesson-title">{row.title}</span>
                    <p class="small">
                      {row.about} {row.questions === 1 ? 'One question' : `${row.questions} questions`}
                      {row.timed ? ', against the clock' : ''}.
                    </p>
                    <details>
                      <summary>What it teaches</summary>
                      <p class="small">{row.teaches}</p>
                    </details>
                  </th>
                  <td data-head="Minutes">
                    <Box
                      id={`minutes-${row.id}`}
                      words={`Minutes for ${row.title}`}
                      value={row.minutes}
                      wrong={wrong}
                    />
                  </td>
                  <td data-head="Note to yourself">
                    <Note id={`note-${row.id}`} words={`Note on ${row.title}`} value={row.note} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        <button type="submit">Keep this lesson</button>
      </form>
    </Page>
  )
}

interface BoxProps {
  readonly id: string
  readonly words: string
  readonly value: string
  readonly wrong: ReadonlySet<string>
}

function Box({ id, words, value, wrong }: BoxProps) {
  return (
    <input
      type="text"
      id={id}
      name={id}
      value={value}
      aria-label={words}
      autocomplete="off"
      inputmode="numeric"
      size={3}
      {...(wrong.has(id) ? { 'aria-invalid': 'true' as const } : {})}
    />
  )
}

const Note = ({ id, words, value }: Omit<BoxProps, 'wrong'>) => (
  <textarea id={id} name={id} rows={2} maxlength={MOST_NOTE} aria-label={words}>
    {value}
  </textarea>
)
