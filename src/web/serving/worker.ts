import { workerData } from 'node:worker_threads'
import { move, transferableSymbol, valueSymbol } from 'piscina'
import { advise } from '../../advise.ts'
import { adviseBatch, type Batch, type Worked } from '../../lines/advise-row.ts'
import { under } from '../advisor.ts'
import { createPages } from '../app.ts'
import { houseOf } from '../house-book.ts'
import { type CarriedRequest, carryAnswer, requestOf } from './carried.ts'

const { overlays } = workerData as { readonly overlays: readonly string[] }
const pages = createPages(undefined, overlays)

/** One request answered away from the server's own thread: everything that thinks happens here. */
export default async function answer(carried: CarriedRequest): Promise<unknown> {
  const answered = await carryAnswer(await pages.fetch(requestOf(carried)))
  // The bytes of the body change hands instead of being copied.
  return move({ [transferableSymbol]: answered.body, [valueSymbol]: answered } as never)
}

const house = houseOf(overlays)

/** Rows of a table of products worked out, by the same book. */
export const products = (batch: Batch): Promise<Worked> => adviseBatch(under(house.book(), advise), batch)
