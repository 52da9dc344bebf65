import type { TrialDot } from '../../src/charts/trial-plot.tsx'
import type { Prediction, RunGroup, RunsAnswer } from '../../src/contract/runs.ts'
import type { Names } from '../words/contaminant.ts'
import type { Updated } from './before-after.tsx'

/** What a person typed into the page of test runs. */
export interface RunsTyped {
  readonly table: string
  /** The machine of the brief that was run, where the rows name it by its plate; empty where not known. */
  readonly machine: string
  readonly clauseSize: string
  readonly clausePieces: string
  readonly clauseMisses: string
  readonly clauseClean: string
  readonly clauseRejects: string
}

/** A group with what its picture needs, worked out already. */
export interface ShownGroup {
  readonly group: RunGroup
  readonly title: string
  readonly dots: readonly TrialDot[]
  /** Chance against size of the fitted curve; empty where none is fitted. */
  readonly fitted: readonly (readonly [number, number])[]
  readonly prediction: Prediction | null
  /** Clause met or not, in words; null where none was given or its size was not run here. */
  readonly clause: { readonly met: boolean; readonly words: string } | null
}

export interface RunsPageProps {
  readonly title: string | null
  readonly packed: string | null
  readonly typed: RunsTyped
  readonly problems: readonly { readonly path: string; readonly message: string }[]
  readonly answer: RunsAnswer | null
  readonly shown: readonly ShownGroup[]
  readonly names: Names
  /** What the trial makes of the prediction; null where it adds nothing. */
  readonly after: { readonly updated: readonly Updated[]; readonly packed: string } | null
  /** Key of an entry kept in the browser that has now arrived; null otherwise. */
  readonly arrived: string | null
}
