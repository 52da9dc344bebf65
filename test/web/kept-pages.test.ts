import { afterAll, describe, expect, it } from 'vitest'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { keepingIn } from '../../src/web/kept-store/keeping.ts'
import { workedHere } from '../../src/web/lines/table-work.ts'
import { type WayIn, wayInOf } from '../../src/web/people/way-in.ts'
import { door as frontDoor } from '../../src/web/serving/door.ts'
import { ownThread } from '../../src/web/serving/own-thread.ts'
import { sqliteFile } from '../store/databases.ts'
import { formOf, text } from './stand-in.ts'

const database = sqliteFile()
const brief = (mustFindMm: number) => ({
  title: 'Cheddar block',
  product: { food: 'cheddar' },
  points: [{ heightMm: 80, widthMm: 100, lengthMm: 200, speedMPerMin: 20 }],
  contaminants: [{ material: 'ss316', mustFindMm }],
})
const nobody = { atOnce: 1, work: () => Promise.reject(new Error('none')) }
const open: { close: () => Promise<void> }[] = []
const tokenIn = (page: string) => /name="token" value="([\w-]+)"/.exec(page)?.[1] ?? ''
function program(wayIn: WayIn, file = database.file) {
  const own = ownThread(
    { tables: workedHere(nobody), keeping: keepingIn({ file }), wayIn },
    () => new Response('other'),
  )
  open.push(own)
  const app = frontDoor(own.answers)
  const get = (path: string, headers = {}) => app.request(`http://localhost${path}`, { headers })
  /** The token of a form, from a page that has one. */
  const token = async (headers = {}) => tokenIn(await (await get('/kept', headers)).text())
  return {
    get,
    token,
    post: async (path: string, answers: Record<string, string>, headers = {}) => {
      const form = formOf({ token: await token(headers), ...answers })
      return app.request(`http://localhost${path}`, { ...form, headers: { ...form.headers, ...headers } })
    },
    send: async (path: string, body: FormData) => {
      body.set('token', await token())
      return app.request(`http://localhost${path}`, { method: 'POST', body })
    },
  }
}
afterAll(async () => {
  for (const one of open) await one.close()
  database.end()
})

describe('what is kept, on pages', () => {
  it('is kept, changed, compared, restored, taken out and brought in, without script', async () => {
    const { get, post, send } = program(wayInOf('127.0.0.1', {}))
    expect(await (await get('/kept')).text()).toContain('Nothing is kept yet')
    expect(await (await get(`/kept?b=${packBrief(brief(2))}`)).text()).toContain('Keep “Cheddar block”')
    const at = (await post('/kept', { b: packBrief(brief(2)) })).headers.get('location')!
    expect((await post(at, { b: packBrief(brief(3)), revision: '1' })).headers.get('location')).toBe(at)
    const history = text(await (await get(at)).text())
    expect(history).toContain('contaminants.0.mustFindMm : 2 → 3')

    const late = await post(at, { b: packBrief(brief(4)), revision: '1' })
    expect(late.status).toBe(409)
    const both = await late.text()
    expect(both).toContain(packBrief(brief(3)))
    expect(both).toContain(packBrief(brief(4)))
    expect(text(both)).toContain('contaminants.0.mustFindMm : 3 → 4')

    await post(`${at}/restore`, { restore: '1', revision: '2' })
    expect(text(await (await get(at)).text())).toContain('restored from 1')

    const file = await (await get('/kept/export.json')).text()
    await post(`${at}/away`, { revision: '3' })
    expect(await (await get('/kept')).text()).toContain('Nothing is kept yet')
    const back = new FormData()
    back.set('file', new File([file], 'kept.json'))
    expect((await send('/kept/import', back)).headers.get('location')).toBe('/kept?imported=0-1-0')
    expect(await (await get('/kept')).text()).toContain('Cheddar block')
    const wrong = new FormData()
    wrong.set('file', new File(['{"things":1}'], 'kept.json'))
    expect((await send('/kept/import', wrong)).status).toBe(422)
    expect((await get('/kept/nothing')).status).toBe(404)
  })

  it('is for this machine by its own name, or for whom a trusted proxy names; else for nobody', async () => {
    const here = program(wayInOf('127.0.0.1', {}))
    expect((await here.get('/kept', { host: 'evil.example' })).status).toBe(403)
    const proxied = program(wayInOf('0.0.0.0', { userHeader: 'x-user' }))
    expect((await proxied.get('/kept')).status).toBe(403)
    expect((await proxied.get('/examples')).status).toBe(403)
    const by = { 'x-user': 'ann' }
    const at = (await proxied.post('/kept', { b: packBrief(brief(2)) }, by)).headers.get('location')!
    expect(text(await (await proxied.get(at, by)).text())).toContain('kept by ann')
    const strange = await proxied.post(
      '/kept',
      { b: packBrief(brief(2)) },
      { ...by, 'sec-fetch-site': 'cross-site' },
    )
    expect(strange.status).toBe(403)
  })

  it('says so where nothing can be kept, and goes on answering all else', async () => {
    const { get } = program(wayInOf('127.0.0.1', {}), '/dev/null/kept.sqlite')
    const answer = await get('/kept')
    expect(answer.status).toBeGreaterThanOrEqual(500)
    expect(await (await get('/examples')).text()).toBe('other')
  })
})
