import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { runsCsv } from '../../../card/card-runs.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { disposition } from '../../shown/attachment.ts'
import { answerCard, askedCard } from '../../shown/cards.ts'

/** One picture of a card as PNG. */
export const cardPicture = (c: Context) => {
  const { brief } = goodBrief(c)
  const name = c.req.query('picture') ?? ''
  const card = answerCard(brief, askedCard(c))
  const picture = card.machines.flatMap((machine) => machine.pictures).find((one) => one.name === name)
  if (!picture) throw new HTTPException(404, { message: 'This card has no picture of that name.' })
  return c.body(new Uint8Array(picture.png).buffer, 200, {
    'content-type': 'image/png',
    'content-disposition': disposition('inline', `${picture.name}.png`),
  })
}

/** The runs of a card as CSV. */
export const cardRuns = (c: Context) => {
  const { brief } = goodBrief(c)
  return c.body(runsCsv(answerCard(brief, askedCard(c))), 200, {
    'content-type': 'text/csv; charset=utf-8',
    'content-disposition': disposition('attachment', 'runs.csv'),
  })
}
