import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { LinesFormPage } from '../../../../views/lines/lines-form-page.tsx'
import { LinesPage } from '../../../../views/lines/lines-page.tsx'
import { ProgressPage } from '../../../../views/lines/progress-page.tsx'
import type { LinesFormProps, ShownRow } from '../../../../views/lines/props.ts'
import { pieceShort } from '../../../../views/words/contaminant.ts'
import type { Problem } from '../../../contract/index.ts'
import { openTable } from '../../../lines/read-lines.ts'
import { bytesSource } from '../../../lines/table-source.ts'
import { csvHeading, csvRows } from '../../../lines/write/products-csv.ts'
import { asStream } from '../../api/lines.ts'
import { briefOfTrial } from '../../asked/asked-runs.ts'
import { postedForm } from '../../asked/form-answers.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { columnKey } from '../../lines/shown-product.ts'
import { MOST_SHOWN, type TableJob, type TableJobs } from '../../lines/table-jobs.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'

/** Products on one page of the table. */
const A_PAGE = 100
/** Contaminants that have a column of their own. */
const MOST_COLUMNS = 8

/** The empty page: a table in. */
export const linesFormPage = (c: Context) => showForm(c, c.req.query('b') ?? '', '', [])

function showForm(c: Context, b: string, typed: string, problems: readonly Problem[]) {
  const { packed, brief } = briefOfTrial(b)
  const props: LinesFormProps = { packed, title: brief?.title ?? null, typed, problems }
  return showPage(c, <LinesFormPage {...props} />, problems.length > 0 ? 422 : 200)
}

/** A table sent: its work begun and its page shown, or everything that is wrong with it as a whole. */
export const sendTable = (jobs: TableJobs) => async (c: Context) => {
  const form = await postedForm(c)
  const said = (name: string) => (typeof form[name] === 'string' ? form[name] : '')
  const { file } = form
  const bytes =
    file instanceof File && file.size > 0
      ? new Uint8Array(await file.arrayBuffer())
      : new TextEncoder().encode(said('table'))
  const { brief } = briefOfTrial(said('b'))
  const opened = await openTable(bytesSource(bytes), brief?.given ?? null)
  const problems = opened.ok ? tooMany(opened.table.rows) : opened.problems
  if (!opened.ok || problems.length > 0) return showForm(c, said('b'), said('table'), problems)
  const { id } = await jobs.start(opened.table)
  return c.redirect(`/lines/${id}`, 303)
}

const tooMany = (rows: number): Problem[] =>
  rows <= MOST_SHOWN
    ? []
    : [
        {
          path: '',
          message: `the pages take at most ${MOST_SHOWN} products at once; ${rows} were given. The command gritwise lines and POST /api/lines take any number`,
        },
      ]

/** How far a table is, or what came of it. */
export const tablePage = (jobs: TableJobs) => async (c: Context) => {
  const job = await jobOf(jobs, c)
  const { id, summary, done } = job
  if (!summary) return showPage(c, <ProgressPage packed={null} id={id} done={done.length} rows={job.rows} />)
  const line = summary.lines.find((one) => one.line === (c.req.query('line') ?? '')) ?? summary.lines[0]
  const columns = (line?.worst ?? [])
    .slice(0, MOST_COLUMNS)
    .map((one) => ({ key: columnKey(line!.line, one), words: pieceShort(one, materialNames) }))
  const sort = c.req.query('sort') ?? 'row'
  const good = sorted(
    done.filter(({ lines }) => lines.includes(line?.line ?? '')),
    sort,
  )
  const pages = Math.max(1, Math.ceil(good.length / A_PAGE))
  const page = Math.min(pages, Math.max(1, Math.trunc(Number(c.req.query('page') ?? 1)) || 1))
  return showPage(
    c,
    <LinesPage
      packed={null}
      id={id}
      summary={summary}
      names={materialNames}
      line={line?.line ?? ''}
      columns={columns}
      shown={good.slice((page - 1) * A_PAGE, page * A_PAGE)}
      bad={done.filter(({ problems }) => problems.length > 0).slice(0, A_PAGE)}
      sort={sort}
      page={page}
      pages={pages}
    />,
  )
}

/** By row or title from the first; by anything else the worst first, and what cannot be promised before all. */
function sorted(rows: readonly ShownRow[], by: string): ShownRow[] {
  const size = ({ sizes }: ShownRow) => {
    const at = sizes[by]
    return at ? (at.promisedMm ?? 1000 + (at.expectedMm ?? 1000)) : -1
  }
  const order: Readonly<Record<string, (a: ShownRow, b: ShownRow) => number>> = {
    row: (a, b) => a.row - b.row,
    title: (a, b) => a.title.localeCompare(b.title, 'en'),
    unmet: (a, b) => b.unmet - a.unmet,
  }
  return [...rows].sort(Object.hasOwn(order, by) ? order[by]! : (a, b) => size(b) - size(a))
}

/** The advice of one product, as its brief in an address. */
export const tableProduct = (jobs: TableJobs) => async (c: Context) => {
  const job = await jobOf(jobs, c)
  const product = await job.product(job.done.findIndex(({ row }) => row === Number(c.req.param('row'))))
  if (!product?.ok) throw new HTTPException(404, { message: 'No product of this table stands on that row.' })
  return c.redirect(`/advice?b=${packBrief(product.brief)}`, 302)
}

/** Every product as a table. */
export const tableFile = (jobs: TableJobs) => async (c: Context) => {
  const job = await jobOf(jobs, c)
  c.header('content-disposition', 'attachment; filename="products.csv"')
  return c.body(asStream(rowsOf(job)), 200, { 'content-type': 'text/csv; charset=utf-8' })
}

async function* rowsOf(job: TableJob): AsyncGenerator<string> {
  yield csvHeading(job.carried)
  for (let at = 0; at < job.done.length; at++) {
    const product = await job.product(at)
    if (product) yield csvRows(product, job.carried)
  }
}

async function jobOf(jobs: TableJobs, c: Context): Promise<TableJob> {
  const job = await jobs.get(c.req.param('id') ?? '')
  if (!job)
    throw new HTTPException(404, {
      message: 'This table is kept no longer. Send it again.',
    })
  if (job.failed !== '') throw new Error(job.failed)
  return job
}
