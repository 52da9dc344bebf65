import type { DrawnSheet } from '../card/drawn-sheet.ts'
import type { Voice } from './voice.ts'

export interface Choice {
  /** Stands in the address: small letters, digits and hyphens. */
  readonly id: string
  readonly words: string
}

/** Stands as the choice of a bar or mark that is the answer to a question for a number. */
export const ANSWER = 'the-answer'

/** What is right, worked out when the question is made. */
export type Answer =
  | { readonly kind: 'choice'; readonly choices: readonly Choice[]; readonly right: string }
  | {
      readonly kind: 'number'
      readonly value: number
      readonly unit: string
      /** A guess within this factor of the value is right. */
      readonly within: number
      /** What people say who forget something: shown with the value where a room votes by hand. */
      readonly others: readonly number[]
    }

export interface Bar {
  readonly words: string
  /** null: nothing to draw; `none` says why. */
  readonly value: number | null
  readonly none?: string
  /** The choice this bar is, so that the answer and the prediction can be marked. */
  readonly choice?: string
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
  /** The choice this place is. */
  readonly choice?: string
}

/** What is drawn beside a question or an answer: values only. */
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
  | {
      /** A container with its places. */
      readonly kind: 'places'
      readonly title: string
      readonly container: 'jar' | 'can' | 'tray'
      readonly fromAbove: boolean
      readonly places: readonly Place[]
    }
  | {
      /** The opening of a metal detector, seen along the travel. */
      readonly kind: 'opening'
      readonly title: string
      readonly widthMm: number
      readonly heightMm: number
      readonly food: { readonly widthMm: number; readonly heightMm: number }
      /** Shares of width and height from the centre, and what stands there. */
      readonly places: readonly {
        readonly across: number
        readonly up: number
        readonly words: string
        readonly choice?: string
      }[]
    }
  | {
      /** What pieces and food answer to the coil: directions and lengths, in one plane. */
      readonly kind: 'plane'
      readonly title: string
      readonly answers: readonly {
        readonly words: string
        readonly resistive: number
        readonly reactive: number
        readonly choice?: string
      }[]
    }
  | {
      /** A simulated radiograph, taken when it is shown. */
      readonly kind: 'radiograph'
      readonly title: string
      /** Where its grey picture is fetched. */
      readonly address: string
      /** What lies on each line, from the top. */
      readonly lines: readonly string[]
      readonly taken: () => Taken
    }
  | {
      /** A long piece between the loops of a metal detector, at each angle to the travel. */
      readonly kind: 'turned'
      readonly title: string
      readonly turns: readonly { readonly angleDeg: number; readonly words: string }[]
    }

/** A simulated radiograph and what the machine made of it. */
export interface Taken {
  readonly sheet: DrawnSheet
  readonly png: Uint8Array
  readonly alt: string
}

export interface Place {
  readonly name: string
  readonly state: 'findable' | 'degraded' | 'blind'
  /** What is found there; empty before the answer. */
  readonly words: string
  readonly choice?: string
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
  /** What is the case, drawn; shows nothing of the answer. */
  readonly scene?: Picture
  /** What the answer rests on in one sentence with its numbers; it does not repeat the answer. */
  readonly outcome: string
  readonly reason: readonly string[]
  readonly pictures: readonly Picture[]
}

/** A named set of questions for one sitting; everything in it is computed when asked for. */
export interface Exercise {
  readonly id: string
  readonly title: (voice: Voice) => string
  /** What it is about, before anything is asked; gives no answer away. */
  readonly about: (voice: Voice) => string
  /** What to take home, said after the last answer. */
  readonly teaches: (voice: Voice) => string
  /** Answered against the clock, all questions in a row, the answers after the last. */
  readonly timed: boolean
  /** How many questions it has. */
  readonly count: number
  /** What the answers rest on. */
  readonly rests: string
  readonly questions: (voice: Voice) => readonly Question[]
}
