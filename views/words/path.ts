import { fieldAt } from '../../src/brief/form/form-fields.ts'
import { labelOf } from '../../src/brief/form/form-labels.ts'
import type { Advice } from '../../src/contract/advice.ts'

/** "height of the food" for points.0.heightMm, wherever it holds. */
export function fieldWords(path: string): string {
  const label = labelOf(path)
  return label === path ? path : label.charAt(0).toLowerCase() + label.slice(1)
}

/** "height of the food at the sorting belt" for points.0.heightMm. */
export function pathWords(path: string, advice: Advice): string {
  const words = fieldWords(path)
  const [list, row] = path.split('.')
  const name = list === 'points' && row !== undefined ? advice.points[Number(row)]?.name : undefined
  if (name) return `${words} at ${name}`
  return list === 'contaminants' && row !== undefined ? `${words} of contaminant ${Number(row) + 1}` : words
}

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
