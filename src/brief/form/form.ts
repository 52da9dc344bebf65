import type { Problem } from '../../contract/brief.ts'
import { readJsonText } from '../../intake/json-text.ts'
import { BRIEF_FIELDS, type Field, type Fields } from './form-fields.ts'
import { formIndex, rowsOf } from './form-index.ts'
import { askFor, labelOf } from './form-labels.ts'
import { readMeasure, writeMeasure } from './measure.ts'
import { quotedField, readQuotedMachines } from './quoted-machines.ts'

/** A form as the browser sends it: one string per dotted path, e.g. "points.0.heightMm": "3 cm". */
export type Answers = Readonly<Record<string, string>>

export interface ReadForm {
  /** The brief as far as it could be read; hand it to parseBrief. */
  readonly input: unknown
  /** What could not be read, or was left out and is needed; paths are those of the form. */
  readonly problems: readonly Problem[]
  /** What was made of an answer that was not a bare number in the field's own unit, by form path. */
  readonly understood: Readonly<Record<string, string>>
  /** What a quoted machine takes from its nearest kind, by form path of the figure left empty. */
  readonly taken: Readonly<Record<string, string>>
  /** From a path in the brief to the field that holds it: rows left empty are not in the brief. */
  readonly formPath: (briefPath: string) => string
}

/** Characters of one answer, other than machines written as JSON. */
const LONGEST_ANSWER = 2000

const tooLong = (path: string, typed: string) =>
  `${labelOf(path)}: at most ${LONGEST_ANSWER.toLocaleString('en')} characters; ${typed.length.toLocaleString('en')} were given`

interface Notes {
  problems: Problem[]
  understood: Record<string, string>
  taken: Record<string, string>
  rows: Record<string, number[]>
  /** Machines chosen by tick; after them in the brief come those of the rows, then those written as JSON. */
  ticked: number
}

/** Reads a form. Empty fields stay out of the brief (they will be assumed, and said to be). */
export function readForm(answers: Answers): ReadForm {
  const notes: Notes = { problems: [], understood: {}, taken: {}, rows: {}, ticked: 0 }
  for (const { list, most, sent } of formIndex(answers).overfull)
    notes.problems.push({ path: list, message: tooManyRows(list, most, sent) })
  const input = readGroup(BRIEF_FIELDS, '', answers, notes)
  return {
    input,
    problems: notes.problems,
    understood: notes.understood,
    taken: notes.taken,
    formPath: (path) => toFormPath(path, notes),
  }
}

/** In words: this list takes no more rows than that. */
export const tooManyRows = (list: string, most: number, sent: number): string =>
  `${labelOf(list)}: at most ${most} rows; ${sent.toLocaleString('en')} were given`

function readGroup(fields: Fields, prefix: string, answers: Answers, notes: Notes): Record<string, unknown> {
  const given: Record<string, unknown> = {}
  for (const [key, field] of Object.entries(fields)) {
    const value = readField(field, prefix + key, answers, notes)
    if (value !== undefined) given[key] = value
  }
  return given
}

function readField(field: Field, path: string, answers: Answers, notes: Notes): unknown {
  const typed = answers[path]?.trim() ?? ''
  if (typed.length > LONGEST_ANSWER) {
    notes.problems.push({ path, message: tooLong(path, typed) })
    return undefined
  }
  switch (field.kind) {
    case 'group':
      return !formIndex(answers).filled.has(path) && !field.needed
        ? undefined
        : readGroup(field.fields, `${path}.`, answers, notes)
    case 'rows':
      return readRows(field.fields, path, field.needed, answers, notes)
    case 'equipment':
      return readEquipment(path, answers, notes)
    case 'words':
      return typed === '' ? undefined : splitWords(typed)
    default:
      if (typed === '') {
        if (field.needed) notes.problems.push({ path, message: askFor(path) })
        return undefined
      }
      return readAnswer(field, path, typed, notes)
  }
}

function readAnswer(field: Field, path: string, typed: string, notes: Notes): unknown {
  if (field.kind === 'yes-no') return typed === 'yes' ? true : typed === 'no' ? false : typed
  if (field.kind !== 'measure') return typed
  const reading = readMeasure(typed, field.unit)
  if (!reading.ok) {
    notes.problems.push({ path, message: `${labelOf(path)}: ${reading.because}` })
    return undefined
  }
  if (!reading.plain) notes.understood[path] = `${writeMeasure(reading.value)} ${field.unit}`.trim()
  return reading.value
}

function readRows(fields: Fields, path: string, needed: boolean, answers: Answers, notes: Notes): unknown {
  const { filled: answered } = formIndex(answers)
  const filled = rowsOf(answers, path).filter((row) => path === 'points' || answered.has(`${path}.${row}`))
  notes.rows[path] = filled
  if (filled.length === 0) return needed ? [] : undefined
  return filled.map((row) => readGroup(fields, `${path}.${row}.`, answers, notes))
}

function readEquipment(path: string, answers: Answers, notes: Notes): unknown {
  const ticked = Object.keys(answers).filter((key) => key.startsWith(`${path}.`) && answers[key] === 'on')
  notes.ticked = ticked.length
  const ids: unknown[] = ticked.map((key) => key.slice(path.length + 1))
  const { filled } = formIndex(answers)
  const rows = rowsOf(answers, 'quoted').filter((row) => filled.has(`quoted.${row}`))
  const quoted = readQuotedMachines(answers, rows)
  notes.rows.quoted = [...quoted.rows]
  notes.problems.push(...quoted.problems)
  Object.assign(notes.understood, quoted.understood)
  Object.assign(notes.taken, quoted.taken)
  ids.push(...quoted.machines)
  const typed = answers.machines?.trim() ?? ''
  if (typed !== '') {
    const read = readJsonText(typed)
    if (read.ok) ids.push(...(Array.isArray(read.value) ? read.value : [read.value]))
    else notes.problems.push({ path: 'machines', message: `${labelOf('machines')}: ${read.because}` })
  }
  return ids.length > 0 ? ids : undefined
}

function toFormPath(path: string, { rows, ticked }: Notes): string {
  const machine = /^equipment\.(\d+)(?:\.(\w+))?/.exec(path)
  if (machine) {
    const at = Number(machine[1]) - ticked
    if (at < 0) return 'equipment'
    const row = rows.quoted?.[at]
    return row === undefined ? 'machines' : `quoted.${row}.${quotedField(machine[2] ?? 'kind')}`
  }
  let form = ''
  for (const key of path.split('.')) {
    const row = rows[form]?.[Number(key)]
    form += `${form === '' ? '' : '.'}${row ?? key}`
  }
  return form
}

function splitWords(typed: string): string[] {
  return typed
    .split(typed.includes(';') ? ';' : ',')
    .map((word) => word.trim())
    .filter((word) => word !== '')
}
