import type { Meets, Truth, Verdict } from '../../src/contract/advice.ts'

/** A word with a mark beside it that survives grey print; the mark is hidden from screen readers. */
export interface Marked {
  readonly mark: string
  readonly words: string
}

export const VERDICT_WORDS: Readonly<Record<Verdict, Marked>> = {
  'best-fit': { mark: '●', words: 'best fit to this brief' },
  'worth-a-test': { mark: '◐', words: 'test first' },
  conditional: { mark: '◔', words: 'suitable with conditions' },
  'no-build': { mark: '□', words: 'no build here takes it' },
  'not-suitable': { mark: '○', words: 'not suitable' },
}

/** What becomes of a size asked: the same words wherever it is said. */
export const ANSWER_WORDS: Readonly<Record<Meets, Marked>> = {
  yes: { mark: '●', words: 'met' },
  partly: { mark: '◕', words: 'met, but for places' },
  maybe: { mark: '◐', words: 'expected' },
  no: { mark: '○', words: 'not met' },
  cannot: { mark: '✕', words: 'not found' },
  open: { mark: '–', words: 'not asked' },
}

export const TRUTH_WORDS: Readonly<Record<Truth, string>> = {
  true: 'holds',
  false: 'does not hold',
  unknown: 'not known',
  'not-applicable': 'does not apply here',
}
