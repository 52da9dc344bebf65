import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { runsCsv } from '../../../card/card-runs.ts'
import { deepBed, oneLayer } from '../../../card/one-layer.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { disposition } from '../../shown/attachment.ts'
import { answerCard, askedCard } from '../../shown/cards.ts'

/** One picture of a card as PNG. */
export const cardPicture = async (c: Context) => {
  const { brief } = goodBrief(c)
  const name = c.req.query('picture') ?? ''
  const card = await answerCard(brief, askedCard(c))
  const picture = card.machines.flatMap((machine) => machine.pictures).find((one) => one.name === name)
  if (!picture) throw new HTTPException(404, { message: 'This card has no picture of that name.' })
  return c.body(new Uint8Array(picture.png).buffer, 200, {
    'content-type': 'image/png',
    'content-disposition': disposition('inline', `${picture.name}.png`),
  })
}

/** The food of a deep bed in one layer as PNG. */
export const cardLayer = (c: Context) => {
  const { brief } = goodBrief(c)
  const { point: index = 0, seed = 1 } = askedCard(c)
  const point = brief.points[index]
  const bed = point && deepBed(point)
  if (!bed) throw new HTTPException(404, { message: 'No deep bed of pieces lies at this point.' })
  return c.body(new Uint8Array(oneLayer(point, bed, seed)).buffer, 200, {
    'content-type': 'image/png',
    'content-disposition': disposition('inline', 'one-layer.png'),
  })
}

/** The runs of a card as CSV. */
export const cardRuns = async (c: Context) => {
  const { brief } = goodBrief(c)
  return c.body(runsCsv(await answerCard(brief, askedCard(c))), 200, {
    'content-type': 'text/csv; charset=utf-8',
    'content-disposition': disposition('attachment', 'runs.csv'),
  })
}
