import { randomBytes } from 'node:crypto'
import { type Kysely, type Selectable, sql, type Transaction } from 'kysely'
import { inTurn } from './in-turn.ts'
import type { Exported, KeptThing, Kind, Revision, Saved, ToKeep } from './kept.ts'
import { People } from './people/people.ts'
import { Trail } from './people/trail.ts'
import { ProductTables } from './product-tables.ts'
import type { Tables } from './tables.ts'

type Within = Transaction<Tables>

/** Things kept with all their revisions. Nothing is ever written over: what is changed or taken away can be had back. */
export class Store {
  readonly #db: Kysely<Tables>
  readonly #now: () => Date
  readonly people: People
  readonly trail: Trail
  readonly tables: ProductTables

  constructor(db: Kysely<Tables>, now: () => Date = () => new Date()) {
    this.#db = db
    this.#now = now
    this.people = new People(db, now)
    this.trail = new Trail(db)
    this.tables = new ProductTables(db, now)
  }

  /** The same store by another clock. */
  at(now: () => Date): Store {
    return new Store(this.#db, now)
  }

  close(): Promise<void> {
    return this.#db.destroy()
  }

  /** Answers where the database does. */
  async ping(): Promise<void> {
    await sql`select 1`.execute(this.#db)
  }

  /** What is kept, changed last first; the next page begins behind the last thing of this one. */
  async list(
    workspace: string,
    {
      kind = null,
      most = 50,
      behind = null,
    }: { kind?: Kind | null; most?: number; behind?: KeptThing | null } = {},
  ): Promise<KeptThing[]> {
    const query = this.#db
      .selectFrom('kept')
      .selectAll()
      .where('workspace', '=', workspace)
      .where('gone', '=', 0)
      .$if(kind !== null, (q) => q.where('kind', '=', kind!))
      .$if(behind !== null, (q) =>
        q.where((where) =>
          where.or([
            where('changedAt', '<', behind!.changedAt),
            where.and([where('changedAt', '=', behind!.changedAt), where('id', '<', behind!.id)]),
          ]),
        ),
      )
    return (await query.orderBy('changedAt', 'desc').orderBy('id', 'desc').limit(most).execute()).map(thingOf)
  }

  async get(workspace: string, id: string): Promise<KeptThing | null> {
    const row = await this.#row(this.#db, workspace, id)
    return row ? thingOf(row) : null
  }

  /** All revisions of a thing, the latest first; bodies that cannot be read say so and stop no other. */
  async revisions(workspace: string, id: string): Promise<Revision[]> {
    if (!(await this.#row(this.#db, workspace, id))) return []
    const rows = await this.#db
      .selectFrom('revision')
      .selectAll()
      .where('id', '=', id)
      .orderBy('revision', 'desc')
      .execute()
    return rows.map(revisionOf)
  }

  async revision(workspace: string, id: string, revision: number): Promise<Revision | null> {
    const all = await this.revisions(workspace, id)
    return all.find((one) => one.revision === revision) ?? null
  }

  /** Keeps something new. */
  async add(workspace: string, { kind, title, ...given }: ToKeep): Promise<Extract<Saved, { ok: true }>> {
    const id = randomBytes(12).toString('base64url')
    const at = this.#now().toISOString()
    await inTurn(this.#db, async (within) => {
      await within
        .insertInto('kept')
        .values({ id, workspace, kind, title, revision: 1, createdAt: at, changedAt: at, gone: 0 })
        .execute()
      await addRevision(within, id, 1, at, { ...given, title, done: 'kept' })
    })
    return { ok: true, id, revision: 1 }
  }

  /**
   * Keeps the next revision of a thing, `onto` being the revision it was made from. Where another has been kept since,
   * nothing is written and the other is handed back. Null where there is no such thing.
   */
  async save(
    workspace: string,
    id: string,
    onto: number,
    { title, body, by, versions = null, done = 'kept' }: Omit<ToKeep, 'kind'> & { readonly done?: string },
  ): Promise<Saved | null> {
    return inTurn(this.#db, async (within) => {
      const next = onto + 1
      const at = this.#now().toISOString()
      // Written before anything is read: of two writers one waits here, and then finds the other's revision.
      const taken = await within
        .updateTable('kept')
        .set({
          revision: next,
          title,
          // A clock that went back does not put a thing behind those changed before it.
          changedAt: sql<string>`case when ${sql.ref('changedAt')} > ${at} then ${sql.ref('changedAt')} else ${at} end`,
          gone: done === GONE ? 1 : 0,
        })
        .where('id', '=', id)
        .where('workspace', '=', workspace)
        .where('revision', '=', onto)
        .executeTakeFirst()
      if (taken.numUpdatedRows === 0n) {
        if (!(await this.#row(within, workspace, id))) return null
        const theirs = await within
          .selectFrom('revision')
          .selectAll()
          .where('id', '=', id)
          .orderBy('revision', 'desc')
          .limit(1)
          .executeTakeFirstOrThrow()
        return { ok: false, theirs: revisionOf(theirs) }
      }
      await addRevision(within, id, next, at, { title, body, by, versions, done })
      return { ok: true, id, revision: next }
    })
  }

  /** The revision of before, kept again as the latest. */
  async restore(
    workspace: string,
    id: string,
    revision: number,
    onto: number,
    by: string,
  ): Promise<Saved | null> {
    const old = await this.revision(workspace, id, revision)
    if (!old || old.unreadable) return null
    const { title, body, versions } = old
    return this.save(workspace, id, onto, { title, body, by, versions, done: `restored from ${revision}` })
  }

  /** Takes a thing out of the lists; its revisions stay, and restoring one brings it back. */
  async takeAway(workspace: string, id: string, onto: number, by: string): Promise<Saved | null> {
    const old = await this.revision(workspace, id, onto)
    if (!old) return null
    return this.save(workspace, id, onto, { ...old, by, done: GONE })
  }

  /** Everything of a workspace with all revisions. */
  async exportAll(workspace: string): Promise<Exported> {
    const rows = await this.#db
      .selectFrom('kept')
      .selectAll()
      .where('workspace', '=', workspace)
      .where('gone', '=', 0)
      .orderBy('id')
      .execute()
    const things: Exported['things'] = []
    for (const { id, kind, title, createdAt } of rows) {
      const revisions = (await this.revisions(workspace, id))
        .filter(({ unreadable }) => !unreadable)
        .reverse()
      if (revisions.length === 0) continue
      things.push({
        id,
        kind: kind as Kind,
        title,
        createdAt,
        revisions: revisions.map(({ unreadable: _unreadable, ...one }) => ({ ...one })),
      })
    }
    return { gritwiseKept: 1, at: this.#now().toISOString(), things }
  }

  /**
   * Brings an export in, all or nothing. What is here already and the same stays; what differs comes in as the next
   * revision; what belongs to another workspace or is new comes in with its whole history.
   */
  async importAll(workspace: string, { things }: Exported, by: string) {
    return inTurn(this.#db, async (within) => {
      const count = { added: 0, changed: 0, same: 0 }
      // Takes the turn to write before anything is read.
      await within.updateTable('kept').set({ gone: 0 }).where('id', '=', '').execute()
      for (const thing of things) {
        const known = await within
          .selectFrom('kept')
          .selectAll()
          .where('id', '=', thing.id)
          .executeTakeFirst()
        const newest = thing.revisions.at(-1)!
        if (!known || known.workspace !== workspace) {
          await this.#bringIn(
            within,
            workspace,
            known ? randomBytes(12).toString('base64url') : thing.id,
            thing,
          )
          count.added++
          continue
        }
        const { body } = await within
          .selectFrom('revision')
          .select('body')
          .where('id', '=', thing.id)
          .where('revision', '=', known.revision)
          .executeTakeFirstOrThrow()
        if (body === JSON.stringify(newest.body) && known.gone === 0) {
          count.same++
          continue
        }
        const at = latest(this.#now().toISOString(), known.changedAt)
        const revision = known.revision + 1
        await within
          .updateTable('kept')
          .set({ revision, title: newest.title, changedAt: at, gone: 0 })
          .where('id', '=', thing.id)
          .execute()
        await addRevision(within, thing.id, revision, at, { ...newest, by, done: 'brought in' })
        count.changed++
      }
      return count
    })
  }

  async #bringIn(within: Within, workspace: string, id: string, thing: Exported['things'][number]) {
    const { kind, title, createdAt, revisions } = thing
    const changedAt = revisions.at(-1)!.at
    await within
      .insertInto('kept')
      .values({ id, workspace, kind, title, revision: revisions.length, createdAt, changedAt, gone: 0 })
      .execute()
    for (const [at, one] of revisions.entries()) await addRevision(within, id, at + 1, one.at, one)
  }

  #row(db: Kysely<Tables>, workspace: string, id: string) {
    return db
      .selectFrom('kept')
      .selectAll()
      .where('id', '=', id)
      .where('workspace', '=', workspace)
      .executeTakeFirst()
  }
}

const GONE = 'taken away'

const latest = (a: string, b: string) => (a > b ? a : b)

const thingOf = ({ workspace: _w, gone: _g, kind, ...row }: Selectable<Tables['kept']>): KeptThing => ({
  ...row,
  kind: kind as Kind,
  revision: Number(row.revision),
})

function revisionOf({ id: _id, versions, body, revision, ...row }: Selectable<Tables['revision']>): Revision {
  try {
    return {
      ...row,
      revision: Number(revision),
      versions: JSON.parse(versions),
      body: JSON.parse(body),
      unreadable: false,
    }
  } catch {
    return { ...row, revision: Number(revision), versions: null, body: null, unreadable: true }
  }
}

function addRevision(
  within: Within,
  id: string,
  revision: number,
  at: string,
  { by, done, title, versions = null, body }: Omit<ToKeep, 'kind'> & { readonly done: string },
) {
  return within
    .insertInto('revision')
    .values({
      id,
      revision,
      at,
      by,
      done,
      title,
      versions: JSON.stringify(versions),
      body: JSON.stringify(body),
    })
    .execute()
}
