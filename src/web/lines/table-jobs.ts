import { type FileHandle, mkdtemp, open, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { LineProduct, LinesSummary } from '../../contract/index.ts'
import type { OpenedTable } from '../../lines/read-lines.ts'
import { carriedColumns } from '../../lines/write/streamed.ts'
import { Busy } from '../serving/busy.ts'
import { type ShownProduct, shownProduct } from './shown-product.ts'
import type { Started, TableWork } from './table-work.ts'

/** A table being worked out, or worked out, for pages to look at. */
export interface TableJob {
  readonly id: string
  readonly rows: number
  readonly carried: readonly string[]
  /** In the order of the table, as far as they are done. */
  readonly done: readonly ShownProduct[]
  readonly summary: LinesSummary | null
  /** Why it ended before its end; empty where it did not. */
  readonly failed: string
  /** A product in full, by its place among those done. */
  readonly product: (at: number) => Promise<LineProduct | null>
}

/** Products of one table on the pages: more are a matter of the command or the API, which hold none of them. */
export const MOST_SHOWN = 5000
/** Tables kept at a time; the one looked at longest ago goes first. */
const MOST_TABLES = 20
/** Tables worked on at a time. */
const MOST_RUNNING = 4

interface Entry {
  readonly job: TableJob
  readonly end: () => Promise<void>
  running: boolean
}

/** Tables that pages have sent, each in a file of its own until it is let go or the program ends. */
export class TableJobs {
  readonly #work: TableWork
  readonly #entries = new Map<string, Entry>()

  constructor(work: TableWork) {
    this.#work = work
  }

  /** A table sent here, or to another program that works on the same. */
  async get(id: string): Promise<TableJob | null> {
    const entry = this.#entries.get(id)
    if (!entry) {
      const shared = await this.#work.find?.(id)
      return shared ? this.#follow(shared) : null
    }
    this.#entries.delete(id)
    this.#entries.set(id, entry)
    return entry.job
  }

  /** Begins to work a table out and comes back at once. */
  async start(table: OpenedTable): Promise<TableJob> {
    if ([...this.#entries.values()].filter(({ running }) => running).length >= MOST_RUNNING)
      throw new Busy(`${MOST_RUNNING} tables are being worked out already. Try again when one is done.`, 30)
    return this.#follow(await this.#work.start(table))
  }

  async #follow({ id, table, coming }: Started): Promise<TableJob> {
    const folder = await mkdtemp(join(tmpdir(), 'gritwise-table-'))
    const file = await open(join(folder, 'products'), 'wx+', 0o600)
    const job = new Job(id, table, file)
    const entry: Entry = {
      job,
      running: true,
      end: async () => {
        await coming.return(undefined as never)
        await file.close().catch(() => {})
        await rm(folder, { recursive: true, force: true })
      },
    }
    this.#entries.set(id, entry)
    void job.run(coming).finally(() => {
      entry.running = false
    })
    await this.#letGo()
    return job
  }

  /** Ends all work and takes every file away. */
  async close(): Promise<void> {
    const all = [...this.#entries.values()]
    this.#entries.clear()
    await Promise.all(all.map(({ end }) => end()))
  }

  async #letGo(): Promise<void> {
    for (const [id, entry] of this.#entries) {
      if (this.#entries.size <= MOST_TABLES) return
      if (entry.running) continue
      this.#entries.delete(id)
      await entry.end()
    }
  }
}

class Job implements TableJob {
  readonly id: string
  readonly rows: number
  readonly carried: readonly string[]
  readonly done: ShownProduct[] = []
  summary: LinesSummary | null = null
  failed = ''
  readonly #file: FileHandle
  readonly #places: { readonly from: number; readonly length: number }[] = []

  constructor(id: string, table: Started['table'], file: FileHandle) {
    this.id = id
    this.rows = table.rows
    this.carried = carriedColumns(table)
    this.#file = file
  }

  async run(coming: AsyncGenerator<LineProduct, LinesSummary>): Promise<void> {
    try {
      let from = 0
      let step = await coming.next()
      for (; !step.done; step = await coming.next()) {
        const bytes = Buffer.from(JSON.stringify(step.value))
        await this.#file.write(bytes, 0, bytes.length, from)
        this.#places.push({ from, length: bytes.length })
        from += bytes.length
        this.done.push(shownProduct(step.value))
      }
      this.summary = step.value
    } catch (error) {
      this.failed = (error as Error).message
    }
  }

  async product(at: number): Promise<LineProduct | null> {
    const place = this.#places[at]
    if (!place) return null
    const bytes = Buffer.alloc(place.length)
    await this.#file.read(bytes, 0, place.length, place.from)
    return JSON.parse(bytes.toString('utf8')) as LineProduct
  }
}
