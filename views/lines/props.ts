import type { Meets } from '../../src/contract/advice.ts'
import type { Problem } from '../../src/contract/brief.ts'
import type { LinesSummary, RowProblem } from '../../src/contract/lines.ts'
import type { Names } from '../words/contaminant.ts'

/** A product in the table of its line. */
export interface ShownRow {
  readonly row: number
  readonly title: string
  readonly lines: readonly string[]
  readonly problems: readonly RowProblem[]
  readonly machines: readonly {
    readonly point: string
    readonly label: string
    readonly kV: number | null
    readonly mA: number | null
    readonly frequenciesKHz: readonly number[]
  }[]
  /** By line and contaminant. */
  readonly sizes: Readonly<
    Record<
      string,
      { readonly promisedMm: number | null; readonly expectedMm: number | null; readonly meets: Meets }
    >
  >
  /** Sizes asked that are not met. */
  readonly unmet: number
}

export interface LinesFormProps {
  readonly packed: string | null
  readonly title: string | null
  readonly typed: string
  readonly problems: readonly Problem[]
}

export interface ProgressProps {
  readonly packed: string | null
  readonly id: string
  readonly done: number
  readonly rows: number
}

/** One column of the table: a contaminant of the line. */
export interface SizeColumn {
  readonly key: string
  readonly words: string
}

export interface LinesPageProps {
  readonly packed: string | null
  readonly id: string
  readonly summary: LinesSummary
  readonly names: Names
  /** The line whose products are listed. */
  readonly line: string
  readonly columns: readonly SizeColumn[]
  /** A page of its products as sorted. */
  readonly shown: readonly ShownRow[]
  readonly bad: readonly ShownRow[]
  readonly sort: string
  readonly page: number
  readonly pages: number
}
