import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { PARTS } from '../../../../views/advice/links.ts'
import { hasPart, Part } from '../../../../views/advice/parts/part.tsx'
import { PartPage } from '../../../../views/advice/parts/part-page.tsx'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { doseLawOf } from '../../shown/dose-law.ts'

/** What is folded on the advice: its part alone for htmx, a page of its own for everybody else. */
export const advicePart = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const part = PARTS.find((one) => one === c.req.query('part'))
  const advice = part === 'missing' ? await advisor.whole(brief) : await advisor.quick(brief)
  const asked = {
    advice,
    point: Number(c.req.query('point') ?? 0),
    equipment: c.req.query('equipment') ?? '',
    contaminant: Number(c.req.query('contaminant') ?? 0),
  }
  if (!part || !hasPart({ ...asked, part }))
    throw new HTTPException(404, { message: 'This advice has no such part.' })
  const shown = { ...asked, part, packed, names: materialNames, doseLaw: doseLawOf(brief.market) }
  return c.req.header('hx-request')
    ? showPage(c, <Part {...shown} />)
    : showPage(c, <PartPage {...shown} title={brief.title} />)
}
