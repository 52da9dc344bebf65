import { type InsertMaterial, insertMaterials, plainWords } from '../reference/inserts.ts'

/** What an insert of the pack is to a magnetic field, as far as its name tells. */
export const INSERT_KINDS = ['iron', 'metal', 'no metal', 'unknown'] as const
export type InsertKind = (typeof INSERT_KINDS)[number]

/** Words that take a metal back: "iron-free", "non-metallic", "without a clip of metal". */
const TAKEN_BACK =
  /\b(metal|iron|steel|foil|aluminium)[- ]?free\b|\bnon[- ]?metal\w*|\b(without|no) (any )?(metal|iron|steel|foil|wire)\b/gi

/** Words of a name; a paper clip is one word, for it is of wire. */
const wordsOf = (name: string): string[] =>
  name
    .toLowerCase()
    .replace(/\bpaper[- ]clip/g, 'paperclip')
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean)

const named = (row: InsertMaterial, words: readonly string[]) =>
  words.some((word) => row.match.includes(word))

/** What a name says: rows of the table it matches, whether it names a plain material, whether it takes a metal back. */
function read(name: string) {
  const left = name.replace(TAKEN_BACK, ' ')
  const words = wordsOf(left)
  const takes = left !== name
  const plain = words.some((word) => plainWords.has(word)) || takes
  const rows = insertMaterials.filter((row) => named(row, words) && !(plain && row.yieldsToPlain))
  const takenBack = takes && rows.every(({ id }) => id === 'absorber')
  return { rows: takenBack ? [] : rows, plain }
}

/**
 * Kind of an insert by its name and the table of insert materials. Any word of metal wins, whatever else the name
 * says ("plastic toy with metal spring"); a clip or ring is metal unless a plain material is named; a plain material
 * alone, or a metal taken back, is no metal; everything else is unknown ("twist tie", "spoon").
 */
export function insertKind(name: string): InsertKind {
  const { rows, plain } = read(name)
  if (rows.length > 0) return rows.some(({ kind }) => kind === 'iron') ? 'iron' : 'metal'
  return plain ? 'no metal' : 'unknown'
}

/** An insert of metal that can be so thick, mm, hides from x-rays what lies behind it (judgement). */
const HIDES_FROM_MM = 0.3

/** True for an insert of metal that an x-ray machine has to mask. */
export const hidesFromXrays = (name: string): boolean =>
  read(name).rows.some(({ thicknessMm }) => thicknessMm[1] >= HIDES_FROM_MM)
