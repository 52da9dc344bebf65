import { Page } from '../page.tsx'
import { BeforeAfter } from './before-after.tsx'
import { GroupArticle } from './group-article.tsx'
import type { RunsPageProps } from './props.ts'
import { RunsForm } from './runs-form.tsx'
import { SideBySide } from './side-by-side.tsx'

/** Test runs on the product: the table in, what it shows out. */
export function RunsPage(props: RunsPageProps) {
  const { title, packed, answer, problems } = props
  return (
    <Page
      title={`${problems.length > 0 ? 'Error: ' : ''}Test runs${title ? `: ${title}` : ''}`}
      packed={packed}
      here="runs"
    >
      {problems.length > 0 ? <Problems problems={problems} /> : null}
      <h1>Test runs</h1>
      <p class="standfirst">
        {title
          ? `Pieces run on the real machine with the product of this brief (${title}), read with their confidence and held against the prediction.`
          : 'Pieces run on the real machine with the real product, read with their confidence.'}
        {packed ? (
          <>
            {' '}
            <a href={`/plan?b=${packed}`}>Plan a trial first</a>: it says how many pieces of which sizes show
            it.
          </>
        ) : null}
      </p>
      {answer ? <Read {...props} answer={answer} /> : <RunsForm {...props} />}
    </Page>
  )
}

const MOST_SHOWN = 50

function Problems({ problems }: Pick<RunsPageProps, 'problems'>) {
  return (
    <div class="summary-of-errors" role="alert" tabindex={-1}>
      <h2>There is a problem</h2>
      <p>
        {problems.length === 1 ? 'Nothing was read.' : `Nothing was read: ${problems.length} places to mend.`}
      </p>
      <ul>
        {problems.slice(0, MOST_SHOWN).map(({ path, message }) => (
          <li>
            <a href="#table">{path ? `${path}: ${message}` : message}</a>
          </li>
        ))}
      </ul>
    </div>
  )
}

function Read(props: RunsPageProps & { answer: NonNullable<RunsPageProps['answer']> }) {
  const { answer, shown, packed, typed, arrived, after } = props
  return (
    <>
      {arrived ? (
        <>
          <p class="small" data-arrived={arrived}>
            All entries arrived.
          </p>
          <script src="/assets/enter-runs.js" defer></script>
        </>
      ) : null}
      {answer.missing.length > 0 ? (
        <section aria-labelledby="missing">
          <h2 id="missing">What is missing</h2>
          <ul>
            {answer.missing.map((one) => (
              <li>{one}</li>
            ))}
          </ul>
        </section>
      ) : null}
      <section aria-labelledby="shown">
        <h2 id="shown">What the runs show</h2>
        {shown.length === 0 ? <p>No piece was run: the rows are clean packs only.</p> : null}
        {shown.map((one, at) => (
          <GroupArticle shown={one} at={at} />
        ))}
      </section>
      <SideBySide shown={shown} answer={answer} />
      {after ? <BeforeAfter {...after} /> : null}
      <section aria-labelledby="keep">
        <h2 id="keep">Keep it</h2>
        <p>Nothing is kept until you say so: the table is the record.</p>
        <div class="keep-acts">
          <Carried {...props} action="/kept/runs" words="Keep the runs here" />
          <Carried {...props} action="/runs/table.csv" words="Download the table (CSV)" />
          <Carried {...props} action="/runs/sheet" words="Trial sheet for both signatures" />
        </div>
      </section>
      <details>
        <summary>Read another table</summary>
        <RunsForm packed={packed} typed={typed} problems={[]} />
      </details>
    </>
  )
}

/** A button that sends the same table on. */
function Carried({
  packed,
  typed,
  action,
  words,
}: Pick<RunsPageProps, 'packed' | 'typed'> & { action: string; words: string }) {
  return (
    <form method="post" action={action}>
      {packed ? <input type="hidden" name="b" value={packed} /> : null}
      {action === '/kept/runs' ? <input type="hidden" name="what" value="runs" /> : null}
      {Object.entries(typed).map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
      <button type="submit" class="quiet">
        {words}
      </button>
    </form>
  )
}
