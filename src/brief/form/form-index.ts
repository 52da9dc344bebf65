import type { Answers } from './form.ts'
import { fieldAt } from './form-fields.ts'

/** A list that came with more rows than a brief takes. */
export interface Overfull {
  readonly list: string
  readonly most: number
  readonly sent: number
}

/** What a form holds, found in one pass over its answers. */
export interface FormIndex {
  /** Row numbers by the path of their list, in order, no more than a brief takes. */
  readonly rows: ReadonlyMap<string, readonly number[]>
  /** Paths with an answer somewhere beneath them. */
  readonly filled: ReadonlySet<string>
  readonly overfull: readonly Overfull[]
}

/** No path of the form is longer; what is, is no answer of it. */
const LONGEST_PATH = 120
const ROW = /^(?:0|[1-9]\d{0,5})$/
const known = new WeakMap<Answers, FormIndex>()

/** The index of a form; worked out once for the same answers. */
export function formIndex(answers: Answers): FormIndex {
  const found = known.get(answers) ?? index(answers)
  known.set(answers, found)
  return found
}

/** Row numbers present under a list's path, in order. */
export const rowsOf = (answers: Answers, list: string): readonly number[] =>
  formIndex(answers).rows.get(list) ?? []

/** Rows a list of the form may have at most; undefined for a path that is no list. */
export function mostRows(list: string): number | undefined {
  const field = fieldAt(list)
  return field?.kind === 'rows' ? field.most : undefined
}

function index(answers: Answers): FormIndex {
  const sent = new Map<string, Set<number>>()
  const filled = new Set<string>()
  for (const [path, value] of Object.entries(answers)) {
    if (path.length > LONGEST_PATH) continue
    const isRow = noteRows(path, sent)
    if (isRow || value.trim() === '') continue
    for (let dot = path.indexOf('.'); dot >= 0; dot = path.indexOf('.', dot + 1))
      filled.add(path.slice(0, dot))
  }
  const rows = new Map<string, number[]>()
  const overfull: Overfull[] = []
  for (const [list, numbers] of sent) {
    const most = mostRows(list)
    if (most === undefined) continue
    const sorted = [...numbers].sort((a, b) => a - b)
    if (sorted.length > most) overfull.push({ list, most, sent: sorted.length })
    rows.set(list, sorted.slice(0, most))
  }
  return { rows, filled, overfull: overfull.filter(({ list }) => isKept(list, rows)) }
}

/** Notes the rows a path runs through; true where the path is that of a row itself. */
function noteRows(path: string, sent: Map<string, Set<number>>): boolean {
  let at = ''
  let isRow = false
  for (const step of path.split('.')) {
    isRow = ROW.test(step)
    if (isRow) {
      const rows = sent.get(at) ?? new Set()
      sent.set(at, rows.add(Number(step)))
    }
    at = at === '' ? step : `${at}.${step}`
  }
  return isRow
}

/** Whether every row a path runs through is one that is read. */
export function isKept(path: string, rows: FormIndex['rows']): boolean {
  let at = ''
  for (const step of path.split('.')) {
    if (ROW.test(step) && rows.get(at)?.includes(Number(step)) === false) return false
    at = at === '' ? step : `${at}.${step}`
  }
  return true
}
