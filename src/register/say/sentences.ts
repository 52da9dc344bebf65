import type { Said, Sentence, Slot } from '../../contract/index.ts'

/** What was said for one place, as sentences; the items of a rule follow its lead. */
export function sentencesFor(said: readonly Said[], slot: Slot): Sentence[] {
  return said.filter((one) => one.slot === slot).map(toSentence)
}

export const toSentence = ({ rule, text, sources }: Said): Sentence => ({ text, rule, sources: [...sources] })
