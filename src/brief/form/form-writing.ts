import type { Answers } from './form.ts'
import { BRIEF_FIELDS, type Field, type Fields } from './form-fields.ts'
import { writeMeasure } from './measure.ts'
import { hasRow, writeQuotedMachine } from './quoted-writing.ts'

type Group = Readonly<Record<string, unknown>>

const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
const isPlain = (value: unknown): value is string | number | boolean =>
  ['string', 'number', 'boolean'].includes(typeof value)
const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : [])

/**
 * Fills a form from a brief; reading the form again gives the same brief. What is no brief is filled in as far as
 * its shape is one: the form has no place for the rest.
 */
export function writeForm(brief: unknown): Answers {
  const answers: Record<string, string> = {}
  writeGroup(BRIEF_FIELDS, '', brief, answers)
  return answers
}

function writeGroup(fields: Fields, prefix: string, given: unknown, answers: Record<string, string>) {
  if (!isGroup(given)) return
  for (const [key, field] of Object.entries(fields)) {
    const value = Object.hasOwn(given, key) ? given[key] : undefined
    if (value !== undefined) writeField(field, prefix + key, value, answers)
  }
}

function writeField(field: Field, path: string, value: unknown, answers: Record<string, string>) {
  switch (field.kind) {
    case 'group':
      return writeGroup(field.fields, `${path}.`, value, answers)
    case 'rows':
      for (const [row, given] of listOf(value).slice(0, field.most).entries()) {
        answers[`${path}.${row}`] = 'row'
        writeGroup(field.fields, `${path}.${row}.`, given, answers)
      }
      return
    case 'equipment':
      return writeEquipment(path, listOf(value).slice(0, field.most), answers)
    case 'words':
      answers[path] = joinWords(listOf(value).filter(isPlain).map(String))
      return
    case 'yes-no':
      if (typeof value === 'boolean') answers[path] = value ? 'yes' : 'no'
      else if (isPlain(value)) answers[path] = String(value)
      return
    case 'measure':
      if (isPlain(value)) answers[path] = typeof value === 'number' ? writeMeasure(value) : String(value)
      return
    default:
      if (isPlain(value)) answers[path] = String(value)
  }
}

function writeEquipment(path: string, all: readonly unknown[], answers: Record<string, string>) {
  const machines = all.filter((one) => typeof one !== 'string')
  for (const id of all) if (typeof id === 'string') answers[`${path}.${id}`] = 'on'
  for (const [row, machine] of machines.filter(hasRow).entries()) writeQuotedMachine(machine, row, answers)
  const others = machines.filter((machine) => !hasRow(machine))
  if (others.length > 0) answers.machines = JSON.stringify(others, null, 2)
}

function joinWords(words: readonly string[]): string {
  return words.some((word) => word.includes(',')) ? `${words.join('; ')};` : words.join(', ')
}
