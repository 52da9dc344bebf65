import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { wantedOf } from '../../../../views/advice/sizes/findings.ts'
import { RatherPage } from '../../../../views/rather/rather-page.tsx'
import { pieceWords } from '../../../../views/words/contaminant.ts'
import { rather } from '../../../compare/rather.ts'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'

/** Two machines of one point: A rather than B. */
export const ratherPage = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const advice = await advisor.quick(brief)
  const at = Number(c.req.query('point'))
  const point = advice.points[at]
  const option = (name: string) => point?.options.find((o) => o.equipment === c.req.query(name))
  const [first, second] = [option('first'), option('second')]
  if (!point || !first || !second)
    throw new HTTPException(404, { message: 'This advice has no two such machines at that point.' })
  return showPage(
    c,
    <RatherPage
      contrast={rather(advisor.house.book(), brief, advice, at, first, second)}
      machines={point.options.map(({ equipment, label }) => ({ equipment, label }))}
      point={at}
      pointName={point.name}
      pieces={wantedOf(advice).map((piece) => pieceWords(piece, materialNames))}
      packed={packed}
      print={c.req.query('print') === '1'}
    />,
  )
}
