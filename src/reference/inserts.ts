import { dataFile } from './data-file.ts'
import type { Mark } from './material.ts'

/** What an insert may be made of, told by a word of its name. */
export interface InsertMaterial {
  readonly id: string
  readonly label: string
  /** Words that say so, in lower case. */
  readonly match: readonly string[]
  readonly kind: 'iron' | 'metal'
  /** Counts only where the name says no material without metal: a plastic clip is none. */
  readonly yieldsToPlain: boolean
  /** Id in `metals` whose constants stand for it; null where the grade decides. */
  readonly metal: string | null
  readonly ferromagnetic: boolean
  readonly thicknessMm: readonly [number, number]
  readonly source: string
  readonly mark: Mark
}

const file = dataFile<{ readonly rows: readonly InsertMaterial[]; readonly plain: readonly string[] }>(
  'inserts.json',
)

export const insertMaterials = file.rows
/** Words of materials without metal. */
export const plainWords: ReadonlySet<string> = new Set(file.plain)
