import { beforeAll, describe, expect, it } from 'vitest'
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

  it('says first what the dearer one adds, and by what it is the dearer', () => {
    const said = text(plain.html)
    expect(plain.status).toBe(200)
    expect(said).toMatch(/By burden .* from cheap to dear: x-ray from above, single energy, then/)
    expect(plain.html.indexOf('class="answer"')).toBeLessThan(plain.html.indexOf('id="differs"'))
    expect(said).toContain('What the dearer one adds')
    expect(said).toMatch(/Smaller by, mm/)
  })

  it('shows only what differs, and names the rest in a line', () => {
    const table = plain.html.split('class="side-by-side"')[1]!.split('</table>')[0]!
    expect(table).toContain('Energies recorded')
    expect(table).not.toContain('Pixel size')
    expect(text(plain.html)).toMatch(/The same for all: .*pixel size/)
  })

  it('knows no price, and works out the cost from what is entered', async () => {
    expect(text(plain.html)).toContain('not computed')
    const costs =
      '&x=p0.xray-single&x=p0.xray-dual&daysPerYear=250&perWorkHour=30&perKWh=0.2&perRejectedPack=1.5' +
      ['p0.xray-single', 'p0.xray-dual']
        .map(
          (key, at) =>
            `&${key}.price=${90_000 * (at + 1)}&${key}.years=9&${key}.upkeepPerYear=4000&${key}.kW=2&${key}.workHoursPerDay=0.5&${key}.falseRejectsPerPack=1%20in%201000`,
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

  it('lays two quotes for one machine side by side, with what to ask of each', async () => {
    const said = text((await get('&x=q0&x=q1')).html)
    expect(said).toContain('quote 1, x-ray from above, dual energy')
    expect(said).toMatch(/How was the quoted 1 mm obtained\?/)
    expect(said).not.toMatch(/How was the quoted 2\.5 mm obtained\?/)
  })

  it('prints without boxes and buttons', async () => {
    const { html } = await get('&print=1')
    expect(html).toContain('for-paper')
    expect(html).not.toMatch(/<input|<button|<select/)
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
