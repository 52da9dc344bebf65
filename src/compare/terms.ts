import type { Demonstration } from '../numerics/binomial.ts'

/** What the buyer wants shown, and how much may go wrong while it is shown. */
export interface Terms extends Demonstration {
  readonly misses: number
  readonly falseRejects: number
}

export const USUAL_TERMS: Terms = { chance: 0.9, confidence: 0.95, misses: 0, falseRejects: 0 }

/** Choices of the clause; other values in the address fall back to the usual ones. */
export const TERM_CHOICES: Readonly<Record<keyof Terms, readonly number[]>> = {
  chance: [0.8, 0.9, 0.95],
  confidence: [0.9, 0.95],
  misses: [0, 1, 2, 3],
  falseRejects: [0, 1, 2, 5],
}

export function readTerms(given: Readonly<Record<string, string | undefined>>): Terms {
  const one = (name: keyof Terms) => {
    const value = Number(given[name] ?? Number.NaN)
    return TERM_CHOICES[name].includes(value) ? value : USUAL_TERMS[name]
  }
  return {
    chance: one('chance'),
    confidence: one('confidence'),
    misses: one('misses'),
    falseRejects: one('falseRejects'),
  }
}
