import type { Advice } from '../../../src/contract/advice.ts'
import { unitOf } from '../../words/path.ts'
import { valueWords } from '../../words/size.ts'
import { assumedRows } from '../assumed-rows.ts'

/** What the brief left open, in a sentence: the first few with their ranges, numbers before words, and how many more. */
export function assumedLine(advice: Advice, most = Number.POSITIVE_INFINITY): string {
  const rows = [...assumedRows(advice)].sort((a, b) => Number(b.range !== null) - Number(a.range !== null))
  if (rows.length === 0) return 'Nothing is assumed: the brief gives every value used.'
  const each = rows.slice(0, most).map(({ path, words, value, range }) => {
    const unit = unitOf(path)
    const span = range ? ` (${valueWords(range[0])} to ${valueWords(range[1])})` : ''
    return `${words}${typeof value === 'number' ? '' : ':'} ${valueWords(value)}${unit ? ` ${unit}` : ''}${span}`
  })
  const more = rows.length - each.length
  return `Assumed: ${each.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`
}
