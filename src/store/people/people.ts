import { createHash, randomBytes } from 'node:crypto'
import type { Kysely } from 'kysely'
import { inTurn } from '../in-turn.ts'
import type { Tables } from '../tables.ts'
import { fits, secretOf } from './secret.ts'
import { writeEvent } from './trail.ts'

/** Readers see, authors keep, administrators say who may. */
export const ROLES = ['reader', 'author', 'administrator'] as const
export type Role = (typeof ROLES)[number]

export interface Person {
  readonly name: string
  readonly workspace: string
  readonly role: Role
}

/** After so many failures in so long no password of that name is tried until the time is over. */
export const MOST_FAILURES = 5
/** From one place, whatever names it tries: a whole firm may sit behind one address. */
export const MOST_FAILURES_FROM = 50
export const FAILURES_MS = 15 * 60_000
/** A sitting ends when nothing was asked for so long, and after a week anyway. */
export const IDLE_MS = 12 * 3_600_000
export const WEEK_MS = 7 * 24 * 3_600_000
/** How often the time of the latest request is written. */
const NOTE_MS = 60_000

export type SignedIn =
  | { readonly kind: 'in'; readonly key: string; readonly person: Person }
  | { readonly kind: 'wrong' }
  | { readonly kind: 'too-often'; readonly retryAfterS: number }

type Tried =
  | { readonly kind: 'fits'; readonly row: Tables['person'] }
  | Exclude<SignedIn, { readonly kind: 'in' }>

/** Places are counted among the names; no name begins with a space. */
const keyOfPlace = (from: string) => ` ${from}`

async function counted(within: Kysely<Tables>, name: string, sinceMs: number) {
  const row = await within
    .insertInto('attempt')
    .values({ name, failures: 1, sinceMs })
    .onConflict((on) =>
      on.column('name').doUpdateSet((old) => ({ failures: old('attempt.failures', '+', 1) })),
    )
    .returning(['failures', 'sinceMs'])
    .executeTakeFirstOrThrow()
  return { count: Number(row.failures), sinceMs: Number(row.sinceMs) }
}

const idOf = (key: string) => createHash('sha256').update(key).digest('base64url')

/** Accounts, what they may do, and who is signed in: in the database, so that every process knows. */
export class People {
  readonly #db: Kysely<Tables>
  readonly #now: () => Date

  constructor(db: Kysely<Tables>, now: () => Date) {
    this.#db = db
    this.#now = now
  }

  async named(name: string): Promise<Person | null> {
    const row = await this.#row(name)
    return row && Number(row.gone) === 0 ? personOf(row) : null
  }

  async list(workspace: string): Promise<Person[]> {
    const rows = await this.#db
      .selectFrom('person')
      .selectAll()
      .where('workspace', '=', workspace)
      .where('gone', '=', 0)
      .orderBy('name')
      .execute()
    return rows.map(personOf)
  }

  async isAnybodyThere(): Promise<boolean> {
    return (
      (await this.#db.selectFrom('person').select('name').where('gone', '=', 0).executeTakeFirst()) !==
      undefined
    )
  }

  /** A new account; false where the name is taken, also by one who has gone. Without a password a proxy signs it in. */
  async add(person: Person, password: string | null, by: string): Promise<boolean> {
    const secret = password === null ? '' : await secretOf(password)
    return inTurn(this.#db, async (within) => {
      const made = await within
        .insertInto('person')
        .values({ ...person, secret, gone: 0 })
        .onConflict((on) => on.column('name').doNothing())
        .executeTakeFirst()
      if (Number(made.numInsertedOrUpdatedRows ?? 0) === 0) return false
      await this.#note(within, person.workspace, by, `added ${person.name} as ${person.role}`)
      return true
    })
  }

