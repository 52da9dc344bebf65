import type { Context } from 'hono'
import { ReportPage } from '../../../../views/report/report-page.tsx'
import { reportData, reportFile } from '../../../report/report-file.tsx'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { today } from '../../today.ts'

const askedOf = (c: Context) => ({
  date: today(),
  short: c.req.query('short') === '1',
  changes: null,
  trial: null,
  rows: null,
})

/** The report of the brief in the address, for paper. */
export const reportPage = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const advice = await advisor.quick(brief)
  return showPage(
    c,
    <ReportPage advice={advice} brief={brief} packed={packed} names={materialNames} {...askedOf(c)} />,
  )
}

/** The same as one file that loads nothing. */
export const reportAsFile = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  c.header('content-disposition', 'attachment; filename="report.html"')
  return showPage(c, reportFile(brief, await advisor.quick(brief), packed, askedOf(c)))
}

/** What makes the same report again, by the command line. */
export const reportAsData = (advisor: Advisor) => async (c: Context) => {
  const { brief } = goodBrief(c)
  c.header('content-disposition', 'attachment; filename="report.json"')
  return c.json(reportData(brief, await advisor.quick(brief), askedOf(c)))
}
