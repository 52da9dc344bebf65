import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { advise } from '../../../src/advise.ts'
import { demos } from '../../../src/brief/demos.ts'
import { adviseBatch } from '../../../src/lines/advise-row.ts'
import { openTable, products } from '../../../src/lines/read-lines.ts'
import { bytesSource } from '../../../src/lines/table-source.ts'
import { packBrief } from '../../../src/web/asked/packed-brief.ts'
import { workedHere } from '../../../src/web/lines/table-work.ts'
import { SAME_AGAIN } from '../../../src/web/same-again.ts'
import { door } from '../../../src/web/serving/door.ts'
import { ownThread } from '../../../src/web/serving/own-thread.ts'
import { type Pool, startPool } from '../../../src/web/serving/pool.ts'

const bars = packBrief(demos.find(({ id }) => id === 'mince')!.brief)
const nuts = packBrief(demos.find(({ id }) => id === 'hazelnuts')!.brief)

describe('pages answered in workers', () => {
  let pool: Pool
  beforeAll(() => {
    pool = startPool([], { threads: 1, queue: 2, budgetMs: 60_000 })
  })
  afterAll(() => pool.close())
  const get = (path: string, init: RequestInit = {}) => door(pool.answer).request(path, init)

  it('are those of the program, with the guards of the door', async () => {
    const page = await get(`/brief?b=${bars}`)
    expect(page.status).toBe(200)
    expect(page.headers.get('content-security-policy')).toContain("default-src 'self'")
    expect(page.headers.get('cache-control')).toBe('no-store')
    expect(page.headers.has(SAME_AGAIN)).toBe(false)
    expect(await page.text()).toContain('<form')
    expect((await get('/nowhere')).status).toBe(404)
  })

  it('take bodies, and refuse in the form the asker can use', async () => {
    const sent = { method: 'POST', headers: { 'content-type': 'application/json' }, body: '{"product":3}' }
    const answer = await get('/api/advice', sent)
    expect(answer.status).toBe(422)
    const { problems } = (await answer.json()) as { problems: { path: string }[] }
    expect(problems.map(({ path }) => path)).toContain('product')
  })

  it('draw a card of several machines, and refuse what no card can be in words', async () => {
    const page = await get(`/card?b=${nuts}`)
    expect(page.status).toBe(200)
    expect((await page.text()).match(/class="sheet-picture"/g)?.length).toBeGreaterThanOrEqual(3)
    const none = await get(`/card?b=${nuts}&machine=xray-nowhere&machine=xray-single`)
    expect(none.status).toBe(422)
    expect(await none.text()).toContain('is no x-ray machine of this point')
  })

  it('share their workers with the rows of tables, which come back in order', async () => {
    const head = 'title,food,heightMm,widthMm,lengthMm,speedMPerMin,equipment,contaminants.0.material\n'
    const rows = Array.from({ length: 9 }, (_, k) => `p${k},cheddar,3${k},100,200,20,coil-single,ss316\n`)
    const keeping = { store: () => Promise.reject(new Error('none')), close: async () => {} }
    const open = { tables: workedHere(pool.workforce), keeping, wayIn: { kind: 'this-machine' as const } }
    const { answers, close } = ownThread(open, pool.answer)
    const sent = { method: 'POST', headers: { 'content-type': 'text/csv' }, body: head + rows.join('') }
    const [answer, page] = await Promise.all([
      door(answers).request('/api/lines', sent),
      door(answers).request('/examples'),
    ])
    expect(page.status).toBe(200)
    const values = (await answer.text())
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect(values.slice(0, -1).map(({ product }) => product.title)).toEqual(rows.map((_, k) => `p${k}`))
    // Asked here of the engine as well, there of the explainer alone.
    const opened = await openTable(bytesSource(new TextEncoder().encode(head + rows.join(''))), null)
    if (!opened.ok) throw new Error('the table is in order')
    const byEngine = products(opened.table, { atOnce: 1, work: (batch) => adviseBatch(advise, batch) })
    for (const { product } of values.slice(0, 3))
      expect(product).toEqual(JSON.parse(JSON.stringify((await byEngine.next()).value)))
    expect(values.at(-1).summary).toMatchObject({ products: 9, bad: 0 })
    await close()
  })

  it('wait their turn as far as the queue goes; beyond it the answer says when to come again', async () => {
    let answered = 0
    const asked = Array.from({ length: 6 }, async () => {
      const answer = await get(`/advice?b=${bars}`)
      if (answer.status === 200) answered++
      return answer
    })
    // Meanwhile a page that was given before is given again: it asks no worker.
    expect((await get(`/brief?b=${bars}`)).status).toBe(200)
    expect(answered).toBe(0)
    const many = await Promise.all(asked)
    const refused = many.filter(({ status }) => status === 503)
    expect(many.filter(({ status }) => status === 200).length).toBeGreaterThanOrEqual(1)
    expect(refused.length).toBeGreaterThanOrEqual(1)
    expect(Number(refused[0]?.headers.get('retry-after'))).toBeGreaterThan(0)
    expect(await refused[0]?.text()).toContain('<h1>Not now</h1>')
  })
})

describe('work beyond its time', () => {
  it('is ended with its worker, and the next request finds another', async () => {
    const pool = startPool([], { threads: 1, queue: 4, budgetMs: 50 })
    const late = await door(pool.answer).request(`/advice?b=${nuts}`)
    expect(late.status).toBe(503)
    expect(await late.text()).toContain('longer than')
    await pool.close()
  })

  it('goes on for a reader that has gone no longer than a moment', async () => {
    const pool = startPool([], { threads: 1, queue: 4, budgetMs: 60_000 })
    const leaving = new AbortController()
    const left = pool.answer(new Request(`http://here/card?b=${nuts}`, { signal: leaving.signal }))
    leaving.abort()
    await expect(left).rejects.toMatchObject({ status: 503 })
    await pool.close()
  })
})
