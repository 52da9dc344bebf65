import type { BriefInput, Problem } from '../../contract/brief.ts'
import { BRIEF_FIELDS, type Field, type Fields } from './form-fields.ts'
import { askFor, labelOf } from './form-labels.ts'
import { readMeasure, writeMeasure } from './measure.ts'
import { quotedField, readQuotedMachines } from './quoted-machines.ts'
import { hasRow, writeQuotedMachine } from './quoted-writing.ts'

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
  const input = readGroup(BRIEF_FIELDS, '', answers, notes)
  return {
    input,
    problems: notes.problems,
    understood: notes.understood,
    taken: notes.taken,
    formPath: (path) => toFormPath(path, notes),
  }
}

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
  switch (field.kind) {
    case 'group':
      return isBlank(answers, `${path}.`) && !field.needed
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
  const filled = rowsOf(answers, path).filter(
    (row) => path === 'points' || !isBlank(answers, `${path}.${row}.`),
  )
  notes.rows[path] = filled
  if (filled.length === 0) return needed ? [] : undefined
  return filled.map((row) => readGroup(fields, `${path}.${row}.`, answers, notes))
}

function readEquipment(path: string, answers: Answers, notes: Notes): unknown {
  const ticked = Object.keys(answers).filter((key) => key.startsWith(`${path}.`) && answers[key] === 'on')
  notes.ticked = ticked.length
  const ids: unknown[] = ticked.map((key) => key.slice(path.length + 1))
  const rows = rowsOf(answers, 'quoted').filter((row) => !isBlank(answers, `quoted.${row}.`))
  const quoted = readQuotedMachines(answers, rows)
  notes.rows.quoted = [...quoted.rows]
  notes.problems.push(...quoted.problems)
  Object.assign(notes.understood, quoted.understood)
  Object.assign(notes.taken, quoted.taken)
  ids.push(...quoted.machines)
  const typed = answers.machines?.trim() ?? ''
  if (typed !== '') {
    try {
      const machines: unknown = JSON.parse(typed)
      ids.push(...(Array.isArray(machines) ? machines : [machines]))
    } catch (error) {
      const because = error instanceof Error ? error.message : 'it could not be read'
      notes.problems.push({
        path: 'machines',
        message: `${labelOf('machines')}: not readable JSON (${because})`,
      })
    }
  }
  return ids.length > 0 ? ids : undefined
}

/** Fills a form from a brief; reading the form again gives the same brief. */
export function writeForm(brief: BriefInput): Answers {
  const answers: Record<string, string> = {}
  writeGroup(BRIEF_FIELDS, '', brief, answers)
  return answers
}

function writeGroup(
  fields: Fields,
  prefix: string,
  given: Readonly<Record<string, unknown>>,
  answers: Record<string, string>,
) {
  for (const [key, field] of Object.entries(fields)) {
    if (given[key] !== undefined) writeField(field, prefix + key, given[key], answers)
  }
}

function writeField(field: Field, path: string, value: unknown, answers: Record<string, string>) {
  switch (field.kind) {
    case 'group':
      return writeGroup(field.fields, `${path}.`, value as Record<string, unknown>, answers)
    case 'rows':
      for (const [row, given] of (value as Record<string, unknown>[]).entries()) {
        answers[`${path}.${row}`] = 'row'
        writeGroup(field.fields, `${path}.${row}.`, given, answers)
      }
      return
    case 'equipment': {
      const machines = (value as unknown[]).filter((one) => typeof one !== 'string')
      for (const id of value as unknown[]) if (typeof id === 'string') answers[`${path}.${id}`] = 'on'
      for (const [row, machine] of machines.filter(hasRow).entries())
        writeQuotedMachine(machine, row, answers)
      const others = machines.filter((machine) => !hasRow(machine))
      if (others.length > 0) answers.machines = JSON.stringify(others, null, 2)
      return
    }
    case 'words':
      answers[path] = joinWords(value as string[])
      return
    case 'yes-no':
      answers[path] = value === true ? 'yes' : 'no'
      return
    case 'measure':
      answers[path] = writeMeasure(value as number)
      return
    default:
      answers[path] = String(value)
  }
}

/** Row numbers present under a list's path, in order. */
export function rowsOf(answers: Answers, listPath: string): number[] {
  const rows = new Set<number>()
  for (const key of Object.keys(answers)) {
    if (!key.startsWith(`${listPath}.`)) continue
    const row = Number(key.slice(listPath.length + 1).split('.')[0])
    if (Number.isInteger(row) && row >= 0) rows.add(row)
  }
  return [...rows].sort((a, b) => a - b)
}

function isBlank(answers: Answers, prefix: string): boolean {
  return !Object.entries(answers).some(
    ([key, value]) => key.startsWith(prefix) && value.trim() !== '' && !/\.\d+$/.test(key),
  )
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

function joinWords(words: readonly string[]): string {
  return words.some((word) => word.includes(',')) ? `${words.join('; ')};` : words.join(', ')
}
