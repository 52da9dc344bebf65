import type { HandScore } from '../../src/exercises/hands.ts'
import type { Score } from '../../src/exercises/score.ts'
import { Page } from '../page.tsx'
import { ClassTable } from './class-table.tsx'
import { hiddenSitting, listLink, type Sitting } from './links.ts'
import { scoreWords } from './tally.tsx'

/** One exercise of the record; to be filled in by hand where nothing was predicted. */
export interface ScoreRow {
  readonly exercise: string
  readonly teaches: string
  readonly score: Score
  /** Hands of a room, apart from what one person predicted. */
  readonly hands: HandScore
}

export interface QuestionRow {
  readonly exercise: string
  readonly question: string
  readonly prediction: string
  readonly result: string
}

export interface RecordProps {
  readonly sitting: Sitting
  readonly scores: readonly ScoreRow[]
  readonly questions: readonly QuestionRow[]
  readonly total: Score
  /** Whether the total reaches the pass mark; null where nothing was predicted. */
  readonly reached: boolean | null
  readonly room: HandScore
  readonly name: string
  readonly trainer: string
  /** Pass mark, percent. */
  readonly pass: number
  /** Months until training is due again. */
  readonly months: number
  /** The names of a class. */
  readonly people: readonly string[]
  readonly forClass: boolean
  readonly today: string
  readonly again: string
  readonly print: boolean
  /** This page as a version for paper, with what was entered. */
  readonly printLink: string
}

/** Who predicted what on which day, what came of it, and when to train again: to print and sign. */
export function RecordPage(props: RecordProps) {
  const { sitting, name, trainer, forClass, today, again, print, printLink, pass } = props
  const title = forClass ? 'Assessment record of a class' : 'Assessment record'
  return (
    <Page title={title} packed={sitting.packed} here="exercises" print={print}>
      <p class="over-title">Exercises</p>
      <h1>{title}</h1>
      {print ? null : <RecordForm {...props} />}
      <dl class="facts">
        {forClass ? null : <Fact words="Name" value={name} />}
        <Fact words="Trainer" value={trainer} />
        <Fact words="Date" value={today} />
        <Fact words="Pass mark" value={`${pass} %`} />
        <Fact words="To be trained again by" value={again} />
      </dl>
      {forClass ? <ClassTable {...props} /> : <OneRecord {...props} />}
      {print ? null : (
        <ul class="acts">
          <li>
            <a href={printLink}>Print</a>
          </li>
          <li>
            <a href={listLink(sitting)}>All exercises</a>
          </li>
        </ul>
      )}
    </Page>
  )
}

const Fact = ({ words, value }: { words: string; value: string }) => (
  <div>
    <dt>{words}</dt>
    <dd>{value || <span class="rule" />}</dd>
  </div>
)

function OneRecord({ scores, questions, total, reached, room, name, today, pass }: RecordProps) {
  return (
    <>
      <section class="scroll" tabindex={0} aria-labelledby="record">
        <table class={reached === null ? 'record' : 'record filled'}>
          <caption id="record">
            {reached === null
              ? 'To be filled in by hand: nothing was predicted in this sitting yet'
              : `${total.right} of ${total.made} predictions right: the pass mark of ${pass} % is ${reached ? 'reached' : 'not reached'}`}
          </caption>
          <thead>
            <tr>
              <th scope="col">Exercise</th>
              <th scope="col">Right</th>
              <th scope="col">Score</th>
            </tr>
          </thead>
          <tbody>
            {scores.map(({ exercise, score, hands }) => (
              <tr>
                <th scope="row">{exercise}</th>
                <td>
                  {score.made > 0 ? `${score.right} of ${score.made}` : ''}
                  {hands.all > 0 ? ` hands: ${scoreWords(hands)}` : ''}
                </td>
                <td>{score.made > 0 ? `${Math.round((100 * score.right) / score.made)} %` : ''}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {room.all > 0 ? (
        <p>
          Hands of the room: {scoreWords(room)} right. They say nothing of one person and are not counted.
        </p>
      ) : null}
      {questions.length > 0 ? <QuestionTable questions={questions} /> : null}
      <section class="competence" aria-labelledby="competence">
        <h2 id="competence">Statement of competence</h2>
        <p>
          {name || <span class="rule" />} answered the exercises above on {today}. The trainer has talked
          through what was wrong, and is satisfied that this person can say why:
        </p>
        <ul class="boxes">
          {scores.map(({ teaches }) => (
            <li>
              <span aria-hidden="true">☐</span> {teaches}
            </li>
          ))}
        </ul>
        <p>
          Exercises show understanding. Running the check, acting on a failed one and opening rejects are seen
          at the line: by <span class="rule" /> on <span class="rule short" />
        </p>
        <p class="name-line">
          Signature <span class="rule" /> Trainer's signature <span class="rule" />
        </p>
      </section>
    </>
  )
}

function QuestionTable({ questions }: { questions: readonly QuestionRow[] }) {
  return (
    <section class="scroll" tabindex={0} aria-labelledby="questions">
      <table class="record filled">
        <caption id="questions">Question by question</caption>
        <thead>
          <tr>
            <th scope="col">Exercise</th>
            <th scope="col">Question</th>
            <th scope="col">Prediction</th>
            <th scope="col">Result</th>
          </tr>
        </thead>
        <tbody>
          {questions.map((row) => (
            <tr>
              <th scope="row">{row.exercise}</th>
              <td>{row.question}</td>
              <td>{row.prediction}</td>
              <td>{row.result}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function RecordForm({ sitting, name, trainer, pass, months, people, forClass }: RecordProps) {
  const line = (id: string, label: string, value: string) => (
    <div class="field">
      <label for={id}>{label}</label>
      <input type="text" id={id} name={id} value={value} autocomplete={id === 'name' ? 'name' : 'off'} />
    </div>
  )
  return (
    <form class="carry" method="get" action="/exercises/record">
      {hiddenSitting(sitting).map(([field, value]) => (
        <input type="hidden" name={field} value={value} />
      ))}
      <div class="fields">
        {forClass ? null : line('name', 'Name', name)}
        {line('trainer', 'Trainer', trainer)}
        {line('pass', 'Pass mark, %', String(pass))}
        {line('months', 'Train again after, months', String(months))}
      </div>
      {forClass ? (
        <div class="field">
          <label for="people">Names, one on each line</label>
          <textarea id="people" name="people" rows={6}>
            {people.join('\n')}
          </textarea>
        </div>
      ) : null}
      <label class="prediction-choice">
        <input type="checkbox" name="class" value="1" {...(forClass ? { checked: true } : {})} />
        <span>For a whole class</span>
      </label>
      <button type="submit" class="quiet">
        Write the names in
      </button>
    </form>
  )
}
