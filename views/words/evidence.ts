import type { EVIDENCE } from '../../src/contract/advice-words.ts'

/** What a rule rests on, in the words of the page. */
export const EVIDENCE_WORDS: Readonly<Record<(typeof EVIDENCE)[number], string>> = {
  'law-opened': 'law, text read',
  'law-from-memory': 'law, from memory',
  guidance: 'guidance of an authority',
  standard: 'standard',
  'private-standard': 'standard of a private scheme',
  paper: 'paper',
  'fact-sheet': 'fact sheet',
  computed: 'computed',
  'common-practice': 'common practice, no source',
  memory: 'from memory',
  judgement: 'our judgement',
}
