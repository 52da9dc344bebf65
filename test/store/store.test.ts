import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { exportSchema, KINDS } from '../../src/store/kept.ts'
import type { Store } from '../../src/store/store.ts'
import { type Database, hasPostgres, sqliteFile, startPostgres, warnOfNoPostgres } from './databases.ts'

warnOfNoPostgres()

const brief = (mustFindMm: number) => ({ product: { food: 'cheddar' }, contaminants: [{ mustFindMm }] })
const toKeep = (title: string, mustFindMm = 2) => ({
  kind: 'brief' as const,
  title,
  body: brief(mustFindMm),
  by: 'ann',
})

describe.each(['SQLite', ...(hasPostgres ? ['PostgreSQL'] : [])])('what is kept in %s', (name) => {
  let database: Database
  let store: Store
  beforeAll(async () => {
    database = name === 'SQLite' ? sqliteFile() : await startPostgres()
    store = await database.open()
  })
  afterAll(async () => {
    await store?.close()
    database?.end()
  })

  it('comes back as it was given, after the program has ended too', async () => {
    const { id } = await store.add('w', {
      ...toKeep('Käse'),
      versions: { gritwise: '1', rules: '2', reference: '3' },
    })
    const again = await database.open()
    expect(await again.get('w', id)).toMatchObject({ title: 'Käse', kind: 'brief', revision: 1 })
    expect(await again.revision('w', id, 1)).toMatchObject({
      body: brief(2),
      by: 'ann',
      done: 'kept',
      versions: { rules: '2' },
      unreadable: false,
    })
    await again.close()
  })

  it('keeps every revision; of two that change the same one, the second is shown the first', async () => {
    const { id } = await store.add('w', toKeep('A'))
    expect(await store.save('w', id, 1, toKeep('A', 3))).toEqual({ ok: true, id, revision: 2 })
    const late = await store.save('w', id, 1, { ...toKeep('A', 4), by: 'ben' })
    expect(late).toMatchObject({ ok: false, theirs: { revision: 2, body: brief(3), by: 'ann' } })
    expect((await store.revisions('w', id)).map(({ revision, body }) => [revision, body])).toEqual([
      [2, brief(3)],
      [1, brief(2)],
    ])
    expect(await store.save('w', 'nothing', 1, toKeep('A'))).toBeNull()
  })

  it('lets exactly one of many writers at once through, from two programs', async () => {
    const { id } = await store.add('w', toKeep('race'))
    const other = await database.open()
    const all = await Promise.all(
      Array.from({ length: 8 }, (_, k) => (k % 2 ? store : other).save('w', id, 1, toKeep('race', k))),
    )
    expect(all.filter((one) => one?.ok)).toHaveLength(1)
    expect(await store.revisions('w', id)).toHaveLength(2)
    await other.close()
  })

  it('restores a revision as the latest, and brings back what was taken away', async () => {
    const { id } = await store.add('w', toKeep('B', 2))
    await store.save('w', id, 1, toKeep('B', 3))
    expect(await store.restore('w', id, 1, 2, 'ben')).toMatchObject({ ok: true, revision: 3 })
    expect(await store.revision('w', id, 3)).toMatchObject({
      body: brief(2),
      by: 'ben',
      done: 'restored from 1',
    })
    await store.takeAway('w', id, 3, 'ben')
    expect((await store.list('w')).map((one) => one.id)).not.toContain(id)
    await store.restore('w', id, 3, 4, 'ben')
    expect((await store.list('w')).map((one) => one.id)).toContain(id)
  })

  it('keeps workspaces apart', async () => {
    const { id } = await store.add('theirs', toKeep('C'))
    expect(await store.get('w', id)).toBeNull()
    expect(await store.revisions('w', id)).toEqual([])
    expect(await store.save('w', id, 1, toKeep('C'))).toBeNull()
    expect(await store.list('theirs')).toHaveLength(1)
  })

  it('lists page by page, changed last first, whatever the clock does meanwhile', async () => {
    const back = store.at(() => new Date('2001-01-01'))
    const ids: string[] = []
    for (let k = 0; k < 5; k++) ids.push((await store.add('pages', toKeep(`p${k}`))).id)
    await back.save('pages', ids[0]!, 1, toKeep('p0', 9))
    expect((await store.get('pages', ids[0]!))!.changedAt > '2020').toBe(true)
    const revisions = await store.revisions('pages', ids[0]!)
    expect(revisions.map(({ revision, at }) => [revision, at.slice(0, 4) === '2001'])).toEqual([
      [2, true],
      [1, false],
    ])
    expect((await store.trail.latest('pages')).filter(({ thing }) => thing?.id === ids[0])).toHaveLength(2)
    const seen: string[] = []
    for (let behind = null as Awaited<ReturnType<Store['get']>>; ; ) {
      const page = await store.list('pages', { most: 2, behind })
      if (page.length === 0) break
      seen.push(...page.map(({ id }) => id))
      behind = page.at(-1)!
    }
    expect(seen.sort()).toEqual([...ids].sort())
  })

  it('takes everything out as one file and in again, with its history, without doubling anything', async () => {
    const { id } = await store.add('out', toKeep('D', 2))
    await store.save('out', id, 1, toKeep('D', 3))
    for (const kind of KINDS.filter((one) => one !== 'brief'))
      await store.add('out', {
        ...toKeep(kind),
        kind,
        versions: { gritwise: '1', rules: '2', reference: '3' },
      })
    const file = exportSchema.parse(JSON.parse(JSON.stringify(await store.exportAll('out'))))
    expect(await store.importAll('out', file, 'ben')).toEqual({ added: 0, changed: 0, same: KINDS.length })
    expect(await store.importAll('elsewhere', file, 'ben')).toEqual({
      added: KINDS.length,
      changed: 0,
      same: 0,
    })
    expect((await store.list('elsewhere', { kind: 'runs' })).map(({ title }) => title)).toEqual(['runs'])
    const [copy] = await store.list('elsewhere', { kind: 'brief' })
    expect((await store.revisions('elsewhere', copy!.id)).map(({ body }) => body)).toEqual([
      brief(3),
      brief(2),
    ])
    await store.save('out', id, 2, toKeep('D', 5))
    expect(await store.importAll('out', file, 'ben')).toEqual({
      added: 0,
      changed: 1,
      same: KINDS.length - 1,
    })
    expect((await store.revision('out', id, 4))!.body).toEqual(brief(3))
  })

  it('knows who holds a sitting, in every program on it, until it is over', async () => {
    const password = 'a long enough password'
    const ann = { name: 'ann', workspace: 'w', role: 'author' as const }
    expect(await store.people.add(ann, password, 'ben')).toBe(true)
    expect(await store.people.add(ann, password, 'ben')).toBe(false)
    const signed = await store.people.signIn('ann', password)
    if (signed.kind !== 'in') throw new Error(signed.kind)
    const other = await database.open()
    expect(await other.people.holding(signed.key)).toEqual(ann)
    expect(await other.people.holding('another')).toBeNull()
    const at = (hours: number) => other.at(() => new Date(Date.now() + hours * 3_600_000))
    // A clock that went back by an hour ends no sitting; one that was days ahead leaves none behind.
    expect(await at(-1).people.holding(signed.key)).toEqual(ann)
    const ahead = await at(48).people.signIn('ann', password)
    expect(ahead.kind === 'in' && (await store.people.holding(ahead.key))).toBeNull()
    const later = at(13)
    expect(await later.people.holding(signed.key)).toBeNull()
    expect(await store.people.holding(signed.key)).toBeNull()
    await other.close()
  })

  it('tells who changed what, and nobody else', async () => {
    await store.people.add({ name: 'cid', workspace: 'trail', role: 'reader' }, null, 'ann')
    const { id } = await store.add('trail', toKeep('T'))
    const done = await store.trail.latest('trail')
    expect(done.map(({ who, what }) => `${who} ${what}`).sort()).toEqual([
      'ann added cid as reader',
      'ann kept',
    ])
    expect(done.find(({ thing }) => thing)!.thing).toEqual({ id, title: 'T', revision: 1 })
    expect(await store.people.named('cid')).toMatchObject({ role: 'reader' })
    expect(await store.people.signIn('cid', '')).toEqual({ kind: 'wrong' })
  })
})
