import { RUN_COLUMNS, type RunRow } from '../../contract/index.ts'
import { csvCell } from '../../intake/csv-cell.ts'

/** Runs as the text of a table that {@link readRunsTable} reads back the same. */
export function runsTable(rows: readonly RunRow[]): string {
  const lines = rows.map((row) => RUN_COLUMNS.map((column) => csvCell(row[column])).join(','))
  return `${[RUN_COLUMNS.join(','), ...lines].join('\n')}\n`
}
