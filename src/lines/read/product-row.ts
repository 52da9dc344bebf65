import { type Answers, readForm } from '../../brief/form/form.ts'
import { fieldAt } from '../../brief/form/form-fields.ts'
import { parseBrief } from '../../brief/index.ts'
import type { Brief, RowProblem } from '../../contract/index.ts'
import { firstProblems } from '../../intake/problem-list.ts'
import type { Largest } from '../survey.ts'
import type { Column } from './heading.ts'

/** What every row of a table shares: its columns, and the brief each row differs from, written as a form. */
export interface TableFrame {
  readonly columns: readonly Column[]
  readonly base: Answers
}

export type ReadProduct =
  | { readonly ok: true; readonly brief: Brief }
  | { readonly ok: false; readonly problems: readonly RowProblem[] }

const MACHINE = /^(?:equipment\.|machines$|quoted\.)/

/** Cells of a row laid over the form of the base: an empty cell leaves what stands there. */
export function answersOf({ columns, base }: TableFrame, cells: readonly string[]): Answers {
  const answers: Record<string, string> = { ...base }
  for (const [at, { path, unit }] of columns.entries()) {
    const cell = cells[at] ?? ''
    if (cell === '' || path === '' || path.startsWith('#')) continue
    if (path === 'equipment') {
      for (const key of Object.keys(answers)) if (MACHINE.test(key)) delete answers[key]
      for (const id of cell.split(/[;,\s]+/).filter(Boolean)) answers[`equipment.${id}`] = 'on'
    } else
      answers[path] = unit !== '' && /^[\d.,\s+'’-]+$/.test(cell) ? `${cell} ${unit}` : spoken(path, cell)
  }
  return answers
}

const YES = ['true', '1', 'y']
const NO = ['false', '0', 'n']

/** Yes and no as spreadsheets write them. */
function spoken(path: string, cell: string): string {
  if (fieldAt(path)?.kind !== 'yes-no') return cell
  const word = cell.toLowerCase()
  return YES.includes(word) ? 'yes' : NO.includes(word) ? 'no' : word
}

/** What a row carries along: its own columns, by heading. */
export const carriedOf = (columns: readonly Column[], cells: readonly string[]): Record<string, string> =>
  Object.fromEntries(
    columns.flatMap(({ path }, at) =>
      path.startsWith('#') ? [[path, (cells[at] ?? '').slice(0, 200)]] : [],
    ),
  )

/** The brief of a row, each point told of the largest pack of its line; or what is wrong, by column. */
export function readProduct(
  frame: TableFrame,
  cells: readonly string[],
  largest: readonly Largest[],
): ReadProduct {
  const { columns } = frame
  const extra = cells.slice(columns.length).some((cell) => cell !== '')
  if (extra)
    return refused([
      {
        column: '',
        message: `${cells.length} cells under ${columns.length} columns; quote a cell that holds the separator, or a number with a decimal comma`,
      },
    ])
  const form = readForm(answersOf(frame, cells))
  const columnOf = (path: string) => columns.find((column) => column.path === path)?.heading ?? path
  const parsed = parseBrief(withLargest(form.input, largest))
  if (parsed.ok && form.problems.length === 0) return parsed
  // What could not be read is missing from the brief: it is said once, by its cell.
  const unread = new Set(form.problems.map(({ path }) => path))
  const others = parsed.ok
    ? []
    : parsed.problems
        .map(({ path, message }) => ({ path: form.formPath(path), message }))
        .filter(({ path }) => !unread.has(path))
  return refused(
    [...form.problems, ...others].map(({ path, message }) => ({ column: columnOf(path), message })),
  )
}

const refused = (problems: readonly RowProblem[]): ReadProduct => ({
  ok: false,
  problems: firstProblems(problems.map(({ column, message }) => ({ path: column, message }))).map(
    ({ path, message }) => ({ column: path, message }),
  ),
})

/** The points with the largest pack of their line written in, where that is larger and the row says nothing of it. */
function withLargest(input: unknown, largest: readonly Largest[]): unknown {
  const brief = input as { points?: Record<string, unknown>[] }
  if (!Array.isArray(brief.points)) return input
  const points = brief.points.map((point, at) => {
    const line = typeof point.line === 'string' ? point.line.trim() : ''
    const stage = point.stage ?? 'packed'
    const of = largest.find((one) => one.line === line && one.point === at && one.stage === stage)
    if (!of) return point
    const own = {
      heightMm: Number(point.heightMm),
      widthMm: Number(point.widthMm) * Number(point.lanes ?? 1),
    }
    return {
      ...(of.heightMm > own.heightMm ? { largestHeightMm: of.heightMm } : {}),
      ...(of.widthMm > own.widthMm ? { largestWidthMm: of.widthMm } : {}),
      ...point,
    }
  })
  return { ...brief, points }
}
