import { parseBrief } from '../brief/index.ts'
import { enteredOf } from '../brief/usual/usual-contaminants.ts'
import type { Advice, Brief } from '../contract/index.ts'
import { beforeTrials } from '../runs/index.ts'
import { changesSince } from './changes.ts'
import type { ReportData } from './report-data.ts'
import { reportData, reportFile } from './report-file.tsx'
import { type TrialRows, trialInReport } from './trial-in-report.ts'

/** What a report is asked for, at every door. */
export interface Wanted {
  readonly date: string
  readonly short: boolean
  readonly rows: TrialRows | null
  /** What changed, as an earlier report kept it, or the earlier report to compare with; null for neither. */
  readonly changes: readonly string[] | Pick<ReportData, 'brief' | 'versions'> | null
}

/** A door's way to an advice, and to the text that stands for a brief in an address. */
export interface Means {
  readonly advise: (brief: Brief) => Promise<Advice>
  readonly pack: (entered: ReturnType<typeof enteredOf>) => string
}

/** The report of a brief as one file, and what makes the same bytes again; the same at every door. */
export async function makeReport(
  given: Brief,
  { rows, changes, ...form }: Wanted,
  { advise, pack }: Means,
): Promise<{ readonly html: string; readonly data: ReportData; readonly versions: Advice['versions'] }> {
  const held = rows ? trialInReport(given, await advise(beforeTrials(given)), rows) : null
  const next = held ? parseBrief(held.next) : null
  if (next && !next.ok) throw new Error(`what the trial adds makes no brief: ${next.problems[0]?.message}`)
  const brief = next ? next.brief : given
  const advice = await advise(brief)
  const { versions } = advice
  const asked = {
    ...form,
    rows,
    trial: held?.trial ?? null,
    changes:
      changes !== null && 'brief' in changes
        ? changesSince(changes, { brief: enteredOf(given), versions })
        : (changes as readonly string[] | null),
  }
  return {
    html: reportFile(brief, advice, pack(enteredOf(brief)), asked),
    data: reportData(given, advice, asked),
    versions,
  }
}
