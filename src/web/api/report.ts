import type { Context } from 'hono'
import { parseBrief, problemsOf } from '../../brief/index.ts'
import { makeReport } from '../../report/make-report.ts'
import { otherVersions, reportDataSchema } from '../../report/report-data.ts'
import type { Advisor } from '../advisor.ts'
import { packBrief } from '../asked/packed-brief.ts'
import { refuse } from '../asked/refusal.ts'
import { showPage } from '../show-page.ts'
import { jsonBody } from './json-body.ts'

/** POST what a report keeps, get the same bytes; 422 with the problems, other versions among them. */
export const reportApi = (advisor: Advisor) => async (c: Context) => {
  const body = await jsonBody(c)
  const read = reportDataSchema.safeParse(body)
  if (!read.success) return refuse(problemsOf(read.error.issues, body, reportDataSchema))
  const { brief, trial, date, short, changes, versions } = read.data
  const parsed = parseBrief(brief)
  if (!parsed.ok)
    return refuse(parsed.problems.map(({ path, message }) => ({ path: `brief.${path}`, message })))
  const made = await makeReport(
    parsed.brief,
    { date, short, changes, rows: trial ?? null },
    { advise: advisor.quick, pack: packBrief },
  )
  const others = otherVersions(versions, made.versions)
  if (others.length > 0)
    return refuse([{ path: 'versions', message: `it was made by other versions: ${others.join('; ')}` }])
  c.header('content-disposition', 'attachment; filename="report.html"')
  return showPage(c, made.html)
}
