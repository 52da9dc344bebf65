import type { Voice } from './voice.ts'

export interface Choice {
  /** Stands in the address: small letters, digits and hyphens. */
  readonly id: string
  readonly words: string
}

/** What is right, worked out when the question is made. */
export type Answer =
  | { readonly kind: 'choice'; readonly choices: readonly Choice[]; readonly right: string }
  | {
      readonly kind: 'number'
      readonly value: number
      readonly unit: string
      /** A guess within this factor of the value is right. */
      readonly within: number
    }

export interface Bar {
  readonly words: string
  /** null: nothing to draw; `none` says why. */
  readonly value: number | null
  readonly none?: string
}

export interface AxisWords {
  readonly words: string
  readonly unit: string
  /** No numbers beside it: only more or less counts. */
  readonly bare?: boolean
}

export interface Curve {
  readonly words: string
  readonly points: readonly (readonly [x: number, y: number])[]
  readonly filled?: boolean
  /** Where along x its name stands; at its highest point unless given. */
  readonly nameAt?: number
}

export interface Mark {
  readonly x: number
  readonly words: string
}

/** What is drawn beside an answer: numbers only. */
export type Picture =
  | {
      readonly kind: 'bars'
      readonly title: string
      readonly unit: string
      readonly bars: readonly Bar[]
      readonly line?: { readonly value: number; readonly words: string }
    }
  | {
      readonly kind: 'curves'
      readonly title: string
      readonly x: AxisWords
      readonly y: AxisWords
      readonly curves: readonly Curve[]
      readonly marks: readonly Mark[]
    }

export interface Fact {
  readonly words: string
  readonly value: string
}

/** One thing to predict, and what the program works out for it. */
export interface Question {
  readonly situation: string
  readonly facts: readonly Fact[]
  readonly ask: string
  readonly answer: Answer
  /** The answer in one sentence with its numbers. */
  readonly outcome: string
  readonly reason: readonly string[]
  readonly pictures: readonly Picture[]
}

/** A named set of questions for one sitting; everything in it is computed when asked for. */
export interface Exercise {
  readonly id: string
  readonly title: (voice: Voice) => string
  readonly teaches: (voice: Voice) => string
  /** Answered against the clock, all questions in a row, the answers after the last. */
  readonly timed: boolean
  /** How many questions it has. */
  readonly count: number
  /** What the answers rest on. */
  readonly rests: string
  readonly questions: (voice: Voice) => readonly Question[]
}
