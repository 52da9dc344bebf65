import { beforeAll, describe, expect, it } from 'vitest'
import { comparisonSchema } from '../../src/contract/index.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { input } from '../compare/two-machines.ts'
import { house } from './house.ts'
import { app as standIn, packed as standInPacked, text } from './stand-in.ts'

const packed = packBrief(input)
const get = async (query: string, at = packed) => {
  const answer = await house.request(`/compare?b=${at}${query}`)
  return { status: answer.status, html: await answer.text() }
}

describe('compare quotes', () => {
  let plain: { status: number; html: string }
  beforeAll(async () => {
    plain = await get('&x=p0.xray-single&x=p0.xray-dual')
  })

  it('says first whether the dearer one is needed, and by what it is the dearer', () => {
    const said = text(plain.html)
    expect(plain.status).toBe(200)
    expect(said).toMatch(/By cost and effort .* from cheap to dear: x-ray from above, single energy, then/)
    expect(plain.html.indexOf('class="answer"')).toBeLessThan(plain.html.indexOf('id="differs"'))
    expect(said).toMatch(/is (not )?needed/)
  })

  it('shows only what differs, and names the rest in a line', () => {
    const table = plain.html.split('class="side-by-side"')[1]!.split('</table>')[0]!
    expect(table).toContain('Energies recorded')
    expect(table).not.toContain('Pixel size')
    expect(text(plain.html)).toMatch(/The same for all: .*pixel size/)
  })

  it('knows no price, and works out the cost from what is entered', async () => {
    expect(text(plain.html)).toContain('computed from your numbers only')
    expect(text((await get('&perKWh=0.2')).html)).not.toContain('Sum of what is computed')
    const costs =
      '&x=p0.xray-single&x=p0.xray-dual&daysPerYear=250&perWorkHour=30&perKWh=0.2&perRejectedPack=1.5' +
      ['p0.xray-single', 'p0.xray-dual']
        .map(
          (key, at) =>
            `&${key}.price=${90_000 * (at + 1)}&${key}.years=9&${key}.upkeepPerYear=4000&${key}.kW=2&${key}.workHoursPerDay=0.5`,
        )
        .join('')
    const { html, status } = await get(costs)
    expect(status).toBe(200)
    const said = text(html)
    expect(said).toMatch(/Price, spread over its years 10,000 20,000/)
    expect(said).toMatch(/Good packs rejected 18,000 18,000/)
    expect(said).toMatch(/Sum of what is computed 37,350 47,350/)
    expect(said).toContain('By the yearly cost you entered')
    expect(html).toContain('value="180000"')
  })

  it('keeps what was typed and names what cannot be read', async () => {
    const { html, status } = await get('&perKWh=cheap&p0.xray-dual.price=9')
    expect(status).toBe(422)
    expect(html).toContain('<title>Error: Compare quotes')
    expect(html).toContain('href="#perKWh"')
    expect(html).toContain('value="cheap"')
  })

  it('writes a clause with pieces, places, runs, misses, clean packs, speed, temperature and site', () => {
    const said = text(plain.html.split('id="clauses"')[1]!)
    for (const word of [
      '29 runs',
      'none missed',
      '2,995 good packs in a row',
      '30 m/min',
      '20 °C',
      'On our site',
    ])
      expect(said).toContain(word)
    expect(said).toMatch(/Clopper and Pearson, one-sided/)
  })

  it('writes it anew on other terms', async () => {
    const { html } = await get('&misses=2&falseRejects=1')
    expect(text(html)).toMatch(/61 runs.*at most 2 missed/)
    expect(text(html)).toMatch(/at most 1 false reject/)
  })

  it('keeps all that is quoted for a machine in its one column, with what to ask', () => {
    const said = text(plain.html)
    expect(plain.html.match(/<th scope="col"[^>]*>[^<]*dual energy/g)).toHaveLength(1)
    expect(said).toMatch(/Quoted to you nothing .*2\.5 mm: .*1 mm: better than the physics allows/)
    expect(said).toMatch(/How was it obtained: 1 mm/)
    expect(said).not.toMatch(/How was it obtained: 2\.5 mm/)
  })

  it('holds sizes, cost and clauses at the one rate that is asked', async () => {
    const strict = await get('&x=p0.xray-single&x=p0.xray-dual&rejects=1%20in%2010000')
    const said = text(strict.html)
    expect(said).toMatch(/29,956 good packs in a row/)
    expect(said).toMatch(/1 in 10,000: about 4\.8 packs a day, whichever machine it is/)
    const sizeIn = (html: string) =>
      Number(/([\d.]+) \/ [\d.]+/.exec(text(html.split('side-by-side')[1]!))![1])
    expect(sizeIn(strict.html)).toBeGreaterThan(sizeIn(plain.html))
    const wrong = await get('&rejects=often')
    expect(wrong.status).toBe(422)
    expect(wrong.html).toContain('href="#rejects"')
    expect(wrong.html).toContain('value="often"')
  })

  it('apart from the supplier, says what the buyer has to settle', () => {
    const [supplier, homework] = plain.html.split('id="questions"')[1]!.split('id="homework"')
    expect(text(homework!)).toContain('No time between checks was given')
    expect(text(supplier!)).not.toContain('No time between checks')
  })

  describe('pack against pack', () => {
    it('takes the second pack from what is changed, and keeps it in its links', async () => {
      const { html, status } = await get('&points.0.heightMm=3%20cm&x=p0.xray-single')
      expect(status).toBe(200)
      const said = text(html)
      expect(said).toMatch(/Height of the food 45 mm 30 mm/)
      expect(said).toContain('A: x-ray from above, single energy')
      expect(said).toContain('B: x-ray from above, single energy')
      const print = /href="([^"]*)&amp;print=1"/.exec(html)![1]!.replaceAll('&amp;', '&')
      expect(print).toMatch(/&with=[\w-]+/)
      expect(print).not.toContain('heightMm')
      const paper = await (await house.request(`${print}&print=1`)).text()
      expect(text(paper)).toMatch(/Height of the food 45 mm 30 mm/)
    })

    it('takes it from the address of any page about another brief', async () => {
      const other = packBrief({ ...input, points: [{ ...input.points[0]!, heightMm: 30 }] })
      const address = encodeURIComponent(`http://127.0.0.1:8317/b/${other}/advice?print=page`)
      expect(text((await get(`&with=${address}`)).html)).toMatch(/Height of the food 45 mm 30 mm/)
    })

    it('is no second pack where nothing was changed', async () => {
      const { html } = await get('&points.0.heightMm=45&points.0.parts.0.material=')
      expect(html).toContain('<title>Compare quotes')
    })

    it.each([
      ['&points.0.heightMm=thick', 'points.0.heightMm', /write a number, like 45/],
      ['&points.0.heightMm=9000', 'points.0.heightMm', /1 .* 2000/],
      ['&points.0.parts.0.material=glass_container', 'points.0.parts.0.mm', /thickness/i],
      ['&with=nonsense', 'with', /carries no brief that can be read/],
    ])('names what is wrong with %s', async (query, field, message) => {
      const { html, status } = await get(query)
      expect(status).toBe(422)
      expect(html).toContain(`href="#${field}"`)
      expect(html).toContain(`id="${field}"`)
      expect(text(html)).toMatch(message)
    })
  })

  it('prints without boxes and buttons', async () => {
    const { html } = await get('&print=1')
    expect(html).toContain('for-paper')
    expect(html).not.toMatch(/<input|<button|<select|<details/)
    expect(text(html)).toMatch(/Printed on \d+ \w+ \d{4}/)
  })

  it('keeps cost, questions and clause of a machine that stands alone', async () => {
    const one = packBrief({ ...input, quotes: [], equipment: ['xray-dual'] })
    const { status, html } = await get('', one)
    expect(status).toBe(200)
    expect(text(html)).toContain('Only one machine of this brief stands here')
    expect(html).not.toContain('id="differs"')
    for (const id of ['costs', 'questions', 'clauses']) expect(html).toContain(`id="${id}"`)
  })

  it('is a whole page with ids that stand once, whatever the advice', async () => {
    const answer = await standIn.request(`/compare?b=${standInPacked}`)
    const html = await answer.text()
    expect(answer.status).toBe(200)
    expect(html.match(/<h1/g)).toHaveLength(1)
    expect(html).not.toMatch(/<style| style="| on[a-z]+="|<script(?! src=)/)
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([])
  })
})

