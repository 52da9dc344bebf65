import type { Context } from 'hono'
import { askedCard, cardForProgram } from '../shown/cards.ts'
import { briefBody } from './json-body.ts'

/** POST a brief, get its simulated test card, pictures as base64 PNG; seed, point and machine in the address. */
export const cardApi = async (c: Context) => {
  const brief = await briefBody(c)
  const card = await cardForProgram(brief, askedCard(c))
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
}
