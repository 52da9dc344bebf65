import type { Answers } from '../../src/brief/form/form.ts'

export interface Option {
  readonly value: string
  readonly words: string
}

export interface OptionGroup {
  readonly words: string
  readonly options: readonly Option[]
}

/** What stands under a field: what was made of the answer, or what is taken when it is empty. */
export interface FieldNote {
  readonly understood?: string
  readonly assumed?: string
  /** The figure of the nearest kind. */
  readonly taken?: string
}

/** Everything the form shows, by form path. */
export interface Sheet {
  readonly answers: Answers
  readonly problems: ReadonlyMap<string, string>
  readonly notes: ReadonlyMap<string, FieldNote>
  readonly foods: readonly OptionGroup[]
  readonly contaminants: readonly OptionGroup[]
  readonly packaging: readonly OptionGroup[]
  readonly machines: readonly Option[]
  /** Machines typed in by their figures, to be named in a quoted size. */
  readonly quotedMachines: readonly Option[]
  /** Kinds a quoted machine may be likened to. */
  readonly detectors: readonly Option[]
  /** The field to begin with, where a row was just added. */
  readonly focus?: string
}
