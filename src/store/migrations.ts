import { randomBytes } from 'node:crypto'
import { type Kysely, sql, type Transaction } from 'kysely'
import { inTurn } from './in-turn.ts'
import type { Tables } from './tables.ts'

export type Step = (db: Transaction<Tables>) => Promise<unknown>

/** Each step once, in this order, for ever: a new step goes to the end and none is changed. */
export const STEPS: readonly Step[] = [
  async (db) => {
    await db.schema
      .createTable('kept')
      .addColumn('id', 'text', (column) => column.primaryKey())
      .addColumn('workspace', 'text', (column) => column.notNull())
      .addColumn('kind', 'text', (column) => column.notNull())
      .addColumn('title', 'text', (column) => column.notNull())
      .addColumn('revision', 'integer', (column) => column.notNull())
      .addColumn('createdAt', 'text', (column) => column.notNull())
      .addColumn('changedAt', 'text', (column) => column.notNull())
      .addColumn('gone', 'integer', (column) => column.notNull())
      .execute()
    await db.schema
      .createTable('revision')
      .addColumn('id', 'text', (column) => column.notNull().references('kept.id'))
      .addColumn('revision', 'integer', (column) => column.notNull())
      .addColumn('at', 'text', (column) => column.notNull())
      .addColumn('by', 'text', (column) => column.notNull())
      .addColumn('done', 'text', (column) => column.notNull())
      .addColumn('title', 'text', (column) => column.notNull())
      .addColumn('versions', 'text', (column) => column.notNull())
      .addColumn('body', 'text', (column) => column.notNull())
      .addPrimaryKeyConstraint('revision_key', ['id', 'revision'])
      .execute()
    await db.schema
      .createIndex('kept_latest')
      .on('kept')
      .columns(['workspace', 'gone', 'changedAt', 'id'])
      .execute()
  },
  async (db) => {
    const text = (
      table: string,
      key: string,
      columns: readonly string[],
      numbers: readonly string[] = [],
    ) => {
      let made = db.schema.createTable(table).addColumn(key, 'text', (column) => column.primaryKey())
      for (const name of columns) made = made.addColumn(name, 'text', (column) => column.notNull())
      for (const name of numbers) made = made.addColumn(name, 'bigint', (column) => column.notNull())
      return made.execute()
    }
    await text('person', 'name', ['workspace', 'role', 'secret'], ['gone'])
    await text('sitting', 'id', ['name'], ['begunMs', 'seenMs'])
    await text('attempt', 'name', [], ['failures', 'sinceMs'])
    await text('event', 'id', ['workspace', 'at', 'who', 'what'])
    await text('setting', 'name', ['value'])
    await db.schema.createIndex('event_latest').on('event').columns(['workspace', 'at']).execute()
    await db
      .insertInto('setting')
      .values({ name: 'token-key', value: randomBytes(32).toString('base64url') })
      .execute()
  },
  async (db) => {
    await db.schema
      .createTable('table')
      .addColumn('id', 'text', (column) => column.primaryKey())
      .addColumn('frame', 'text', (column) => column.notNull())
      .addColumn('largest', 'text', (column) => column.notNull())
      .addColumn('rows', 'integer', (column) => column.notNull())
      .addColumn('batches', 'integer', (column) => column.notNull())
      .addColumn('atMs', 'bigint', (column) => column.notNull())
      .execute()
    await db.schema
      .createTable('batch')
      .addColumn('id', 'text', (column) => column.notNull())
      .addColumn('number', 'integer', (column) => column.notNull())
      .addColumn('rows', 'text', (column) => column.notNull())
      .addColumn('worked', 'text')
      .addPrimaryKeyConstraint('batch_key', ['id', 'number'])
      .execute()
  },
]

/** The database was made by a newer program. */
export class TooNew extends Error {}

/**
 * Brings a database to the present shape. Each step and its mark are one transaction, so that a program ended in the
 * middle leaves the step undone, and the next start does it; where several start at once, one does it and the others wait.
 */
export async function migrate(
  db: Kysely<Tables>,
  lock: (db: Transaction<Tables>) => Promise<unknown>,
  steps: readonly Step[] = STEPS,
) {
  for (;;) {
    const more = await inTurn(db, async (within) => {
      await lock(within)
      await sql`create table if not exists step (done integer primary key)`.execute(within)
      const { rows } = await sql<{ last: number | null }>`select max(done) as last from step`.execute(within)
      const last = Number(rows[0]?.last ?? 0)
      if (last > steps.length)
        throw new TooNew(
          `what is kept was written by a newer gritwise (step ${last}; this one knows ${steps.length}): use that one, or bring the data in from its export`,
        )
      const step = steps[last]
      if (!step) return false
      await step(within)
      await sql`insert into step (done) values (${last + 1})`.execute(within)
      return true
    })
    if (!more) return
  }
}
