import type { Advice, Brief, BriefInput, RunRow, RunsAnswer } from '../contract/index.ts'
import { heldAgainst, readTrial, withRecords } from '../runs/index.ts'

/** A trial as a report shows it: read, and held against what was predicted before it. */
export interface ReportTrial {
  readonly answer: RunsAnswer
  readonly before: Advice
}

/** Rows that a report keeps, and the machine they speak of where they name it by its plate. */
export interface TrialRows {
  readonly rows: readonly RunRow[]
  readonly machine: string | null
}

/** The trial held against the advice on the brief without it, and the brief with what it adds. */
export function trialInReport(
  brief: Brief,
  before: Advice,
  { rows, machine }: TrialRows,
): { readonly trial: ReportTrial; readonly next: BriefInput } {
  const answer = heldAgainst(readTrial(rows), before, machine)
  return {
    trial: { answer, before },
    next: answer.records ? withRecords(brief.given, answer.records) : brief.given,
  }
}
