import { chmodSync, mkdirSync } from 'node:fs'
import { homedir } from 'node:os'
import { dirname, join } from 'node:path'
import { Kysely, PostgresDialect, SqliteDialect, sql, type Transaction } from 'kysely'
import { AT_ONCE_MS, PATIENCE_MS } from './in-turn.ts'
import { migrate } from './migrations.ts'
import { openFile } from './sqlite.ts'
import { Store } from './store.ts'
import type { Tables } from './tables.ts'

/** Nothing can be kept here; says why and what to do. */
export class NoStore extends Error {}

/** Where things are kept: a PostgreSQL by its address, else one file of the user's. */
export type Place = { readonly url: string } | { readonly file: string }

/** The place a program is told of by its surroundings, or the user's data folder. */
export function usualPlace(env: NodeJS.ProcessEnv = process.env): Place {
  if (env.DATABASE_URL) return { url: env.DATABASE_URL }
  const data = env.GRITWISE_DATA ?? join(env.XDG_DATA_HOME ?? join(homedir(), '.local', 'share'), 'gritwise')
  return { file: join(data, 'kept.sqlite') }
}

/** In place of a file: kept until the program ends. */
export const IN_MEMORY = ':memory:'

/** Opens what is kept, and brings it to the present shape. Drivers are loaded here: who keeps nothing needs none. */
export const openStore = (place: Place): Promise<Store> =>
  'url' in place ? openPostgres(place.url) : openSqlite(place.file)

async function openSqlite(file: string): Promise<Store> {
  await import('better-sqlite3').catch((error) => {
    throw new NoStore(
      `the driver of SQLite is not there (${(error as Error).message.split('\n')[0]}): install again with a compiler at hand, or give DATABASE_URL`,
    )
  })
  const inMemory = file === IN_MEMORY
  if (!inMemory) mkdirSync(dirname(file), { recursive: true, mode: 0o700 })
  const database = await openFile(file, AT_ONCE_MS)
  if (!inMemory) chmodSync(file, 0o600)
  // An answer is given when the disk has it.
  database.exec('pragma journal_mode = WAL; pragma synchronous = FULL; pragma foreign_keys = ON')
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database }) })
  await migrate(db, takeTurn)
  return new Store(db)
}

/** A transaction that begins by writing waits for its turn instead of failing half-way. */
async function takeTurn(within: Transaction<Tables>) {
  await sql`create table if not exists turn (taken integer)`.execute(within)
  await sql`delete from turn`.execute(within)
}

/** Any number, the same in every program that migrates. */
const LOCK = 60_411_073

async function openPostgres(url: string): Promise<Store> {
  const { default: pg } = await import('pg')
  const pool = new pg.Pool({ connectionString: url, max: 8, connectionTimeoutMillis: PATIENCE_MS })
  // A line that breaks while nobody uses it is taken out of the pool; who asks next gets another.
  pool.on('error', () => {})
  // One that breaks in somebody's hands fails what was asked of it; unheard, the break would end the whole program.
  pool.on('connect', (line) => line.on('error', () => {}))
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) })
  await migrate(db, (within) => sql`select pg_advisory_xact_lock(${LOCK})`.execute(within))
  return new Store(db)
}
