export { LINKS, type Link } from './fit/link.ts'
export { readTrial } from './judge/read-trial.ts'
export { type RunsRead, readRunRows, readRunsTable } from './read/read-runs.ts'
