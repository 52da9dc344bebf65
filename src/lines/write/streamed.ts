import type { LineProduct, LinesSummary } from '../../contract/index.ts'
import type { OpenedTable } from '../read-lines.ts'
import { csvHeading, csvRows } from './products-csv.ts'

/** The columns of a table's own that are carried along. */
export const carriedColumns = ({ frame }: Pick<OpenedTable, 'frame'>): string[] =>
  frame.columns.flatMap(({ path }) => (path.startsWith('#') ? [path] : []))

/** A table worked out as text, piece by piece: a JSON value a line, the summary last; or CSV, which has none. */
export async function* streamed(
  table: OpenedTable,
  coming: AsyncGenerator<LineProduct, LinesSummary>,
  as: 'json' | 'csv',
  seen: (product: LineProduct) => void = () => {},
): AsyncGenerator<string, LinesSummary> {
  const carried = carriedColumns(table)
  if (as === 'csv') yield csvHeading(carried)
  try {
    for (;;) {
      const step = await coming.next()
      if (step.done) {
        if (as === 'json') yield `${JSON.stringify({ summary: step.value })}\n`
        return step.value
      }
      seen(step.value)
      yield as === 'csv' ? csvRows(step.value, carried) : `${JSON.stringify({ product: step.value })}\n`
    }
  } finally {
    await coming.return(undefined as never)
  }
}
