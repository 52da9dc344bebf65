import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { ChecksPage } from '../../../../views/checks/checks-page.tsx'
import { DrillPage } from '../../../../views/checks/drill-page.tsx'
import { RecordPage } from '../../../../views/checks/record-page.tsx'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { showPage } from '../../show-page.ts'

/** The check plan of the brief in the address. */
export const checksPage = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const advice = await advisor.quick(brief)
  return showPage(c, <ChecksPage advice={advice} title={brief.title} packed={packed} packs={brief.points} />)
}

const SHEETS = { drill: DrillPage, record: RecordPage } as const

/** A sheet for the line: the drill or the record, of one machine. */
export const sheetPage = (advisor: Advisor, kind: keyof typeof SHEETS) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const { checks, register } = await advisor.quick(brief)
  const check = checks.points.find(({ pointIndex }) => String(pointIndex) === c.req.query('point'))
  if (!check) throw new HTTPException(404, { message: 'This check plan has no machine at that point.' })
  const Sheet = SHEETS[kind]
  const releasedBy = register.plant.find(({ id }) => id === 'plant.released-by')?.value ?? ''
  return showPage(
    c,
    <Sheet
      check={check}
      pack={brief.points[check.pointIndex]!}
      title={brief.title}
      packed={packed}
      releasedBy={releasedBy}
    />,
  )
}
