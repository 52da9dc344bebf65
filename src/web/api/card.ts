import type { Context } from 'hono'
import { parseBrief } from '../../brief/index.ts'
import { CardError, type CardOptions, cardOf } from '../../card/card.ts'
import { askedCard } from '../shown/cards.ts'
import { jsonBody } from './json-body.ts'

/** POST a brief, get its simulated test card, pictures as base64 PNG; seed, point and machine in the address. */
export const cardApi = async (c: Context) => {
  const parsed = parseBrief(await jsonBody(c))
  if (!parsed.ok) return c.json({ problems: parsed.problems }, 422)
  const options: CardOptions = askedCard(c)
  try {
    const card = cardOf(parsed.brief, options)
    return c.json({
      ...card,
      machines: card.machines.map((machine) => ({
        ...machine,
        pictures: machine.pictures.map(({ png, ...picture }) => ({
          ...picture,
          pngBase64: Buffer.from(png).toString('base64'),
        })),
      })),
    })
  } catch (error) {
    if (!(error instanceof CardError)) throw error
    return c.json({ problems: [{ path: '', message: error.message }] }, 422)
  }
}
