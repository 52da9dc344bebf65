import { getPriority, setPriority } from 'node:os'
import { workerData } from 'node:worker_threads'
import { move, transferableSymbol, valueSymbol } from 'piscina'
import { advise } from '../../advise.ts'
import { practiceCard } from '../../card/practice-card.ts'
import { sharedCard } from '../../card/shared-card.ts'
import { practiceDial } from '../../exercises/dial/practice-dial.ts'
import { adviseBatch, type Batch, type Worked } from '../../lines/advise-row.ts'
import { under } from '../advisor.ts'
import { createPages } from '../app.ts'
import { houseOf } from '../house-book.ts'
import { helpWithCards } from '../shown/cards.ts'
import { type CarriedRequest, carryAnswer, requestOf } from './carried.ts'
import { dressed } from './dressed.ts'
import { secondHand } from './second-hand.ts'

/** Steps behind the server's thread: about a third of its share where both want the same processor. */
const BEHIND = 5
const LOWEST = 19

const { overlays, drawsCards } = workerData as {
  readonly overlays: readonly string[]
  readonly drawsCards: boolean
}
const pages = dressed(createPages(undefined, overlays).fetch)

// Work steps behind the server's own thread, which has little to do and should do it at once. On Linux a priority
// belongs to the thread that asks; elsewhere this would slow the whole program.
if (process.platform === 'linux') setPriority(Math.min(LOWEST, getPriority() + BEHIND))

const hand = drawsCards ? secondHand() : null
if (hand) helpWithCards(hand)

/** Draws something small before anybody asks, so that the first card takes no longer than the next. */
export async function practise(): Promise<void> {
  const { brief, options } = practiceCard()
  for (const seed of [1, 2]) if (hand) await sharedCard(brief, { ...options, seed }, hand)
}

/** The same for the live control. */
export const practiseDial = (): void => practiceDial()

/** One request answered away from the server's own thread: everything that thinks happens here. */
export default async function answer(carried: CarriedRequest): Promise<unknown> {
  const answered = await carryAnswer(await pages(requestOf(carried)))
  // The bytes of the body change hands instead of being copied.
  return move({ [transferableSymbol]: answered.body, [valueSymbol]: answered } as never)
}

const house = houseOf(overlays)

/**
 * Rows of a table of products worked out, by the same book. Rules are asked of the explainer alone, which takes a fifth
 * of the work away; the advice that a row leads to is decided by the engine, and a test holds the one to the other.
 */
export const products = (batch: Batch): Promise<Worked> =>
  adviseBatch(under({ ...house.book(), trial: true }, advise), batch)
