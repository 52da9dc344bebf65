import { Page } from '../page.tsx'
import { listLink, type Sitting } from './links.ts'

/** One line of the record; empty cells are to be filled in by hand. */
export interface RecordRow {
  readonly exercise: string
  readonly question: string
  readonly prediction: string
  readonly result: string
}

export interface RecordPageProps {
  readonly sitting: Sitting
  readonly rows: readonly RecordRow[]
  readonly name: string
  readonly trainer: string
  readonly right: number
  readonly predicted: number
  readonly today: string
  readonly print: boolean
  /** This page as a version for paper, with what was entered. */
  readonly printLink: string
}

/** Who predicted what on which day, and what came of it: to print and sign. */
export function RecordPage(props: RecordPageProps) {
  const { sitting, rows, name, trainer, right, predicted, today, print, printLink } = props
  return (
    <Page title="Assessment record" packed={sitting.packed} here="exercises" print={print}>
      <p class="over-title">Exercises</p>
      <h1>Assessment record</h1>
      {print ? null : <RecordForm {...props} />}
      <dl class="facts">
        <div>
          <dt>Name</dt>
          <dd>{name || <span class="rule" />}</dd>
        </div>
        <div>
          <dt>Trainer</dt>
          <dd>{trainer || <span class="rule" />}</dd>
        </div>
        <div>
          <dt>Date</dt>
          <dd>{today}</dd>
        </div>
      </dl>
      <section class="scroll" tabindex={0} aria-labelledby="record">
        <table class="record">
          <caption id="record">
            {predicted === 0
              ? 'To be filled in by hand: nothing was predicted in this sitting yet'
              : `${right} of ${predicted} predictions right`}
          </caption>
          <thead>
            <tr>
              <th scope="col">Exercise</th>
              <th scope="col">Question</th>
              <th scope="col">Prediction</th>
              <th scope="col">Result</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
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
      <p class="name-line">
        Signature <span class="rule" /> Trainer's signature <span class="rule" />
      </p>
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

function RecordForm({ sitting, name, trainer }: RecordPageProps) {
  const line = (id: string, label: string, value: string) => (
    <div class="field">
      <label for={id}>{label}</label>
      <input type="text" id={id} name={id} value={value} autocomplete={id === 'name' ? 'name' : 'off'} />
    </div>
  )
  return (
    <form class="carry" method="get" action="/exercises/record">
      {sitting.packed ? <input type="hidden" name="b" value={sitting.packed} /> : null}
      {sitting.level === 'plain' ? <input type="hidden" name="words" value="plain" /> : null}
      {sitting.done ? <input type="hidden" name="done" value={sitting.done} /> : null}
      <div class="fields">
        {line('name', 'Name', name)}
        {line('trainer', 'Trainer', trainer)}
      </div>
      <button type="submit" class="quiet">
        Write the names in
      </button>
    </form>
  )
}
