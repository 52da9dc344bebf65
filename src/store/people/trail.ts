import { randomBytes } from 'node:crypto'
import type { Kysely } from 'kysely'
import type { Tables } from '../tables.ts'

/** Who did what, and when. */
export interface Done {
  readonly at: string
  readonly who: string
  readonly what: string
  /** The thing it was done to, where there is one. */
  readonly thing: { readonly id: string; readonly title: string; readonly revision: number } | null
}

/** Who changed what: the revisions, none of which is ever written over, and what was done to people. */
export class Trail {
  readonly #db: Kysely<Tables>

  constructor(db: Kysely<Tables>) {
    this.#db = db
  }

  /** The latest first. */
  async latest(workspace: string, most = 200): Promise<Done[]> {
    const revisions = await this.#db
      .selectFrom('revision')
      .innerJoin('kept', 'kept.id', 'revision.id')
      .select(['revision.id', 'revision.at', 'revision.by', 'revision.done', 'revision.title'])
      .select('revision.revision as number')
      .where('kept.workspace', '=', workspace)
      .orderBy('revision.at', 'desc')
      .limit(most)
      .execute()
    const events = await this.#db
      .selectFrom('event')
      .select(['at', 'who', 'what'])
      .where('workspace', '=', workspace)
      .orderBy('at', 'desc')
      .limit(most)
      .execute()
    const all: Done[] = [
      ...revisions.map(({ id, at, by, done, title, number }) => ({
        at,
        who: by,
        what: done,
        thing: { id, title, revision: Number(number) },
      })),
      ...events.map((event) => ({ ...event, thing: null })),
    ]
    return all.sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0)).slice(0, most)
  }
}

/** Writes an event, within the transaction of what it tells of. */
export const writeEvent = (db: Kysely<Tables>, event: Omit<Tables['event'], 'id'>) =>
  db
    .insertInto('event')
    .values({ id: randomBytes(12).toString('base64url'), ...event })
    .execute()
