import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { aboutCalculation } from '../../../../views/trail/about.ts'
import { TrailPage } from '../../../../views/trail/trail-page.tsx'
import { unfold } from '../../../../views/trail/unfold.ts'
import { currentCalculation } from '../../../advice/facts/renamed-ids.ts'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'

/** One calculation of the advice, walked to its end. */
export const trailPage = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const advice = await advisor.quick(brief)
  const id = currentCalculation(c.req.query('id') ?? '')
  const trail = unfold(advice.trace, id)
  if (trail?.kind !== 'calculation')
    throw new HTTPException(404, { message: 'This advice has no calculation of that name.' })
  return showPage(
    c,
    <TrailPage
      trail={trail}
      about={aboutCalculation(advice, id, materialNames)}
      sources={advice.trace.sources}
      packed={packed}
      print={c.req.query('print') === '1'}
    />,
  )
}
