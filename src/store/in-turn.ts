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
    let first: unknown
    try {
      return await db.transaction().execute((within) =>
        work(within).catch((error) => {
          first = error
          throw error
        }),
      )
    } catch (last) {
      // A database that has undone everything by itself, as on a full disk, complains when asked to undo it: the cause is told.
      const error = first ?? last
      if (!isBusy(error) || Date.now() > until) throw error
      await wait(5 + Math.random() * 30)
    }
  }
}

const isBusy = (error: unknown) => String((error as { code?: unknown }).code).startsWith('SQLITE_BUSY')
