import { CsvError, parse } from 'csv-parse/sync'
import { LONGEST_LINE } from '../../intake/text-lines.ts'

/** Cells of one row with the line it begins on, or why it is none. */
export type TableRow =
  | { readonly row: number; readonly cells: readonly string[] }
  | { readonly row: number; readonly because: string }

/** Lines a quoted cell may run over; a quote left open costs its own line and no more. */
const MOST_LINES_OF_A_CELL = 8

/** Whichever of comma, semicolon and tab the heading uses most, outside quotes. */
export function separatorOf(heading: string): string {
  const bare = heading.replaceAll(/"[^"]*"/g, '')
  const uses = (mark: string) => bare.split(mark).length
  return [',', ';', '\t'].reduce((best, mark) => (uses(mark) > uses(best) ? mark : best))
}

/** Rows of a table, one after the other; the first is the heading. Empty lines are no rows, and no bad row stops another. */
export async function* tableRows(lines: AsyncIterable<string>): AsyncGenerator<TableRow> {
  let separator: string | null = null
  let row = 0
  let open: string[] = []
  for await (const line of lines) {
    open.push(line)
    separator ??= separatorOf(line)
    while (open.length > 0) {
      const text = open.join('\n')
      if (isOpen(text) && open.length < MOST_LINES_OF_A_CELL) break
      yield* rowOf(text, row + 1, separator, open.length)
      const used = isOpen(text) ? 1 : open.length
      row += used
      open = open.slice(used)
    }
  }
  for (; open.length > 0; open = open.slice(1)) yield* rowOf(open[0]!, ++row, separator ?? ',', open.length)
}

const isOpen = (text: string) => (text.match(/"/g)?.length ?? 0) % 2 === 1

function* rowOf(text: string, row: number, separator: string, lines: number): Generator<TableRow> {
  if (text.trim() === '') return
  if (text.length > LONGEST_LINE) {
    yield { row, because: `the row has more than ${LONGEST_LINE.toLocaleString('en')} characters` }
    return
  }
  if (isOpen(text)) {
    yield { row, because: 'a quotation mark is opened and not closed' }
    return
  }
  try {
    const records: string[][] = parse(text, { delimiter: separator, relax_column_count: true, trim: true })
    const cells = records[0] ?? []
    if (records.length === 1) {
      if (cells.some((cell) => cell !== '')) yield { row, cells }
      return
    }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    if (lines === 1) {
      yield { row, because: 'quotation marks stand inside a cell: write "" for each, and one pair around it' }
      return
    }
  }
  // Two quotes left open on different lines look like one cell over both: each line speaks for itself.
  for (const [at, line] of text.split('\n').entries()) yield* rowOf(line, row + at, separator, 1)
}
