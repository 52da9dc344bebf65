import type { RecordGround, Slot } from './advice-words.ts'

/** A rule of the register or the check plan that fired, with what it says. */
export interface Said {
  readonly rule: string
  readonly title: string
  readonly slot: Slot
  readonly about: string
  readonly text: string
  readonly items: readonly { readonly about: string; readonly text: string }[]
  readonly sources: readonly string[]
}

/** Where the rules are asked: which ground, and what it is about. */
export interface AskedAt {
  readonly ground: RecordGround
  readonly pointIndex: number | null
  readonly equipment: string | null
  readonly contaminant: number | null
}

export type FactValues = Readonly<Record<string, string | number | boolean | null>>

/** Asks the rule book over facts; handed in, because the register knows no rule book. */
export type Ask = (at: AskedAt, facts: FactValues) => Promise<readonly Said[]>
