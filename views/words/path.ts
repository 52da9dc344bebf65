import { fieldAt } from '../../src/brief/form-fields.ts'
import { labelOf } from '../../src/brief/form-labels.ts'
import type { Advice } from '../../src/contract/advice.ts'

/** "height of the food at the sorting belt" for points.0.heightMm; with the unit of the field apart. */
export function pathWords(path: string, advice: Advice): string {
  const label = labelOf(path)
  const words = label === path ? path : label.charAt(0).toLowerCase() + label.slice(1)
  const [list, row] = path.split('.')
  if (list === 'points' && row !== undefined) {
    const name = advice.points[Number(row)]?.name
    return name ? `${words} at ${name}` : words
  }
  return list === 'contaminants' && row !== undefined ? `${words} of contaminant ${Number(row) + 1}` : words
}

/** The unit of a field, empty for words and shares. */
export function unitOf(path: string): string {
  const field = fieldAt(path)
  return field?.kind === 'measure' ? field.unit : ''
}
