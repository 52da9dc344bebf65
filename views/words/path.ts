import { fieldAt } from '../../src/brief/form/form-fields.ts'
import { labelOf } from '../../src/brief/form/form-labels.ts'
import type { Advice } from '../../src/contract/advice.ts'

/** "height of the food" for points.0.heightMm, wherever it holds. */
export function fieldWords(path: string): string {
  const label = labelOf(path)
  return label === path ? path : label.charAt(0).toLowerCase() + label.slice(1)
}

/** "height of the food at “sorting belt”" for points.0.heightMm; of a part of the packaging, which part. */
export function pathWords(path: string, advice: Advice): string {
  const [list, row, inner, at] = path.split('.')
  const words = fieldWords(path)
  if (list === 'contaminants' && row !== undefined) return `${words} of contaminant ${Number(row) + 1}`
  const point = list === 'points' ? advice.brief.points[Number(row)] : undefined
  if (!point) return words
  const part = inner === 'parts' ? point.parts?.[Number(at)] : undefined
  return `${part ? words.replace('the part', `the ${part.place}`) : words} at “${point.name}”`
}

/** The same where it is asked for: a question of yes or no says so. */
export const askedWords = (path: string, advice: Advice): string =>
  fieldAt(path)?.kind === 'yes-no' ? `${pathWords(path, advice)}, yes or no` : pathWords(path, advice)

/** The unit of a field, empty for words and shares. */
export function unitOf(path: string): string {
  const field = fieldAt(path)
  return field?.kind === 'measure' ? field.unit : ''
}

const LISTS: Readonly<Record<string, string>> = {
  points: 'inspection point',
  contaminants: 'contaminant',
  flow: 'step',
  quotes: 'quoted size',
  equipment: 'machine',
  finds: 'find',
}

/** "inspection point 2, height of the food" for points.1.heightMm: a place in a brief that has no form yet. */
export function placeWords(path: string): string {
  const [list = '', row] = path.split('.')
  const words = fieldWords(path)
  const where = row !== undefined && LISTS[list] ? `${LISTS[list]} ${Number(row) + 1}` : ''
  return [where, words === path && where ? '' : words].filter(Boolean).join(', ') || 'the brief'
}
