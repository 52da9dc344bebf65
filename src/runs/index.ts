export { heldAgainst } from './against/held.ts'
export { beforeTrials, withRecords } from './against/trial-records.ts'
export { LINKS, type Link, linkValue } from './fit/link.ts'
export { readTrial } from './judge/read-trial.ts'
export { type PlanAsked, planTrial } from './plan/plan.ts'
export {
  type Entry,
  type EntryHead,
  type EntryPiece,
  rowsOfEntry,
  SEEN,
  type Seen,
} from './read/entry.ts'
export { type RunsRead, readRunRows, readRunsTable } from './read/read-runs.ts'
export { runsTable } from './read/write-table.ts'
