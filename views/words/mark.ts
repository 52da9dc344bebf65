/** How well a source stands, in words. */
export const MARK_WORDS: Readonly<Record<string, string>> = {
  V: 'read in the source',
  V2: 'quoted by a third party',
  C: 'computed',
  M: 'from memory',
  A: 'assumption',
}
