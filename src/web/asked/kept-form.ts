import type { Context } from 'hono'
import type { Answers } from '../../brief/form/form.ts'
import { rowsOf } from '../../brief/form/form-index.ts'
import { packBrief, unpackBrief } from './packed-brief.ts'

/** Longer addresses are cut by some servers and mail programs; then the form is shown as the answer to the post. */
const LONGEST_ADDRESS = 7000

/** The first field of a row that was just added, by its list. */
const FIRST_FIELD: Readonly<Record<string, string>> = {
  points: 'name',
  contaminants: 'material',
  flow: 'step',
  quotes: 'equipment',
  finds: 'contaminant',
  quoted: 'kind',
  parts: 'material',
  entries: 'step',
}

/** The last row of a list, and the field of it to begin with. */
function newRow(answers: Answers, list: string): { row: string; field: string } {
  const row = `${list}.${rowsOf(answers, list).at(-1) ?? 0}`
  return { row, field: `${row}.${FIRST_FIELD[list.split('.').at(-1)!] ?? ''}` }
}

/**
 * Where a form goes when a row was added to it or taken out: to an address that holds what was typed, so that
 * Back and reload work and the place is kept; null where it would be too long for an address.
 */
export function keptAddress(answers: Answers, list: string, added: boolean): string | null {
  const packed = packBrief(Object.fromEntries(Object.entries(answers).filter(([, value]) => value !== '')))
  const { row, field } = newRow(answers, list)
  const address = added ? `/brief?form=${packed}&at=${field}#${row}` : `/brief?form=${packed}#${list}`
  return address.length > LONGEST_ADDRESS ? null : address
}

/** The form in an address, with the field to begin with; null where there is none or it cannot be read. */
export function keptForm(c: Context): { answers: Answers; focus: string } | null {
  const packed = c.req.query('form')
  if (packed === undefined) return null
  const read = unpackBrief(packed)
  if (!('brief' in read) || typeof read.brief !== 'object' || read.brief === null) return null
  const answers = Object.fromEntries(
    Object.entries(read.brief).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  )
  return { answers, focus: c.req.query('at') ?? '' }
}
