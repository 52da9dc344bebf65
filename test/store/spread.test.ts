import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { LineProduct } from '../../src/contract/index.ts'
import type { Batch, Worked } from '../../src/lines/advise-row.ts'
import { type OpenedTable, openTable, type Workforce } from '../../src/lines/read-lines.ts'
import { bytesSource } from '../../src/lines/table-source.ts'
import { Queue, type QueueSettings } from '../../src/store/queue.ts'
import type { Store } from '../../src/store/store.ts'
import { begin, productsOf, type Shared, spreadOut, takeBatches } from '../../src/web/lines/spread.ts'
import { hasPostgres, startPostgres, warnOfNoPostgres } from './databases.ts'

warnOfNoPostgres()

const HEAD = 'title;food;heightMm;widthMm;lengthMm;speedMPerMin\n'
async function tableOf(rows: number): Promise<OpenedTable> {
  const text = HEAD + Array.from({ length: rows }, (_, k) => `p${k};cheddar;30;100;200;20\n`).join('')
  const opened = await openTable(bytesSource(new TextEncoder().encode(text)), null)
  if (!opened.ok) throw new Error('the table is in order')
  return opened.table
}

/** Works rows out without any physics: each is told by its title, and who worked on it. */
const told =
  (who: string, seen: string[]) =>
  async (batch: Batch): Promise<Worked> => {
    await new Promise((resolve) => setTimeout(resolve, 2))
    const products = batch.rows.map((row): LineProduct => {
      const title = 'cells' in row ? row.cells[0]! : ''
      seen.push(title)
      return { row: row.row, title, carried: {}, ok: false, problems: [{ column: '', message: who }] }
    })
    return { products, versions: null }
  }
const dead: Workforce['work'] = () => new Promise(() => {})

describe.skipIf(!hasPostgres)('a table on PostgreSQL, worked on by several programs', () => {
  let database: Awaited<ReturnType<typeof startPostgres>>
  let store: Store
  const ends: (() => Promise<unknown>)[] = []
  beforeAll(async () => {
    database = await startPostgres()
    store = await database.open()
  })
  afterAll(async () => {
    for (const end of ends.reverse()) await end()
    await store?.close()
    database?.end()
  })

  async function shared(name: string, settings: Partial<QueueSettings>): Promise<Shared> {
    const queue = await Queue.open(database.address.DATABASE_URL!, name, settings)
    ends.push(() => queue.close())
    return { tables: store.tables, queue }
  }
  async function all(coming: ReturnType<typeof productsOf>) {
    const titles: string[] = []
    let step = await coming.next()
    for (; !step.done; step = await coming.next()) titles.push(step.value.title)
    return { titles, summary: step.value }
  }
  const inOrder = (rows: number) => Array.from({ length: rows }, (_, k) => `p${k}`)
  const two = { patienceS: 1, lookS: 1 }

  it('comes out whole, in order and every product once, though one of three dies with a batch in its hands', async () => {
    const stop = new AbortController()
    const seen: string[] = []
    const [first, second, third] = await Promise.all([1, 2, 3].map(() => shared('lines-test', two)))
    let died = false
    const isDead = new AbortController()
    // Takes one batch and never comes back.
    void takeBatches(first!, { atOnce: 1, work: dead }, isDead.signal, () => {
      died = true
      isDead.abort()
    })
    const coming = spreadOut(first!, await tableOf(81))
    const next = coming.next()
    await expect.poll(() => died).toBe(true)
    const working = [second!, third!].map((one, at) =>
      takeBatches(one, { atOnce: 2, work: told(`w${at}`, seen) }, stop.signal),
    )
    const step = await next
    const { titles, summary } = await all(coming)
    stop.abort()
    await Promise.all(working)
    expect([(step.value as LineProduct).title, ...titles]).toEqual(inOrder(81))
    expect(summary.rows).toBe(81)
    expect([...seen].sort()).toEqual(inOrder(81).sort())
  })

  it('is opened by many programs at the same moment', async () => {
    await Promise.all(Array.from({ length: 12 }, (_, k) => shared(`lines-at-once-${k % 4}`, two)))
  })

  it('is found by every program by its number, and says which rows nobody could work out', async () => {
    const one = await shared('lines-twice', { ...two, again: 0 })
    const id = await begin(one, await tableOf(6))
    const isDead = new AbortController()
    void takeBatches(one, { atOnce: 1, work: dead }, isDead.signal, () => isDead.abort())
    await expect.poll(() => isDead.signal.aborted).toBe(true)
    const stop = new AbortController()
    const other = await database.open()
    ends.push(() => other.close())
    const working = takeBatches(one, { atOnce: 1, work: told('w', []) }, stop.signal)
    const { titles, summary } = await all(productsOf({ tables: other.tables }, id))
    stop.abort()
    await working
    expect(titles).toEqual(inOrder(6))
    expect(summary.bad).toBe(6)
    const [lost] = (await store.tables.worked(id, 0, 1)) as Worked[]
    expect(JSON.stringify(lost)).toContain('every program that tried ended')
  })

  it('comes out whole though the database goes and comes back in the middle of it', async () => {
    const one = await shared('lines-away', two)
    const stop = new AbortController()
    const seen: string[] = []
    const slowly = async (batch: Batch) => {
      await new Promise((resolve) => setTimeout(resolve, 100))
      return told('w', seen)(batch)
    }
    const coming = productsOf({ tables: store.tables }, await begin(one, await tableOf(60)))
    const working = takeBatches(one, { atOnce: 1, work: slowly }, stop.signal)
    const first = (await coming.next()).value as LineProduct
    database.stop()
    database.again()
    const { titles } = await all(coming)
    stop.abort()
    await working
    expect([first.title, ...titles]).toEqual(inOrder(60))
  }, 60_000)
})
