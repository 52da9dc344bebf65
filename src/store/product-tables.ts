import { randomBytes } from 'node:crypto'
import type { Kysely } from 'kysely'
import { inTurn } from './in-turn.ts'
import type { Tables } from './tables.ts'

/** A table of products as it is put down for others to work on: its heading and what its lines are sized for, as JSON. */
export interface PutDown {
  readonly frame: unknown
  readonly largest: unknown
  readonly rows: number
  readonly batches: number
}

/** Tables are let go after a week. */
const KEPT_MS = 7 * 24 * 3_600_000

/** Tables of products that several programs work on: rows in batches, and what came of each, once. */
export class ProductTables {
  readonly #db: Kysely<Tables>
  readonly #now: () => Date

  constructor(db: Kysely<Tables>, now: () => Date) {
    this.#db = db
    this.#now = now
  }

  async begin({ frame, largest, rows, batches }: PutDown): Promise<string> {
    const id = randomBytes(12).toString('base64url')
    const atMs = this.#now().getTime()
    const old = await this.#db
      .selectFrom('table')
      .select('id')
      .where((where) => where.or([where('atMs', '<', atMs - KEPT_MS), where('atMs', '>', atMs + KEPT_MS)]))
      .execute()
    for (const { id: gone } of old) await this.remove(gone)
    await this.#db
      .insertInto('table')
      .values({ id, frame: JSON.stringify(frame), largest: JSON.stringify(largest), rows, batches, atMs })
      .execute()
    return id
  }

  /** Puts batches of rows down, the first with this number. */
  async add(id: string, first: number, batches: readonly unknown[]): Promise<void> {
    const values = batches.map((rows, at) => ({
      id,
      number: first + at,
      rows: JSON.stringify(rows),
      worked: null,
    }))
    await this.#db.insertInto('batch').values(values).execute()
  }

  async get(id: string): Promise<PutDown | null> {
    const row = await this.#db.selectFrom('table').selectAll().where('id', '=', id).executeTakeFirst()
    if (!row) return null
    const { frame, largest, rows, batches } = row
    return {
      frame: JSON.parse(frame),
      largest: JSON.parse(largest),
      rows: Number(rows),
      batches: Number(batches),
    }
  }

  /** Rows of a batch; null where they are worked out already, or nobody waits for them any more. */
  async batch(id: string, number: number): Promise<unknown[] | null> {
    const row = await this.#db
      .selectFrom('batch')
      .select('rows')
      .where('id', '=', id)
      .where('number', '=', number)
      .where('worked', 'is', null)
      .executeTakeFirst()
    return row ? JSON.parse(row.rows) : null
  }

  /** What came of a batch; where two have worked on it, the first stands. */
  async put(id: string, number: number, worked: unknown): Promise<void> {
    await this.#db
      .updateTable('batch')
      .set({ worked: JSON.stringify(worked) })
      .where('id', '=', id)
      .where('number', '=', number)
      .where('worked', 'is', null)
      .execute()
  }

  /** What came of the batches from a number on, in order, as far as each next one is there. */
  async worked(id: string, from: number, most: number): Promise<unknown[]> {
    const rows = await this.#db
      .selectFrom('batch')
      .select(['number', 'worked'])
      .where('id', '=', id)
      .where('number', '>=', from)
      .where('number', '<', from + most)
      .orderBy('number')
      .execute()
    const end = rows.findIndex(({ worked }) => worked === null)
    return (end < 0 ? rows : rows.slice(0, end)).map(({ worked }) => JSON.parse(worked!))
  }

  async remove(id: string): Promise<void> {
    await inTurn(this.#db, async (within) => {
      await within.deleteFrom('batch').where('id', '=', id).execute()
      await within.deleteFrom('table').where('id', '=', id).execute()
    })
  }
}
