import { renumber } from '../renumber.ts'
import type { Answers } from './form.ts'
import { fieldAt } from './form-fields.ts'
import { mostRows, rowsOf } from './form-index.ts'

/** What a button of the form asks for: "advise", "check", "add:points" or "remove:contaminants.1". */
export type Action =
  | { do: 'advise' }
  | { do: 'check' }
  | { do: 'add'; list: string }
  | { do: 'remove'; row: string }

export function readAction(value: string | undefined): Action {
  const [verb, path = ''] = (value ?? 'advise').split(':')
  const list = verb === 'remove' ? path.replace(/\.\d+$/, '') : path
  if (verb === 'add' && fieldAt(list)?.kind === 'rows') return { do: 'add', list }
  if (verb === 'remove' && fieldAt(list)?.kind === 'rows' && list !== path) return { do: 'remove', row: path }
  return verb === 'check' ? { do: 'check' } : { do: 'advise' }
}

/** True where a list of the form takes no more rows. */
export const isFull = (answers: Answers, list: string): boolean =>
  rowsOf(answers, list).length >= (mostRows(list) ?? 0)

/** The same answers with one more empty row at the end of a list. */
export function addRow(answers: Answers, list: string): Answers {
  const rows = rowsOf(answers, list)
  return { ...answers, [`${list}.${(rows.at(-1) ?? -1) + 1}`]: 'row' }
}

/** The same answers without one row; rows after it move up by one. */
export function removeRow(answers: Answers, row: string): Answers {
  const list = row.replace(/\.\d+$/, '')
  const gone = Number(row.slice(list.length + 1))
  const kept: Record<string, string> = {}
  for (const [key, value] of Object.entries(answers)) {
    const [at = '', ...rest] = key.startsWith(`${list}.`) ? key.slice(list.length + 1).split('.') : []
    const number = Number(at)
    if (at === '' || number < gone) kept[key] = value
    else if (number > gone) kept[[list, number - 1, ...rest].join('.')] = value
  }
  return renumber(kept, list, gone)
}
