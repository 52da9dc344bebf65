import type { Advice, RunsAnswer } from '../../contract/index.ts'
import { againstPrediction } from './prediction.ts'
import { recordsOf } from './trial-records.ts'

/** A trial held against the advice on its brief: agreement first, then what it adds to the brief. */
export function heldAgainst(trial: RunsAnswer, advice: Advice, machine: string | null): RunsAnswer {
  const { measured, demonstrated } = recordsOf(trial.groups, advice, machine)
  return {
    ...trial,
    prediction: againstPrediction(trial.groups, advice, machine),
    records: { measured: [...measured], demonstrated: [...demonstrated] },
  }
}
