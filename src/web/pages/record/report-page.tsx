import type { Context } from 'hono'
import { z } from 'zod'
import { ReportPage } from '../../../../views/report/report-page.tsx'
import { makeReport } from '../../../report/make-report.ts'
import { reportDateSchema, reportShortSchema } from '../../../report/report-data.ts'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { refuse } from '../../asked/refusal.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { today } from '../../today.ts'

const formSchema = z.object({ date: reportDateSchema, short: reportShortSchema })

/** Day and form of the report, as the address asks for them. */
function askedOf(c: Context) {
  const read = formSchema.safeParse({
    date: c.req.query('date') ?? today(),
    short: c.req.query('short') ?? '0',
  })
  if (!read.success)
    return refuse(read.error.issues.map(({ path, message }) => ({ path: path.join('.'), message })))
  return { ...read.data, changes: null, rows: null }
}

/** The report of the brief in the address, for paper. */
export const reportPage = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const asked = askedOf(c)
  const advice = await advisor.quick(brief)
  return showPage(
    c,
    <ReportPage
      advice={advice}
      brief={brief}
      packed={packed}
      names={materialNames}
      trial={null}
      {...asked}
    />,
  )
}

const made = (advisor: Advisor, c: Context) =>
  makeReport(goodBrief(c).brief, askedOf(c), { advise: advisor.quick, pack: packBrief })

/** The same as one file that loads nothing. */
export const reportAsFile = (advisor: Advisor) => async (c: Context) => {
  const { html } = await made(advisor, c)
  c.header('content-disposition', 'attachment; filename="report.html"')
  return showPage(c, html)
}

/** What makes the same report again, by the command line or by sending it to /api/report. */
export const reportAsData = (advisor: Advisor) => async (c: Context) => {
  const { data } = await made(advisor, c)
  c.header('content-disposition', 'attachment; filename="report.json"')
  return c.json(data)
}
