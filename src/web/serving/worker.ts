import { workerData } from 'node:worker_threads'
import { move, transferableSymbol, valueSymbol } from 'piscina'
import { createPages } from '../app.ts'
import { type CarriedRequest, carryAnswer, requestOf } from './carried.ts'

const { overlays } = workerData as { readonly overlays: readonly string[] }
const pages = createPages(undefined, overlays)

/** One request answered away from the server's own thread: everything that thinks happens here. */
export default async function answer(carried: CarriedRequest): Promise<unknown> {
  const answered = await carryAnswer(await pages.fetch(requestOf(carried)))
  // The bytes of the body change hands instead of being copied.
  return move({ [transferableSymbol]: answered.body, [valueSymbol]: answered } as never)
}
