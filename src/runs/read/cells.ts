import { type Problem, RUN_COLUMNS, type RunRow } from '../../contract/index.ts'
import { quoted } from '../../contract/quoted.ts'

const NUMBERS: ReadonlySet<string> = new Set([
  'order',
  'sizeMm',
  'lengthMm',
  'faceMm2',
  'runs',
  'found',
  'signal',
  'threshold',
])
const NUMBER = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i

/** Counts: in them 3.000 or 3,000 may be three thousand, or three. */
const WHOLE: ReadonlySet<string> = new Set(['order', 'runs', 'found'])
const THOUSANDS = /^[+-]?\d{1,3}([.,]\d{3})+$/

/** Cells of one row as the values of a run; an empty cell is a value not given. */
export function rowOfCells(
  cells: Readonly<Record<string, string>>,
  line: number,
): { row: Record<string, unknown>; problems: Problem[] } {
  const problems: Problem[] = []
  const row: Record<string, unknown> = {}
  for (const column of RUN_COLUMNS) {
    const cell = cells[column]
    if (cell === undefined || cell === '') continue
    if (!NUMBERS.has(column)) {
      row[column] = cell.replace(/^'(?=[=+\-@])/, '')
      continue
    }
    if (WHOLE.has(column) && THOUSANDS.test(cell))
      problems.push({
        path: `row ${line}, ${column}`,
        message: `${column} must be a whole number without marks between thousands; ${quoted(cell)} was given`,
      })
    else if (NUMBER.test(cell)) row[column] = Number(cell.replace(',', '.'))
    else
      problems.push({
        path: `row ${line}, ${column}`,
        message: `${column} must be a plain number, in the unit of its name; ${quoted(cell)} was given`,
      })
  }
  row.material ??= ''
  return { row, problems }
}

/** What a row means as a whole: found of runs, a size for a piece, none for a clean pack. */
export function rowProblems(row: Partial<RunRow>, path: (column: string) => string): Problem[] {
  const problems: Problem[] = []
  const say = (column: keyof RunRow, message: string) => problems.push({ path: path(column), message })
  const { found, runs } = row
  if (typeof found === 'number' && typeof runs === 'number' && runs > 0 && found > runs)
    say('found', `found cannot exceed runs; ${found} of ${runs} was given`)
  if (row.material === '') {
    for (const column of ['sizeMm', 'shape', 'lengthMm', 'faceMm2'] as const)
      if (row[column] !== undefined)
        say('material', `a row with a ${column} names its material; without a material it is a clean pack`)
    return problems
  }
  if (row.sizeMm === undefined) say('sizeMm', 'a piece has a size in mm; none was given')
  if (row.shape === 'wire' && row.lengthMm === undefined)
    say('lengthMm', 'a wire has a length in mm; none was given')
  if (row.shape === 'flake' && row.faceMm2 === undefined)
    say('faceMm2', 'a flake has the area of its face in mm²; none was given')
  return problems
}
