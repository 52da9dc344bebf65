import { createHash } from 'node:crypto'
import { setTimeout as wait } from 'node:timers/promises'
import { loadRulebook } from '../../advice/book/rulebook.ts'
import { versionsUnder } from '../../advice/book/versions.ts'
import type { OpenedTable, Workforce } from '../../lines/read-lines.ts'
import { Queue, type QueueSettings } from '../../store/queue.ts'
import { type Keeping, unavailable } from '../kept-store/keeping.ts'
import { begin, productsOf, type Shared, spreadOut, takeBatches } from './spread.ts'
import { type TableWork, workedHere } from './table-work.ts'

/** A table of fewer rows is worked out before it would have been put down for others. */
const FEW = 40

export interface SharedWork extends TableWork {
  readonly close: () => Promise<void>
}

export interface SharedBy {
  /** Address of the PostgreSQL. */
  readonly url: string
  readonly keeping: Keeping
  readonly workforce: Workforce
  /** Folders of rules laid over the book. */
  readonly rules: readonly string[]
  readonly settings?: Partial<QueueSettings>
}

/** Tables worked out together with every program that shares the database and gives the same answers; this one takes batches too. */
export function sharedWork({ url, keeping, workforce, rules, settings }: SharedBy): SharedWork {
  const stop = new AbortController()
  let opening: Promise<Queue> | null = null
  const queue = async () => {
    opening ??= Queue.open(url, queueName(rules), settings)
    try {
      return await opening
    } catch (error) {
      opening = null
      throw unavailable(error)
    }
  }
  const shared = async (): Promise<Shared> => ({
    tables: (await keeping.store()).tables,
    queue: await queue(),
  })
  const working = takeOnceThere(shared, workforce, stop.signal)
  const here = workedHere(workforce)
  return {
    products: async (table) => (table.rows < FEW ? here.products(table) : spreadOut(await shared(), table)),
    start: async (table) => {
      const all = await shared()
      const id = await begin(all, table)
      return { id, table, coming: productsOf(all, id) }
    },
    find: async (id) => {
      const { tables } = await keeping.store()
      const found = await tables.get(id)
      if (!found) return null
      const { frame } = found as unknown as Pick<OpenedTable, 'frame'>
      return { id, table: { frame, rows: found.rows }, coming: productsOf({ tables }, id) }
    },
    close: async () => {
      stop.abort()
      await working
      await (await opening?.catch(() => null))?.close()
    },
  }
}

const AWAY_MS = 5000

async function takeOnceThere(
  shared: () => Promise<Shared>,
  workforce: Workforce,
  stop: AbortSignal,
): Promise<void> {
  while (!stop.aborted) {
    const all = await shared().catch(() => null)
    if (all) return takeBatches(all, workforce, stop)
    await wait(AWAY_MS, undefined, { signal: stop }).catch(() => {})
  }
}

/** Programs share work where program, reference data and every rule are the same. */
function queueName(rules: readonly string[]): string {
  const book = loadRulebook(rules)
  const same = JSON.stringify([versionsUnder(book), book, [...book.thresholds]])
  return `lines-${createHash('sha256').update(same).digest('hex').slice(0, 24)}`
}
