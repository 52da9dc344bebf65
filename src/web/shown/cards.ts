import type { Context } from 'hono'
import { type Card, CardError, type CardOptions, cardOf } from '../../card/card.ts'
import { type OtherHand, sharedCard } from '../../card/shared-card.ts'
import type { Brief } from '../../contract/index.ts'
import { quoted, shortened } from '../../contract/quoted.ts'
import { askedWhole } from '../asked/asked-whole.ts'
import { refuse } from '../asked/refusal.ts'
import { Kept } from '../kept.ts'

/** A card and its pictures are worth a second or two of work; the pages about one card share it. */
const KEPT_BYTES = 48 * 1024 * 1024
const kept = new Kept<Card>(KEPT_BYTES)

const bytesOf = (card: Card): number =>
  card.machines.flatMap(({ pictures }) => pictures).reduce((sum, { png }) => sum + png.byteLength, 100_000)

/** Who helps with cards of several machines; nobody where a program draws one for itself. */
let otherHand: OtherHand | null = null
export const helpWithCards = (hand: OtherHand) => {
  otherHand = hand
}

const drawnCard = async (brief: Brief, options: CardOptions): Promise<Card> =>
  otherHand ? await sharedCard(brief, options, otherHand) : cardOf(brief, options)

/** The card of a brief for what was asked; the last few are kept. */
async function rememberedCard(brief: Brief, options: CardOptions): Promise<Card> {
  const key = JSON.stringify([brief.given, options])
  const found = kept.get(key)
  if (found) return found
  const card = await drawnCard(brief, options)
  kept.set(key, card, bytesOf(card))
  return card
}

/** Tube voltages the spectrum model speaks of, kV; sizes a piece of a card may have, mm. */
const VOLTAGES_KV = [20, 150] as const
const SIZES_MM = [0.05, 50] as const
const MOST_SIZES = 40

const within = (value: number, [from, to]: readonly [number, number]) => value >= from && value <= to

/** "kv-<machine>": the voltage a person sets; empty: as chosen for the advice. */
function askedVoltages(query: Readonly<Record<string, string>>): Record<string, number> {
  const kV: Record<string, number> = {}
  for (const [name, text] of Object.entries(query)) {
    if (!name.startsWith('kv-') || text.trim() === '') continue
    const value = Number(text.replace(',', '.'))
    if (!within(value, VOLTAGES_KV))
      refuse([
        {
          path: shortened(name),
          message: `a tube voltage must be ${VOLTAGES_KV.join(' to ')} kV; ${quoted(text)} was given`,
        },
      ])
    kV[name.slice('kv-'.length)] = value
  }
  return kV
}

/** "sizes-<contaminant>": "2, 3, 4" in mm; empty: the usual card. */
function askedSizes(query: Readonly<Record<string, string>>): (readonly number[] | null)[] {
  const sizes: (readonly number[] | null)[] = []
  for (const [name, text] of Object.entries(query)) {
    const [, index] = /^sizes-(\d{1,2})$/.exec(name) ?? []
    if (index === undefined || text.trim() === '') continue
    const given = text
      .split(/[;,\s]+/)
      .filter(Boolean)
      .map(Number)
    if (given.length > MOST_SIZES || !given.every((mm) => within(mm, SIZES_MM)))
      refuse([
        {
          path: name,
          message: `sizes of a card are at most ${MOST_SIZES} numbers from ${SIZES_MM.join(' to ')} mm, such as "2, 3, 4"; ${quoted(text)} was given`,
        },
      ])
    sizes[Number(index)] = given
  }
  return Array.from(sizes, (one) => one ?? null)
}

/** Clean packs a machine is taught on where a page or a program asks for it. */
const TAUGHT_PACKS = 20

/** "packs": taught on clean packs; empty: the computed threshold. */
function askedTeaching(text: string): Pick<CardOptions, 'taughtPacks'> {
  if (text === 'packs') return { taughtPacks: TAUGHT_PACKS }
  if (text !== '')
    refuse([
      {
        path: 'taught',
        message: `thresholds are computed (nothing) or taught on clean packs ("packs"); ${quoted(text)} was given`,
      },
    ])
  return {}
}

/** Seed, point, machines, placement, voltages and sizes as an address asks for them. */
export function askedCard(c: Context): CardOptions {
  const equipment = c.req.queries('machine') ?? []
  const placement = c.req.query('placement')
  const query = c.req.query()
  const kV = askedVoltages(query)
  const sizesMm = askedSizes(query)
  return {
    seed: askedWhole(c, 'seed', 1, 0, 999_999),
    point: askedWhole(c, 'point', 0, 0, 11),
    ...(equipment.length > 0 ? { equipment } : {}),
    ...(placement === 'inside' || placement === 'outside' ? { placement } : {}),
    ...askedTeaching(c.req.query('taught') ?? ''),
    ...(Object.keys(kV).length > 0 ? { kV } : {}),
    ...(sizesMm.length > 0 ? { sizesMm } : {}),
  }
}

/** A card; what cannot be is answered in words, 422. */
async function orRefusal(make: () => Promise<Card>): Promise<Card> {
  try {
    return await make()
  } catch (error) {
    if (error instanceof CardError) refuse([{ path: '', message: error.message }])
    throw error
  }
}

/** The card a page shows; the last few are kept. */
export const answerCard = (brief: Brief, options: CardOptions): Promise<Card> =>
  orRefusal(() => rememberedCard(brief, options))

/** A card for a program, which keeps what it asked for itself. */
export const cardForProgram = (brief: Brief, options: CardOptions): Promise<Card> =>
  orRefusal(() => drawnCard(brief, options))
