import { writeForm } from '../brief/form/form-writing.ts'
import type { BriefInput, LineProduct, LinesSummary, Problem } from '../contract/index.ts'
import { textLines } from '../intake/text-lines.ts'
import type { Batch, Worked } from './advise-row.ts'
import { placeOf } from './advise-row.ts'
import { grouped, inOrder } from './in-order.ts'
import { readHeading } from './read/heading.ts'
import type { TableFrame } from './read/product-row.ts'
import { type TableRow, tableRows } from './read/records.ts'
import { type Survey, survey } from './survey.ts'
import { LinesTogether } from './together/together.ts'

/** A table that can be read more than once: what it is sized for is known before the first product is worked out. */
export type TableSource = () => AsyncIterable<Uint8Array>

/** How batches are worked out, and how many at once: here, in workers, or elsewhere. */
export interface Workforce {
  readonly atOnce: number
  readonly work: (batch: Batch) => Promise<Worked>
}

export interface OpenedTable extends Survey {
  readonly frame: TableFrame
  readonly source: TableSource
}

/** Rows of one batch: large enough to be worth the way, small enough that a page waits for none. */
export const BATCH = 4

/** Reads the heading and surveys the rows; works nothing out. Problems are those of the table as a whole. */
export async function openTable(
  source: TableSource,
  base: BriefInput | null,
): Promise<{ ok: true; table: OpenedTable } | { ok: false; problems: readonly Problem[] }> {
  const heading = await headingOf(source)
  if (!heading.ok) return heading
  const frame = { columns: heading.columns, base: base ? writeForm(base) : {} }
  const surveyed = await survey(frame, body(source))
  if (surveyed.rows === 0)
    return { ok: false, problems: [{ path: '', message: 'the table has a heading and no rows' }] }
  return { ok: true, table: { ...surveyed, frame, source } }
}

async function headingOf(source: TableSource) {
  for await (const row of tableRows(textLines(source())))
    return 'cells' in row
      ? readHeading(row.cells)
      : { ok: false as const, problems: [{ path: 'heading', message: row.because }] }
  return {
    ok: false as const,
    problems: [{ path: '', message: 'the table is empty; its first line names the columns' }],
  }
}

async function* body(source: TableSource): AsyncGenerator<TableRow> {
  let heading = true
  for await (const row of tableRows(textLines(source()))) {
    if (!heading) yield row
    heading = false
  }
}

/** Rows as they are worked on, in order. */
export const batchesOf = ({ source }: OpenedTable): AsyncGenerator<TableRow[]> => grouped(body(source), BATCH)

/** The products of a table one after the other, in the order of its rows; at the end, what they have in common. */
export function products(table: OpenedTable, { atOnce, work }: Workforce) {
  const { frame, largest } = table
  return gathered(
    largest,
    inOrder(batchesOf(table), atOnce, (rows) => workedOut({ frame, largest, rows }, work)),
  )
}

/** Batches that were worked out, in order, as products; at the end, what they have in common. */
export async function* gathered(
  largest: Batch['largest'],
  worked: AsyncIterable<Worked>,
): AsyncGenerator<LineProduct, LinesSummary> {
  const together = new LinesTogether(largest)
  for await (const { products: done, versions } of worked) {
    together.versions ??= versions
    for (const product of done) {
      together.note(product)
      yield product
    }
  }
  return together.summary
}

/** A batch; where it fails as a whole, row by row, so that the one that fails is named and the others stand. */
export async function workedOut(batch: Batch, work: Workforce['work']): Promise<Worked> {
  try {
    return await work(batch)
  } catch (error) {
    if (isStopped(error)) throw error
    if (batch.rows.length > 1) {
      const alone: Worked[] = []
      for (const row of batch.rows) alone.push(await workedOut({ ...batch, rows: [row] }, work))
      return {
        products: alone.flatMap(({ products: one }) => one),
        versions: alone.find(({ versions }) => versions)?.versions ?? null,
      }
    }
    return refusedBatch(batch, (error as Error).message)
  }
}

/** A batch that came to nothing, row by row. */
export function refusedBatch({ frame, rows }: Batch, because: string): Worked {
  const problems = [{ column: '', message: `could not be worked out: ${because}` }]
  const products = rows.map((row) => ({ ...placeOf(frame.columns, row), ok: false as const, problems }))
  return { products, versions: null }
}

/** Told to stop: no fault of a row. */
const isStopped = (error: unknown) => (error as Error).name === 'AbortError'
