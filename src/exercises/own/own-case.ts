import type { Advice, Brief } from '../../contract/index.ts'

/** What a brief needs to be asked about: itself, its advice, and its pieces in words. */
export interface OwnCase {
  readonly brief: Brief
  readonly advice: Advice
  readonly pieces: readonly string[]
}

/** What the answers of a brief's own exercises rest on. */
export const OWN_RESTS = 'Your brief and its advice.'

/** Two sizes closer than this share are no question: nobody can be right by more than luck. */
export const TOO_CLOSE = 0.05

/** A machine's name where a sentence begins. */
export const begun = (label: string): string => label.charAt(0).toUpperCase() + label.slice(1)

/** Most questions one exercise makes of a brief. */
export const MOST_QUESTIONS = 4