describe('POST /api/compare', () => {
  const post = (body: unknown) =>
    house.request('/api/compare', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    })

  it('gives the same sizes as the page, and what differs', async () => {
    const answer = await post({ brief: input, machines: ['p0.xray-single', 'p0.xray-dual'] })
    expect(answer.status).toBe(200)
    const data = comparisonSchema.parse(await answer.json())
    expect(data.words[0]).toMatch(/is needed/)
    expect(data.sides.map(({ equipment }) => equipment)).toEqual(['xray-single', 'xray-dual'])
    expect(data.sides[1]!.quoted.map(({ sizeMm }) => sizeMm)).toEqual([2.5, 1])
    expect(data.sides[0]!.clause.cleanPacks).toBe(2995)
    expect(data.ourselves.map(({ ask }) => ask).join()).toContain('No time between checks')
  })

  it('names every problem by its path', async () => {
    const answer = await post({
      brief: { ...input, points: [{ heightMm: 9000 }] },
      other: {},
      falseRejectsPerPack: 0.9,
    })
    expect(answer.status).toBe(422)
    const { problems } = (await answer.json()) as { problems: { path: string }[] }
    const paths = problems.map(({ path }) => path)
    for (const path of ['brief.points.0.heightMm', 'other.product', 'falseRejectsPerPack'])
      expect(paths).toContain(path)
    const unknown = await post({ brief: input, machines: ['p0.nothing'] })
    expect(unknown.status).toBe(422)
    expect(JSON.stringify(await unknown.json())).toMatch(/machines\.0.*p0\.xray-dual/)
  })
})
