import { setTimeout as wait } from 'node:timers/promises'
import type { Kysely, Transaction } from 'kysely'
import type { Tables } from './tables.ts'

/** How long a writer waits for its turn in all, ms. */
export const PATIENCE_MS = 5000
/** How long it may hold up everything else of this program at a time while it waits, ms (SQLite waits in place). */
export const AT_ONCE_MS = 20

/** A transaction; where another program is writing to the same file, again until it is this one's turn. */
export async function inTurn<Answer>(
  db: Kysely<Tables>,
  work: (within: Transaction<Tables>) => Promise<Answer>,
): Promise<Answer> {
  const until = Date.now() + PATIENCE_MS
  for (;;) {
    try {
      return await db.transaction().execute(work)
    } catch (error) {
      if (!isBusy(error) || Date.now() > until) throw error
      await wait(5 + Math.random() * 30)
    }
  }
}

const isBusy = (error: unknown) => String((error as { code?: unknown }).code).startsWith('SQLITE_BUSY')
