import type { Brief } from '../../contract/index.ts'
import { type FactSheet, FactWriter } from '../facts/fact-sheet.ts'
import { mm, nameWords, wordList } from '../say/words.ts'
import type { Missed } from '../stages.ts'

/** Facts of a size that an option misses. */
export function factsOfMiss(
  brief: Brief,
  scope: string,
  { kind, finding, others, gapMm }: Missed,
): FactSheet {
  const write = new FactWriter(scope, brief)
  const { contaminant, expectedMm, cautiousMm, mustFindMm, note } = finding
  write.computed('miss.kind', kind)
  write.computed('miss.pieces', wordList([contaminant, ...others].map((one) => nameWords(brief, one))))
  write.computed('miss.note', note === '' ? 'Nothing else is noted of it' : note.replace(/\.$/, ''))
  if (mustFindMm !== null) write.computed('miss.asked', mm(mustFindMm))
  if (expectedMm !== null) write.computed('miss.expected', mm(expectedMm))
  if (cautiousMm !== null) write.computed('miss.promise', mm(cautiousMm))
  if (gapMm !== null) write.computed('miss.gap', mm(gapMm))
  return write.sheet()
}
