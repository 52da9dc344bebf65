import type { Brief, Point } from '../../contract/index.ts'
import { roundedUp } from '../../numerics/rounded-up.ts'
import { materials } from '../../reference/index.ts'

/** "a", "a and b", "a, b and c". */
export function wordList(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}

/** A size as every table shows it: 0.85 mm, 2.9 mm. */
export const mm = (value: number) => `${roundedUp(value)} mm`

const labelOf = (material: string) => materials.get(material)?.label ?? material
const uptoFirstBreak = (label: string) => label.replace(/[,:] .*$/, '')

/**
 * The name of a material as a sentence takes it: without what the list adds behind a comma or a colon, unless
 * that tells it from another contaminant of the brief.
 */
function shortName({ contaminants }: Brief, material: string): string {
  const short = uptoFirstBreak(labelOf(material))
  const isShared = contaminants.some(
    (other) => other.material !== material && uptoFirstBreak(labelOf(other.material)) === short,
  )
  return isShared ? labelOf(material) : short
}

/** A length asked or achieved, to three figures at most: 5 mm, 2.55 mm. */
const plainMm = (value: number) => String(Number(value.toPrecision(3)))

/** A piece of a size: "rubber of 5 mm", "stainless steel 304 wire of 0.6 × 10 mm", "glass flake of 2.5 mm × 30 mm²". */
function pieceWords(brief: Brief, index: number, sizeMm: string | null): string {
  const { material, shape, lengthMm, faceMm2 } = brief.contaminants[index]!
  const name = shortName(brief, material)
  if (shape === 'wire')
    return sizeMm === null ? `${name} wire of ${lengthMm} mm` : `${name} wire of ${sizeMm} × ${lengthMm} mm`
  if (shape === 'flake')
    return sizeMm === null
      ? `${name} flake of ${faceMm2} mm²`
      : `${name} flake of ${sizeMm} mm × ${faceMm2} mm²`
  return sizeMm === null ? name : `${name} of ${sizeMm} mm`
}

/** A contaminant with the size asked for it; without one, its name alone. */
export function sizedWords(brief: Brief, index: number): string {
  const { mustFindMm } = brief.contaminants[index]!
  return pieceWords(brief, index, mustFindMm === null ? null : plainMm(mustFindMm))
}

/** A contaminant without any size: "rubber", "stainless steel 304 wire of 10 mm". */
export const nameWords = (brief: Brief, index: number): string => pieceWords(brief, index, null)

interface Achieved {
  readonly expectedMm: number | null
  readonly cautiousMm: number | null
}

/** What a machine achieves: the size safe to promise, else the expected one, said so. */
export function achievedWords({ expectedMm, cautiousMm }: Achieved): string {
  if (cautiousMm !== null) return mm(cautiousMm)
  return expectedMm === null ? 'no size' : `expected ${mm(expectedMm)}`
}

/** The size of pack a machine has to take: "190 × 620 mm". */
export const packSize = (point: Pick<Point, 'heightMm' | 'widthMm'>) =>
  `${Math.round(point.heightMm)} × ${Math.round(point.widthMm)} mm`
