import { afterAll, describe, expect, it } from 'vitest'
import { packBrief, unpackBrief } from '../../src/web/asked/packed-brief.ts'
import { keepingIn } from '../../src/web/kept-store/keeping.ts'
import { workedHere } from '../../src/web/lines/table-work.ts'
import { type WayIn, wayInOf } from '../../src/web/people/way-in.ts'
import { door as frontDoor } from '../../src/web/serving/door.ts'
import { ownThread } from '../../src/web/serving/own-thread.ts'
import { sqliteFile } from '../store/databases.ts'
import { brief as advised } from '../views/fixture.ts'
import { formOf, app as pages, text } from './stand-in.ts'
import { labelsOn, reviewedLabels } from './words/labels.ts'

const database = sqliteFile()
const brief = (mustFindMm: number) => ({
  title: 'Cheddar block',
  product: { food: 'cheddar' },
  points: [{ heightMm: 80, widthMm: 100, lengthMm: 200, speedMPerMin: 20 }],
  contaminants: [{ material: 'ss316', mustFindMm }],
})
const nobody = { atOnce: 1, work: () => Promise.reject(new Error('none')) }
const open: { close: () => Promise<void> }[] = []
/** Labels of a page that nobody has reviewed; what a person named is no label. */
const unknownLabels = (html: string) =>
  [...labelsOn(html)]
    .map((label) => label.replace(/^.*(?:Cheddar block|Kernels).*$/, ''))
    .filter((label) => label !== '' && !reviewedLabels()[label])
const tokenIn = (page: string) => /name="token" value="([\w-]+)"/.exec(page)?.[1] ?? ''
function program(wayIn: WayIn, file = database.file) {
  const own = ownThread({ tables: workedHere(nobody), keeping: keepingIn({ file }), wayIn }, (request) =>
    new URL(request.url).pathname === '/advice/in-short.json' ? pages.fetch(request) : new Response('other'),
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
    expect(history).toContain('contaminants.stainless steel 316.mustFindMm : 2 → 3')

    const late = await post(at, { b: packBrief(brief(4)), revision: '1' })
    expect(late.status).toBe(409)
    const both = await late.text()
    expect(both).toContain(packBrief(brief(3)))
    expect(unknownLabels(both)).toEqual([])
    expect(both).toContain(packBrief(brief(4)))
    expect(text(both)).toContain('contaminants.stainless steel 316.mustFindMm : 3 → 4')

    // A restore and a taking away that come too late can be asked again, of what was kept meanwhile.
    for (const [ending, fields] of [
      ['restore', { restore: '1' }],
      ['away', {}],
    ] as const) {
      const tooLate = await post(`${at}/${ending}`, { ...fields, revision: '1' })
      expect(tooLate.status).toBe(409)
      const html = await tooLate.text()
      expect(html).toContain(`action="${at}/${ending}"`)
      expect(html).toContain('name="revision" value="2"')
      expect(unknownLabels(html)).toEqual([])
    }

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

  it('is an advice under its versions, too: what it said stays, and what a later one says otherwise is told', async () => {
    const { get, post } = program(wayInOf('127.0.0.1', {}))
    const of = (mustFindMm: number) => {
      const [first, ...others] = advised.contaminants
      return packBrief({ ...advised, contaminants: [{ ...first!, mustFindMm }, ...others] })
    }
    const at = (await post('/kept', { b: of(2), what: 'advice' })).headers.get('location')!
    const page = await (await get(at)).text()
    expect(text(page)).toMatch(/gritwise [\d.]+, rule book .+ reference data/)
    expect(text(page)).toContain('Safe to promise, mm')
    expect(unknownLabels(page)).toEqual([])
    const sent = { b: of(3), what: 'advice', revision: '1' }
    expect((await post(at, sent)).headers.get('location')).toBe(at)
    expect(text(await (await get(at)).text())).toContain(
      'brief.contaminants.quartz, flint or chert.mustFindMm : 2 → 3',
    )
    const late = await post(at, sent)
    expect(late.status).toBe(409)
    expect(await late.text()).toContain('name="what" value="advice"')
    expect((await post(at, { b: of(3), revision: '2' })).status).toBe(422)
    expect(text(await (await get('/kept?kind=advice')).text())).toContain('advice 2 ')
    expect(text(await (await get('/kept?kind=runs')).text())).toContain('Nothing of this kind is kept yet')
  })

  it('is a table of test runs, with the brief it was run for, read again as it was typed', async () => {
    const { get, post } = program(wayInOf('127.0.0.1', {}))
    const table = (found: number) =>
      `equipment,material,sizeMm,position,runs,found\ncoil-single,ss316,2,centre,29,${found}\n`
    const runs = (found: number) => ({ what: 'runs', b: packBrief(brief(2)), table: table(found) })
    const asked = await (await post('/kept/runs', { ...runs(29), token: '' })).text()
    expect(asked).toContain('Keep the test runs')
    expect(unknownLabels(asked)).toEqual([])
    expect(text(await (await get('/kept?kind=runs')).text())).toContain('Nothing of this kind')
    const at = (await post('/kept', runs(29))).headers.get('location')!
    const id = at.split('/').at(-1)
    expect(await (await post('/kept/runs', runs(28))).text()).toContain(`value="${id}:1"`)
    await post('/kept', { ...runs(28), onto: `${id}:1` })
    const page = await (await get(at)).text()
    expect(text(page)).toContain(
      'coil-single,ss316,2,centre,29,29&quot; → &quot;coil-single,ss316,2,centre,29,28&quot;',
    )
    expect(page).toContain('action="/runs"')
    expect(unknownLabels(page)).toEqual([])
    expect(page).toContain(`value="${table(29)}"`)
    expect((await post('/kept', { what: 'runs', table: 'equipment;found\nx' })).status).toBe(422)
  })

  it('is machines and materials of one’s own, for other briefs', async () => {
    const { get, post } = program(wayInOf('127.0.0.1', {}))
    const material = { material: 'custom', ownName: 'slate', kind: 'stone', densityGPerCm3: 2.7 }
    const elements = 'O 49, Si 33, Al 18'
    const machine = { id: 'quoted-1', label: 'pipe detector', family: 'coil', frequenciesKHz: [300] }
    const from = packBrief({
      ...brief(2),
      equipment: [machine],
      contaminants: [{ ...material, elements }],
    })
    expect((await post('/kept', { b: packBrief(brief(2)), what: 'own' })).status).toBe(422)
    const at = (await post('/kept', { b: from, what: 'own' })).headers.get('location')!
    expect(text(await (await get(at)).text())).toMatch(/pipe detector\s+slate/)
    const other = { ...brief(2), equipment: [{ ...machine, frequenciesKHz: [100] }] }
    const into = async (b: unknown) => {
      const to = (await get(`${at}/into?b=${packBrief(b)}`)).headers.get('location')!
      return unpackBrief(/^\/(?:b\/|brief\?b=)([\w-]+)/.exec(to)![1]!) as { brief: typeof other }
    }
    const made = await into(other)
    expect(made.brief.equipment).toMatchObject([
      { id: 'quoted-1' },
      { id: 'quoted-1-2', frequenciesKHz: [300] },
    ])
    expect(made.brief.contaminants).toHaveLength(2)
    expect(await into(made.brief)).toEqual(made)
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
