import { differingFields } from '../../src/brief/differing-fields.ts'
import type { Brief, BriefInput, Part } from '../../src/contract/brief.ts'
import { capital } from '../words/capital.ts'
import { choiceWords } from '../words/choices.ts'
import type { Names } from '../words/contaminant.ts'
import { fieldWords, placeWords, unitOf } from '../words/path.ts'

/** Something in which two packs differ, as each brief gives it. */
export interface PackInput {
  readonly words: string
  readonly first: string
  readonly second: string
}

/** Of the lists that are told as one thing: packaging, and what neither size nor pack depends on. */
const PARTS = /^points\.(\d+)\.parts\./
const NOT_THE_PACK = /^title$|\.falseRejectsPerPack$/

/** What differs between the briefs of two packs, in the form's words; the packaging of a point is one line. */
export function packInputs(first: Brief, second: Brief, names: Names): PackInput[] {
  const fields = differingFields(first.given, second.given).filter(({ path }) => !NOT_THE_PACK.test(path))
  const single = new Set(first.points.map(({ name }) => name)).size === 1
  const parts = [...new Set(fields.flatMap(({ path }) => PARTS.exec(path)?.[1] ?? []))].map(Number)
  return [
    ...fields
      .filter(({ path }) => !PARTS.test(path))
      .map(({ path, first: one, second: other }) => ({
        words: capital(single || !path.startsWith('points.') ? fieldWords(path) : placeWords(path)),
        first: valueWords(path, one, names),
        second: valueWords(path, other, names),
      })),
    ...parts.map((point) => ({
      words: single ? 'Packaging' : `Packaging, inspection point ${point + 1}`,
      first: packagingWords(first.given, point, names),
      second: packagingWords(second.given, point, names),
    })),
  ]
}

function valueWords(path: string, value: string | undefined, names: Names): string {
  if (value === undefined) return 'not given'
  const field = path.split('.').at(-1) ?? ''
  return `${names.get(value) ?? choiceWords(field, value)} ${unitOf(path)}`.trim()
}

/** "polyethylene 0.06 mm (wrap), glass 3 mm (wall)". */
function packagingWords(brief: BriefInput, point: number, names: Names): string {
  const parts: readonly Part[] = brief.points[point]?.parts ?? []
  return parts.length === 0
    ? 'not given'
    : parts
        .map(({ material, mm, place, sheetOhmPerSquare }) => {
          const sheet = sheetOhmPerSquare === undefined ? '' : `, ${sheetOhmPerSquare} Ω per square`
          return `${names.get(material) ?? material} ${mm} mm (${choiceWords('place', place).replace(/ \(.*/, '').toLowerCase()}${sheet})`
        })
        .join(', ')
}