  /** Another role, a new password, or an account taken away; the sittings of before end. False where it is not there, or the last administrator would go. */
  async change(
    workspace: string,
    name: string,
    change: { readonly role: Role } | { readonly password: string } | { readonly gone: true },
    by: string,
  ): Promise<boolean> {
    const secret = 'password' in change ? await secretOf(change.password) : null
    return inTurn(this.#db, async (within) => {
      const row = await within
        .updateTable('person')
        .set(secret !== null ? { secret } : 'role' in change ? { role: change.role } : { gone: 1 })
        .where('name', '=', name)
        .where('workspace', '=', workspace)
        .where('gone', '=', 0)
        .executeTakeFirst()
      if (row.numUpdatedRows === 0n) return false
      const administrator = await within
        .selectFrom('person')
        .select('name')
        .where('workspace', '=', workspace)
        .where('role', '=', 'administrator')
        .where('gone', '=', 0)
        .executeTakeFirst()
      if (!administrator && secret === null) throw new LastAdministrator()
      await within.deleteFrom('sitting').where('name', '=', name).execute()
      await within.deleteFrom('attempt').where('name', '=', name).execute()
      const what =
        'role' in change
          ? `made ${name} ${change.role}`
          : 'gone' in change
            ? `took ${name} away`
            : `gave ${name} a new password`
      await this.#note(within, workspace, by, what)
      return true
    }).catch((error) => {
      if (error instanceof LastAdministrator) return false
      throw error
    })
  }

  /** Signs in with a password; `from` is the place it is tried from, where that is known. */
  async signIn(name: string, password: string, from: string | null = null): Promise<SignedIn> {
    const tried = await this.#tried(name, password, from)
    return tried.kind === 'fits' ? this.#begun(tried.row, 'signed in') : tried
  }

  /** A new password for who knows the old one; every sitting of before ends, and another begins. */
  async changeOwn(
    name: string,
    old: string,
    password: string,
    from: string | null = null,
  ): Promise<SignedIn> {
    const tried = await this.#tried(name, old, from)
    if (tried.kind !== 'fits') return tried
    const secret = await secretOf(password)
    await inTurn(this.#db, async (within) => {
      await within.updateTable('person').set({ secret }).where('name', '=', name).execute()
      await within.deleteFrom('sitting').where('name', '=', name).execute()
    })
    return this.#begun(tried.row, 'took a new password')
  }

  /** Tries a password. The failure is counted before the password is tried, so that many at once win nothing. */
  async #tried(name: string, password: string, from: string | null): Promise<Tried> {
    const now = this.#now().getTime()
    const failures = await inTurn(this.#db, async (within) => {
      await within
        .deleteFrom('attempt')
        .where((where) =>
          where.or([where('sinceMs', '<', now - FAILURES_MS), where('sinceMs', '>', now + FAILURES_MS)]),
        )
        .execute()
      const ofName = await counted(within, name, now)
      return from === null ? [ofName] : [ofName, await counted(within, keyOfPlace(from), now)]
    })
    const most = [MOST_FAILURES, MOST_FAILURES_FROM]
    const over = failures.find(({ count }, at) => count > most[at]!)
    if (over) {
      const left = Math.max(1000, over.sinceMs + FAILURES_MS - now)
      return { kind: 'too-often', retryAfterS: Math.ceil(left / 1000) }
    }
    const row = await this.#row(name)
    const known = row !== undefined && Number(row.gone) === 0
    if (!(await fits(password, known ? row.secret : ''))) {
      if (known) await this.#note(this.#db, row.workspace, name, 'gave a wrong password')
      return { kind: 'wrong' }
    }
    await inTurn(this.#db, async (within) => {
      await within.deleteFrom('attempt').where('name', '=', name).execute()
      // Who has an account of their own does not clear the place for trying others.
      if (from !== null)
        await within
          .updateTable('attempt')
          .set((old) => ({ failures: old('failures', '-', 1) }))
          .where('name', '=', keyOfPlace(from))
          .execute()
    })
    return { kind: 'fits', row: row! }
  }

  async #begun(row: Tables['person'], what: string): Promise<SignedIn> {
    const now = this.#now().getTime()
    const key = randomBytes(32).toString('base64url')
    await inTurn(this.#db, async (within) => {
      await within
        .deleteFrom('sitting')
        .where('begunMs', '<', now - WEEK_MS)
        .execute()
      await within
        .insertInto('sitting')
        .values({ id: idOf(key), name: row.name, begunMs: now, seenMs: now })
        .execute()
      await this.#note(within, row.workspace, row.name, what)
    })
    return { kind: 'in', key, person: personOf(row) }
  }

  /** Who holds a key; null where the sitting has ended or the person has gone. */
  async holding(key: string): Promise<Person | null> {
    const id = idOf(key)
    const sitting = await this.#db.selectFrom('sitting').selectAll().where('id', '=', id).executeTakeFirst()
    if (!sitting) return null
    const now = this.#now().getTime()
    const [begun, seen] = [now - Number(sitting.begunMs), now - Number(sitting.seenMs)]
    // One that began when the clock was far ahead would outlast every other.
    if (seen > IDLE_MS || begun > WEEK_MS || begun < -IDLE_MS) {
      await this.signOut(key)
      return null
    }
    if (Math.abs(seen) > NOTE_MS)
      await this.#db.updateTable('sitting').set({ seenMs: now }).where('id', '=', id).execute()
    return this.named(sitting.name)
  }

  async signOut(key: string): Promise<void> {
    await this.#db.deleteFrom('sitting').where('id', '=', idOf(key)).execute()
  }

  /** What tokens of forms are made with: the same for every process on this database. */
  async tokenKey(): Promise<string> {
    const row = await this.#db
      .selectFrom('setting')
      .select('value')
      .where('name', '=', 'token-key')
      .executeTakeFirstOrThrow()
    return row.value
  }

  #row(name: string) {
    return this.#db.selectFrom('person').selectAll().where('name', '=', name).executeTakeFirst()
  }

  #note(within: Kysely<Tables>, workspace: string, who: string, what: string) {
    return writeEvent(within, { workspace, who, what, at: this.#now().toISOString() })
  }
}

class LastAdministrator extends Error {}

const personOf = ({ name, workspace, role }: Tables['person']): Person => ({
  name,
  workspace,
  role: role as Role,
})
