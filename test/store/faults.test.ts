import { afterEach, describe, expect, it } from 'vitest'
import { migrate, STEPS } from '../../src/store/migrations.ts'
import { openStore } from '../../src/store/open.ts'
import { openFile } from '../../src/store/sqlite.ts'
import { Store } from '../../src/store/store.ts'
import type { Tables } from '../../src/store/tables.ts'
import { keepingIn, unavailable } from '../../src/web/kept-store/keeping.ts'
import { Busy } from '../../src/web/serving/busy.ts'
import { hasPostgres, sqliteFile, startPostgres } from './databases.ts'
import { killRounds } from './kill-rounds.ts'

const toKeep = (body: unknown) => ({ kind: 'brief' as const, title: 'F', body, by: 'ann' })
const ends: (() => unknown)[] = []
afterEach(async () => {
  for (const end of ends.splice(0).reverse()) await end()
})

/** The database of a file without a store around it. */
async function bare(file: string) {
  const { Kysely, SqliteDialect } = await import('kysely')
  const database = await openFile(file, 5000)
  return { database, db: new Kysely<Tables>({ dialect: new SqliteDialect({ database }) }) }
}

/** Steps that end in the middle of the second. */
const half = [
  STEPS[0]!,
  async (within: Parameters<(typeof STEPS)[number]>[0]) => {
    await STEPS[1]!(within)
    throw new Error('ended here')
  },
]

function file() {
  const database = sqliteFile()
  ends.push(database.end)
  return database
}

describe('a day’s work', () => {
  it('survives the end of the program in the middle of its saves: what was promised is there, and whole', async () => {
    for (const { promised, there, whole } of await killRounds(5)) {
      expect(there).toBeGreaterThanOrEqual(promised)
      expect(whole).toBe(true)
    }
  }, 120_000)

  it('survives a full disk: the save that does not fit is refused whole, and the next one that fits is kept', async () => {
    const place = file()
    await (await place.open()).close()
    const { database, db } = await bare(place.file)
    const store = new Store(db)
    ends.push(() => store.close())
    const { id } = await store.add('w', toKeep('small'))
    const { page_count: pages } = database.prepare('pragma page_count').get() as { page_count: number }
    database.exec(`pragma max_page_count = ${pages + 2}`)
    const failed = await store.save('w', id, 1, toKeep('x'.repeat(100_000))).catch((error) => error)
    expect(unavailable(failed)).toMatchObject({ status: 507 })
    expect((await store.revisions('w', id)).map(({ body }) => body)).toEqual(['small'])
    expect(await store.save('w', id, 1, toKeep('little'))).toMatchObject({ ok: true, revision: 2 })
  })

  it('survives a row that can no longer be read: that revision says so, all else stands', async () => {
    const place = file()
    const store = await place.open()
    ends.push(() => store.close())
    const { id } = await store.add('w', toKeep(1))
    await store.save('w', id, 1, toKeep(2))
    const other = await store.add('w', toKeep(3))
    const { database } = await bare(place.file)
    database.prepare('update revision set body = ? where id = ? and revision = 2').run('{"torn', id)
    database.close()
    expect((await store.revisions('w', id)).map(({ body, unreadable }) => [body, unreadable])).toEqual([
      [null, true],
      [1, false],
    ])
    expect(await store.restore('w', id, 1, 2, 'ben')).toMatchObject({ ok: true, revision: 3 })
    const out = await store.exportAll('w')
    expect(out.things.map((thing) => thing.id).sort()).toEqual([id, other.id].sort())
  })

  it('survives an end in the middle of bringing the database to a new shape', async () => {
    const place = file()
    const { mkdirSync } = await import('node:fs')
    const { dirname } = await import('node:path')
    mkdirSync(dirname(place.file), { recursive: true })
    const { db } = await bare(place.file)
    await expect(migrate(db, async () => {}, half)).rejects.toThrow('ended here')
    await db.destroy()
    const all = await Promise.all([place.open(), place.open(), place.open()])
    ends.push(...all.map((store) => () => store.close()))
    expect(await all[2]!.people.isAnybodyThere()).toBe(false)
    expect(await all[0]!.add('w', toKeep(1))).toMatchObject({ ok: true })
  })

  it('is not touched by an older program', async () => {
    const place = file()
    await (await place.open()).close()
    const { database } = await bare(place.file)
    database.prepare('insert into step (done) values (?)').run(STEPS.length + 1)
    database.close()
    await expect(place.open()).rejects.toThrow(/newer gritwise/)
  })

  it.skipIf(!hasPostgres)(
    'survives a database that goes and comes back: told meanwhile, whole afterwards',
    async () => {
      const database = await startPostgres()
      ends.push(database.end)
      const keeping = keepingIn({ url: database.address.DATABASE_URL! })
      ends.push(() => keeping.close())
      const store = await keeping.store()
      const { id } = await store.add('w', toKeep(1))
      database.stop()
      const gone = await store.save('w', id, 1, toKeep(2)).catch((error) => error)
      expect(unavailable(gone)).toBeInstanceOf(Busy)
      database.again()
      expect(await store.save('w', id, 1, toKeep(3))).toMatchObject({ ok: true, revision: 2 })
      expect((await store.revisions('w', id)).map(({ body }) => body)).toEqual([3, 1])
    },
  )

  it.skipIf(!hasPostgres)(
    'begins in one database though several programs start on it at once, after one that was ended half-way',
    async () => {
      const database = await startPostgres()
      ends.push(database.end)
      const url = database.address.DATABASE_URL!
      const { Kysely, PostgresDialect } = await import('kysely')
      const { default: pg } = await import('pg')
      const db = new Kysely<Tables>({
        dialect: new PostgresDialect({ pool: new pg.Pool({ connectionString: url }) }),
      })
      await expect(migrate(db, async () => {}, half)).rejects.toThrow('ended here')
      await db.destroy()
      const all = await Promise.all([1, 2, 3].map(() => openStore({ url })))
      ends.push(...all.map((store) => () => store.close()))
      const { id } = await all[0]!.add('w', toKeep(1))
      expect(await all[2]!.get('w', id)).toMatchObject({ revision: 1 })
    },
  )
})
