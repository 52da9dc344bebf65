import { CsvError, parse } from 'csv-parse/sync'
import { nearestWord } from '../../brief/nearest.ts'
import { type Problem, RUN_COLUMNS } from '../../contract/index.ts'
import { quoted, shortened } from '../../contract/quoted.ts'

export const MOST_ROWS = 100_000

/** Characters of one row, and columns of a table whose rows are looked at: more is no table of runs. */
const LONGEST_ROW = 20_000
const MOST_COLUMNS = 2 * RUN_COLUMNS.length

/** Cells of a table by column name, with the line each row stands on in the file. */
export interface Table {
  readonly rows: readonly { readonly line: number; readonly cells: Readonly<Record<string, string>> }[]
  readonly problems: readonly Problem[]
}

const NEEDED = ['equipment', 'material', 'runs', 'found'] as const

/** Whichever of semicolon, tab and comma the heading uses most, outside quotes. */
function separatorOf(text: string): string {
  const heading = text
    .slice(0, 4000)
    .split(/\r?\n/, 1)[0]!
    .replaceAll(/"[^"]*"/g, '')
  const uses = (mark: string) => heading.split(mark).length
  return [',', ';', '\t'].reduce((best, mark) => (uses(mark) > uses(best) ? mark : best))
}

/** A table of runs as text: comma, semicolon or tab; with or without byte order mark; columns in any order. */
export function readTable(text: string): Table {
  let lines: { record: string[]; info: { lines: number } }[]
  try {
    lines = parse(text, {
      bom: true,
      delimiter: separatorOf(text),
      info: true,
      max_record_size: LONGEST_ROW,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
    }) as unknown as typeof lines
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    return refused('', `the table cannot be read: ${csvTrouble(error)}`)
  }
  const [heading, ...body] = lines
  if (!heading) return refused('', 'the table is empty; its first line names the columns')
  const names = heading.record.map((name) => columnName(name))
  if (names.length > MOST_COLUMNS)
    return refused('heading', `at most ${MOST_COLUMNS} columns are read; ${names.length} were given`)
  const problems = headingProblems(names, heading.record)
  if (body.length > MOST_ROWS)
    problems.push({
      path: '',
      message: `at most ${MOST_ROWS} rows are read at once; ${body.length} were given`,
    })
  if (body.length === 0) problems.push({ path: '', message: 'the table has a heading and no rows' })
  if (body.length > MOST_ROWS) return { rows: [], problems }
  const filled = body.filter(({ record }) => record.some((cell) => cell !== ''))
  if (body.length > 0 && filled.length === 0)
    problems.push({ path: '', message: 'the table has a heading and only empty rows' })
  const rows = filled.map(({ record, info }) => {
    if (record.slice(names.length).some((cell) => cell !== ''))
      problems.push({
        path: `row ${info.lines}`,
        message: `${record.length} cells under ${names.length} columns; quote a cell that holds the separator, or a number with a decimal comma`,
      })
    return {
      line: info.lines,
      cells: Object.fromEntries(names.map((name, i) => [name, record[i] ?? ''])),
    }
  })
  return { rows, problems }
}

/** What the reader of tables has against one, in words; its own message repeats as much as it read. */
const csvTrouble = ({ code, lines, message }: CsvError & { lines?: number }): string =>
  code === 'CSV_MAX_RECORD_SIZE'
    ? `a row has more than ${LONGEST_ROW} characters; is a quote left open${lines ? ` near line ${lines}` : ''}?`
    : shortened(message, 200)

const refused = (path: string, message: string): Table => ({ rows: [], problems: [{ path, message }] })

function columnName(given: string): string {
  const same = RUN_COLUMNS.find((column) => column.toLowerCase() === given.toLowerCase())
  return same ?? given
}

function headingProblems(names: readonly string[], given: readonly string[]): Problem[] {
  const known: readonly string[] = RUN_COLUMNS
  const problems: Problem[] = names.flatMap((name, i) => {
    if (known.includes(name))
      return names.indexOf(name) < i
        ? [{ path: `column ${i + 1}`, message: `the column ${name} stands twice` }]
        : []
    const near = nearestWord(given[i]!, known)
    return [
      {
        path: `column ${i + 1}`,
        message: `unknown column ${quoted(given[i])}${near ? `; do you mean ${near}?` : ''}; known: ${known.join(', ')}`,
      },
    ]
  })
  for (const name of NEEDED)
    if (!names.includes(name)) problems.push({ path: 'heading', message: `the column ${name} is missing` })
  return problems
}
