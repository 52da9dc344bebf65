import { describe, expect, it } from 'vitest'
import { lineProductSchema, linesSummarySchema } from '../../src/contract/index.ts'
import { house } from './house.ts'
import { formOf, packed } from './stand-in.ts'

const TABLE = `title;line;food;heightMm;widthMm;lengthMm;speedMPerMin;equipment;contaminants.0.material;contaminants.0.mustFindMm
Thin;A;cheddar;30;100;200;20;coil-single;ss316;2
Thick;A;cheddar;60;100;200;20;coil-single;ss316;2
Wrong;A;cheddar;60;100;200;fast;coil-single;ss316;2
`
const send = (type: string, body: string, accept = '*/*') =>
  house.request('/api/lines', { method: 'POST', body, headers: { 'content-type': type, accept } })

describe('POST /api/lines', () => {
  it('streams the products in order, the summary last', async () => {
    const answer = await send('application/json', JSON.stringify({ csv: TABLE }))
    expect(answer.headers.get('content-type')).toContain('application/x-ndjson')
    const values = (await answer.text())
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect(values.slice(0, -1).map(({ product }) => lineProductSchema.parse(product).row)).toEqual([2, 3, 4])
    expect(linesSummarySchema.parse(values.at(-1).summary)).toMatchObject({ products: 2, bad: 1 })
  })

  it('gives CSV for CSV', async () => {
    const answer = await send('text/csv', TABLE, 'text/csv')
    expect((await answer.text()).split('\r\n')).toHaveLength(5)
  })

  it('refuses what is no table, with the column', async () => {
    const answer = await send('text/csv', 'food;hight\ncheddar;3')
    expect(answer.status).toBe(422)
    expect(await answer.json()).toMatchObject({ problems: [{ path: 'column 2' }] })
    expect((await send('application/json', '{"csv":1}')).status).toBe(422)
    expect((await send('text/plain', TABLE)).status).toBe(415)
  })
})

describe('the page of a table', () => {
  it('works without script: sent, watched, sorted by link, taken along as a file', async () => {
    expect(await (await house.request(`/lines?b=${packed}`)).text()).toContain('What a row leaves out')
    const sent = await house.request('/lines', formOf({ table: TABLE }))
    expect(sent.status).toBe(303)
    const at = sent.headers.get('location')!
    await expect.poll(async () => (await house.request(at)).text()).toContain('Every product')
    const page = await (await house.request(at)).text()
    expect(page).toContain('Row 4, Wrong')
    expect(page).toContain('Thick (row 3)')
    const byTitle = await (await house.request(`${at}?line=A&sort=title`)).text()
    expect(byTitle.indexOf('>Thick</a>')).toBeLessThan(byTitle.indexOf('>Thin</a>'))
    const bySize = /href="[^"]*(sort=A%7Css316[^"#]*)#products"/.exec(page)![1]!
    const sorted = await (await house.request(`${at}?line=A&${bySize}`)).text()
    expect(sorted).toContain('aria-sort="descending"')
    expect(sorted.indexOf('>Thick</a>')).toBeLessThan(sorted.indexOf('>Thin</a>'))
    const csv = await (await house.request(`${at}/products.csv`)).text()
    expect(csv.split('\r\n')).toHaveLength(5)
    const one = await house.request(`${at}/product/3`)
    expect(one.headers.get('location')).toMatch(/^\/advice\?b=/)
    expect((await house.request(`${at}/product/4`)).status).toBe(404)
  })

  it('shows what is wrong with a table, as typed', async () => {
    const answer = await house.request('/lines', formOf({ table: 'food;hight\ncheddar;3' }))
    expect(answer.status).toBe(422)
    expect(await answer.text()).toContain('column 2')
    expect((await house.request('/lines/none')).status).toBe(404)
  })
})
