import { readFileSync } from 'node:fs'
import { ReportDocument } from '../../views/report/report-page.tsx'
import { enteredOf } from '../brief/usual/usual-contaminants.ts'
import type { Advice, Brief } from '../contract/index.ts'
import { materials } from '../reference/index.ts'
import type { ReportData } from './report-data.ts'
import type { ReportTrial, TrialRows } from './trial-in-report.ts'

const style = (name: string) => readFileSync(new URL(`../web/assets/${name}`, import.meta.url), 'utf8')

/** Styles of the program, put into the file so that it loads nothing. */
const CSS = () => `${style('gritwise.css')}\n${style('records.css')}`

const names: ReadonlyMap<string, string> = new Map(
  [...materials.values()].map(({ id, label }) => [id, label]),
)

export interface ReportAsked {
  /** A trial whose rows the report keeps; null where none was given. */
  readonly trial: ReportTrial | null
  readonly rows: TrialRows | null
  /** Day of the report, in words; nothing else in it depends on when it was made. */
  readonly date: string
  readonly short: boolean
  readonly changes: readonly string[] | null
}

/** The report as one self-contained file: the same advice, day and form make the same bytes. */
export function reportFile(brief: Brief, advice: Advice, packed: string, asked: ReportAsked): string {
  return `${String(
    <ReportDocument css={CSS()} advice={advice} brief={brief} packed={packed} names={names} {...asked} />,
  )}\n`
}

/** What makes the same report again under the same versions. */
export const reportData = (
  /** The brief as it was given: without what the trial adds. */
  brief: Brief,
  advice: Advice,
  { date, short, changes, rows }: ReportAsked,
): ReportData => ({
  report: 1,
  date,
  short,
  versions: advice.versions,
  changes: changes === null ? null : [...changes],
  ...(rows ? { trial: { rows: [...rows.rows], machine: rows.machine } } : {}),
  brief: enteredOf(brief),
})
