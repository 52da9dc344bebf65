import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { type Card, CardError, type CardOptions, cardOf } from '../card.ts'
import type { Brief } from '../contract/index.ts'

/** A card and its pictures are worth a second or two of work; the pages about one card share it. */
const KEPT = 6
const kept = new Map<string, Card>()

/** The card of a brief for what was asked; the last few are kept. */
export function rememberedCard(brief: Brief, options: CardOptions): Card {
  const key = JSON.stringify([brief.given, options])
  const card = kept.get(key) ?? cardOf(brief, options)
  kept.delete(key)
  kept.set(key, card)
  const oldest = kept.size > KEPT ? kept.keys().next().value : undefined
  if (oldest !== undefined) kept.delete(oldest)
  return card
}

function whole(c: Context, name: string, usual: number, most: number): number {
  const given = c.req.query(name)
  if (given === undefined || given === '') return usual
  const value = Number(given)
  if (!Number.isInteger(value) || value < 0 || value > most)
    throw new HTTPException(422, {
      message: `${name} must be a whole number from 0 to ${most}; ${JSON.stringify(given)} was given`,
    })
  return value
}

/** Seed, point, machines and placement as an address asks for them. */
export function askedCard(c: Context): CardOptions {
  const equipment = c.req.queries('machine') ?? []
  const placement = c.req.query('placement')
  return {
    seed: whole(c, 'seed', 1, 999_999),
    point: whole(c, 'point', 0, 11),
    ...(equipment.length > 0 ? { equipment } : {}),
    ...(placement === 'inside' || placement === 'outside' ? { placement } : {}),
  }
}

/** The card asked for; what cannot be is answered in words, 422. */
export function answerCard(brief: Brief, options: CardOptions): Card {
  try {
    return rememberedCard(brief, options)
  } catch (error) {
    if (error instanceof CardError) throw new HTTPException(422, { message: error.message })
    throw error
  }
}
