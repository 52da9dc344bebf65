import { setTimeout as wait } from 'node:timers/promises'
import type { LineProduct, LinesSummary } from '../../contract/index.ts'
import type { Batch, Worked } from '../../lines/advise-row.ts'
import {
  BATCH,
  batchesOf,
  gathered,
  type OpenedTable,
  refusedBatch,
  type Workforce,
  workedOut,
} from '../../lines/read-lines.ts'
import type { ProductTables } from '../../store/product-tables.ts'
import type { Errand, Queue } from '../../store/queue.ts'

/** Where tables lie that several programs work on. */
export interface Shared {
  readonly tables: ProductTables
  readonly queue: Queue
}

/** Batches put down at a time. */
const AT_ONCE = 200
/** Results read at a time. */
const RESULTS = 16
/** How long to wait where there is nothing to do or to read yet, ms. */
const PAUSE_MS = 250

/** Puts a table down, to be worked out by whoever takes its batches; hands out its number. */
export async function begin({ tables, queue }: Shared, table: OpenedTable): Promise<string> {
  const { frame, largest, rows } = table
  const id = await tables.begin({ frame, largest, rows, batches: Math.ceil(rows / BATCH) })
  let first = 0
  let group: unknown[] = []
  const put = async () => {
    if (group.length === 0) return
    await tables.add(id, first, group)
    await queue.send(group.map((_, at): Errand => ({ table: id, number: first + at })))
    first += group.length
    group = []
  }
  for await (const batch of batchesOf(table)) {
    group.push(batch)
    if (group.length === AT_ONCE) await put()
  }
  await put()
  return id
}

/** The products of a table that was put down, in order, each once, as they come; at the end, what they have in common. */
export async function* productsOf(
  { tables }: Pick<Shared, 'tables'>,
  id: string,
): AsyncGenerator<LineProduct, LinesSummary> {
  const found = await tables.get(id)
  if (!found) throw new Error('this table is no longer kept')
  return yield* gathered(found.largest as Batch['largest'], results(tables, id, found.batches))
}

/** How long a database may be away before a reader is told, ms. */
const AWAY_MS = 60_000

async function* results(tables: ProductTables, id: string, batches: number): AsyncGenerator<Worked> {
  let reached = Date.now()
  for (let next = 0; next < batches; ) {
    const some = await tables.worked(id, next, RESULTS).catch((error) => {
      if (Date.now() - reached > AWAY_MS) throw error
      return null
    })
    if (some) reached = Date.now()
    if (!some || some.length === 0) await wait(PAUSE_MS)
    else yield* some as Worked[]
    next += some?.length ?? 0
  }
}

/** The same for a reader who waits for it: what was put down goes with the reader. */
export async function* spreadOut(
  shared: Shared,
  table: OpenedTable,
): AsyncGenerator<LineProduct, LinesSummary> {
  const id = await begin(shared, table)
  try {
    return yield* productsOf(shared, id)
  } finally {
    await shared.tables.remove(id)
  }
}

/** Takes batches and works them out, so many at once, until told to stop; what has been begun is finished. */
export async function takeBatches(
  { tables, queue }: Shared,
  { atOnce, work }: Workforce,
  stop: AbortSignal,
  taken: (errand: Errand) => void = () => {},
): Promise<void> {
  const one = async () => {
    while (!stop.aborted) {
      // A database that is away comes back; until then nobody here has anything to do.
      const did = await workOne().catch(() => false)
      if (!did) await wait(PAUSE_MS, undefined, { signal: stop }).catch(() => {})
    }
  }
  const workOne = async () => {
    const errand = await queue.take()
    if (!errand) return false
    const { table: id, number, givenUp, done } = errand
    taken(errand)
    const rows = (await tables.batch(id, number)) as Batch['rows'] | null
    const table = rows && (await tables.get(id))
    if (table) {
      const { frame, largest } = table as unknown as Omit<Batch, 'rows'>
      const batch = { frame, largest, rows }
      await tables.put(
        id,
        number,
        givenUp ? refusedBatch(batch, 'every program that tried ended') : await workedOut(batch, work),
      )
    }
    await done()
    return true
  }
  await Promise.all(Array.from({ length: atOnce }, one))
}
