import type { z } from 'zod'
import { nearestWord } from '../../brief/nearest.ts'
import { at, wordsOf } from '../../brief/problems.ts'
import { type Problem, RUN_COLUMNS, type RunRow, runRowSchema } from '../../contract/index.ts'
import { quoted, shortened } from '../../contract/quoted.ts'
import { MOST_PROBLEMS } from '../../intake/bounds.ts'
import { firstProblems } from '../../intake/problem-list.ts'
import { materials } from '../../reference/index.ts'
import { rowOfCells, rowProblems } from './cells.ts'
import { MOST_ROWS, readTable } from './table.ts'

/** Runs, or every problem with them: nothing is half-read. */
export type RunsRead = { ok: true; rows: RunRow[] } | { ok: false; problems: Problem[] }

export interface ReadOptions {
  /** Materials of the brief besides those of the program (a person's own). */
  readonly ownMaterials?: readonly string[]
}

/** Runs from the text of a table; problems name the line of the file and the column. */
export function readRunsTable(text: string, options: ReadOptions = {}): RunsRead {
  const { rows, problems } = readTable(text)
  const found: Problem[] = [...problems]
  const read = rows.map(({ line, cells }) => {
    const cellsRead = rowOfCells(cells, line)
    found.push(...cellsRead.problems)
    const bad = new Set(cellsRead.problems.map(({ path }) => path))
    return { row: cellsRead.row, where: (column: string) => `row ${line}, ${column}`, bad }
  })
  return checked(read, found, options)
}

/** Runs from JSON: an array of rows; problems name the row, counted from 0, and the key. */
export function readRunRows(given: unknown, options: ReadOptions = {}): RunsRead {
  if (!Array.isArray(given))
    return { ok: false, problems: [{ path: 'rows', message: 'rows must be a list of runs' }] }
  if (given.length === 0 || given.length > MOST_ROWS)
    return {
      ok: false,
      problems: [{ path: 'rows', message: `1 to ${MOST_ROWS} rows are read; ${given.length} were given` }],
    }
  const read = given.map((row: unknown, i) => ({
    row,
    where: (column: string) => (column === '' ? `rows.${i}` : `rows.${i}.${column}`),
    bad: new Set<string>(),
  }))
  return checked(read, [], options)
}

interface Given {
  readonly row: unknown
  readonly where: (column: string) => string
  /** Paths that have a problem already. */
  readonly bad: ReadonlySet<string>
}

function checked(given: readonly Given[], problems: Problem[], options: ReadOptions): RunsRead {
  const rows: RunRow[] = []
  const seen = new Map<string, string>()
  for (const { row, where, bad } of given) {
    if (problems.length > MOST_PROBLEMS) break
    const taken = new Set(bad)
    const say = (more: readonly Problem[]) => {
      for (const problem of more) {
        if (taken.has(problem.path)) continue
        taken.add(problem.path)
        problems.push(problem)
      }
    }
    const parsed = runRowSchema.safeParse(row)
    if (typeof row !== 'object' || row === null || Array.isArray(row)) {
      say([{ path: where(''), message: `a run is a group of values; ${quoted(row)} was given` }])
      continue
    }
    if (!parsed.success) say(parsed.error.issues.flatMap((issue) => issueProblems(issue, row, where)))
    // Checked on what was given, so that one wrong cell does not hide another.
    const loose = row as Partial<RunRow>
    say(rowProblems(loose, where))
    say(materialProblems(loose, where, options))
    if (!parsed.success) continue
    const same = sameAs(parsed.data)
    const before = seen.get(same)
    const message = `the same run stands in ${before}; tell them apart by pack, piece, shift or order, or delete one`
    if (before !== undefined) say([{ path: where('order'), message }])
    else seen.set(same, where('order').replace(/[,.]\s*order$/, ''))
    rows.push(parsed.data)
  }
  return problems.length > 0 ? { ok: false, problems: firstProblems(problems) } : { ok: true, rows }
}

type Issue = z.core.$ZodIssue

function issueProblems(issue: Issue, row: unknown, where: Given['where']): Problem[] {
  if (issue.code !== 'unrecognized_keys') {
    const message = wordsOf(issue, String(issue.path.at(-1) ?? 'the run'), at(row, issue.path))
    return [{ path: where(issue.path.join('.')), message }]
  }
  return issue.keys.slice(0, MOST_PROBLEMS).map((key) => {
    const near = nearestWord(key, RUN_COLUMNS)
    const meant = near ? `; do you mean ${near}?` : ''
    return { path: where(shortened(key)), message: `unknown key ${quoted(key)}${meant}` }
  })
}

function materialProblems(
  { material }: Partial<RunRow>,
  where: Given['where'],
  { ownMaterials = [] }: ReadOptions,
): Problem[] {
  if (
    typeof material !== 'string' ||
    material === '' ||
    materials.has(material) ||
    ownMaterials.includes(material)
  )
    return []
  const near = nearestWord(material, [...materials.keys(), ...ownMaterials])
  return [
    {
      path: where('material'),
      message: `unknown material ${quoted(material)}${near ? `; do you mean ${near}?` : ''}`,
    },
  ]
}

const TELLS_APART = RUN_COLUMNS.filter(
  (column) => !['runs', 'found', 'signal', 'threshold', 'note', 'operator'].includes(column),
)

/** Two rows that agree in all that tells runs apart are the same run twice. */
const sameAs = (row: RunRow): string => TELLS_APART.map((column) => row[column] ?? '').join('\u0001')
