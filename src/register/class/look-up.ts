/** Severity of harm, 1 to 5, in one line each; the words are this program's, the scale is to be confirmed. */
export const SEVERITY_WORDS = [
  'a nuisance, no harm',
  'a scratch, a chipped filling',
  'first aid or a dentist',
  'a deep cut, surgery',
  'may kill or disable',
] as const

/** Pieces of concern a year below which a likelihood of 1, 2, 3, 4 holds; 5 above the last. */
export const PIECES_A_YEAR = [0.1, 1, 12, 52] as const

export const LIKELIHOOD_WORDS = [
  'never seen here',
  'once in some years',
  'about once a year',
  'about once a month',
  'weekly or oftener',
] as const

export const SIGNIFICANCE = ['low', 'moderate', 'significant'] as const
export type Significance = (typeof SIGNIFICANCE)[number]

/** Rows severity 1 to 5, columns likelihood 1 to 5: looked up, because scores on ordinal scales do not multiply. */
const TABLE = ['LLLAA', 'LLAAS', 'LAASS', 'AASSS', 'ASSSS'] as const
const WORD: Readonly<Record<string, Significance>> = { L: 'low', A: 'moderate', S: 'significant' }

/** Likelihood class from pieces of concern that arrive before the control in a year of production. */
export function likelihoodOf(piecesAYear: number): number {
  const at = PIECES_A_YEAR.findIndex((limit) => piecesAYear < limit)
  return at < 0 ? 5 : at + 1
}

/** Significance of a hazard; severity and likelihood are whole numbers from 1 to 5. */
export function significanceOf(severity: number, likelihood: number): Significance {
  const word = WORD[TABLE[severity - 1]?.[likelihood - 1] ?? '']
  if (!word)
    throw new RangeError(`severity and likelihood are 1 to 5; ${severity} and ${likelihood} were given`)
  return word
}
