import { dataFile } from './data-file.ts'
import type { Mark } from './material.ts'

/** Where a figure comes from, in full; mark V read, V2 quoted, C computed, M from memory, A assumption. */
export interface SourceText {
  readonly id: string
  readonly text: string
  readonly mark: Mark
}

export const sources: ReadonlyMap<string, SourceText> = new Map(
  dataFile<readonly SourceText[]>('sources.json').map((row) => [row.id, row]),
)
