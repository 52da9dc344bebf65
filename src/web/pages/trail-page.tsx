import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { TrailPage } from '../../../views/trail/trail-page.tsx'
import { unfold } from '../../../views/trail/unfold.ts'
import type { Advise } from '../advisor.ts'
import { goodBrief } from '../asked-brief.ts'

/** One calculation of the advice, walked to its end. */
export const trailPage = (advise: Advise) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const { trace } = await advise(brief)
  const trail = unfold(trace, c.req.query('id') ?? '')
  if (trail?.kind !== 'calculation')
    throw new HTTPException(404, { message: 'This advice has no calculation of that name.' })
  return c.html(<TrailPage trail={trail} sources={trace.sources} links={{ packed }} />)
}
