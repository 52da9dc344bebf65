import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { createApp } from '../../src/web/app.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { house } from './house.ts'

const brief = demos[0]!.brief
const packed = packBrief(brief)
const get = (path: string) => house.request(path)
const card = `b=${packed}&point=1&seed=5&machine=xray-dual`

describe('test card', () => {
  it('shows the pictures of the machines asked for, each labelled simulated', async () => {
    const body = await (await get(`/card?${card}`)).text()
    expect(body).toContain('Simulated')
    expect(body.match(/<image/g)?.length).toBeGreaterThan(1)
    expect(body).toMatch(/aria-label="Simulated radiograph/)
    expect(body).toMatch(/<th scope="rowgroup"[^>]*>[^<]+<\/th>/)
    expect(body).toMatch(/found \d+ of \d+ pieces, false alarms \d+/)
  })

  it('gives a picture as PNG, the same bytes for the same seed', async () => {
    const body = await (await get(`/card?${card}`)).text()
    const path = body.match(/href="(\/card\/picture\.png[^"]*)"/)![1]!.replaceAll('&amp;', '&')
    const answer = await get(path)
    expect(answer.headers.get('content-type')).toBe('image/png')
    const first = Buffer.from(await answer.arrayBuffer())
    expect(first.subarray(1, 4).toString()).toBe('PNG')
    expect(Buffer.from(await (await createApp().request(path)).arrayBuffer()).equals(first)).toBe(true)
  })

  it('gives the runs as CSV with one row a piece', async () => {
    const text = await (await get(`/card/runs.csv?${card}`)).text()
    const [header, ...rows] = text.trim().split('\n')
    expect(header).toMatch(/^equipment,piece,material,shape,sizeMm,/)
    expect(rows.length).toBeGreaterThan(10)
    expect(rows.every((row) => row.startsWith('xray-dual,'))).toBe(true)
  })

  it('sends its runs straight on to be read, which calls them simulated', async () => {
    const html = await (await get(`/card?${card}`)).text()
    const table = html.match(/name="table" value="([^"]*)"/)![1]!.replaceAll('&quot;', '"')
    expect(table).toBe(await (await get(`/card/runs.csv?${card}`)).text())
    const body = new FormData()
    body.set('b', packed)
    body.set('table', table)
    const read = await house.request('/runs', { method: 'POST', body })
    expect(read.status).toBe(200)
    expect(await read.text()).toContain('demonstrate nothing of a machine')
  })

  it('refuses a seed that is no number and a machine the point does not have', async () => {
    expect((await get(`/card?b=${packed}&seed=abc`)).status).toBe(422)
    expect((await get(`/card?b=${packed}&machine=nope`)).status).toBe(422)
  })

  it('draws at a voltage and with sizes that a person sets, and says what is wrong with them', async () => {
    const body = await (await get(`/card?${card}&kv-xray-dual=75&sizes-0=6,7`)).text()
    expect(body).toMatch(/75 kV, [\d.]+ mA/)
    expect(body).toContain('value="75"')
    expect(body).toContain('value="6, 7"')
    const rows = (await (await get(`/card/runs.csv?${card}&sizes-0=6,7`)).text()).split('\n')
    const first = rows.filter((row) => row.split(',')[2] === brief.contaminants[0]!.material)
    expect(first.map((row) => row.split(',')[4])).toEqual(['6', '7'])
    const untaught = await get(`/card?${card}&taught=20`)
    expect(untaught.status).toBe(422)
    expect(await untaught.text()).toContain(
      'taught on clean packs (&quot;packs&quot;); &quot;20&quot; was given',
    )
    const wrong = await get(`/card?${card}&kv-xray-dual=900`)
    expect(wrong.status).toBe(422)
    expect(await wrong.text()).toContain('20 to 150 kV')
    expect((await get(`/card?${card}&sizes-0=big`)).status).toBe(422)
  })

  it('begins at the first point that has an x-ray machine, and says so where none has', async () => {
    const { brief: mince } = demos.find(({ id }) => id === 'mince')!
    const answer = await get(`/card?b=${packBrief({ ...mince, equipment: ['coil-pipe'] })}`)
    expect(answer.status).toBe(200)
    expect(await answer.text()).toContain('no radiograph to draw')
  })

  it('answers programs with the card and base64 pictures, or the problems', async () => {
    const post = (body: unknown, query = '') =>
      house.request(`/api/card${query}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(body),
      })
    const answer = await post(brief, '?point=1&seed=5&machine=xray-dual')
    expect(answer.status).toBe(200)
    const json = (await answer.json()) as {
      simulated: boolean
      machines: { pictures: { pngBase64: string }[] }[]
    }
    expect(json.simulated).toBe(true)
    expect(Buffer.from(json.machines[0]!.pictures[0]!.pngBase64, 'base64').subarray(1, 4).toString()).toBe(
      'PNG',
    )
    expect((await post({})).status).toBe(422)
    expect((await post(brief, '?point=9')).status).toBe(422)
  })
})
