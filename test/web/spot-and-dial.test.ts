import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { createPages } from '../../src/web/app.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { readDepthMm, viewOf } from '../../src/xray/image/pack/view.ts'

const pages = createPages()
const demo = (id: string) => demos.find((one) => one.id === id)!.brief
const page = async (path: string) => {
  const answer = await pages.request(path)
  expect(answer.status, path).toBe(200)
  return answer.text()
}
const chosen = (html: string, name: string) => {
  const select = new RegExp(`<select[^>]*name="${name}"[^>]*>([\\s\\S]*?)</select>`).exec(html)?.[1] ?? ''
  return /<option value="([^"]*)" selected/.exec(select)?.[1]
}

describe('a standing jar in the classroom', () => {
  const jar = packBrief(demo('sauce-jar'))

  it('is played before a machine from the side that finds something of it, though another stands first', async () => {
    const html = await page(`/exercises/spot?b=${jar}&present=1`)
    expect(html).toContain('Where would you look again?')
    expect(chosen(html, 'machine')).toBe('xray-side-two-views')
    const blind = await page(`/exercises/spot?b=${jar}&machine=xray-side`)
    expect(blind).toContain('Where would you look again?')
    expect(chosen(blind, 'machine')).not.toBe('xray-side')
  })

  it('shows its picture under the address that the page names', async () => {
    const html = await page(`/exercises/spot?b=${jar}`)
    const href = /href="(\/exercises\/spot\/picture\.png[^"]*)"/.exec(html)![1]!.replaceAll('&amp;', '&')
    const picture = await pages.request(href)
    expect(picture.headers.get('content-type')).toBe('image/png')
  })

  it('is moved before the side with the live control', async () => {
    expect(chosen(await page(`/exercises/dial?b=${jar}`), 'machine')).toBe('xray-side-two-views')
  })
})

describe('a place of the live control that is not at hand', () => {
  const nuts = packBrief(demo('hazelnuts'))
  const part = `/exercises/dial/part?b=${nuts}&input=height&stop=7`

  it('is shown as a draft that says so and fetches the whole; asked without drafts it is whole', async () => {
    const draft = await page(`${part}&draft=1`)
    expect(draft).toContain('a draft, not read yet')
    const picture = /href="(\/exercises\/dial\/picture\.png[^"]*)"/.exec(draft)![1]!.replaceAll('&amp;', '&')
    expect((await pages.request(picture)).headers.get('content-type')).toBe('image/png')
    expect(draft).not.toMatch(/class="sheet-marks"><(?!\/g>)/)
    const href = /hx-get="([^"]+)" hx-trigger="load"/.exec(draft)![1]!.replaceAll('&amp;', '&')
    expect(href).not.toContain('draft')
    const whole = await page(href)
    expect(whole).toContain('corners: found, ring: missed')
    expect(whole).not.toMatch(/draft|hx-trigger/)
    const said = (html: string) => /<p class="dial-said">.*?<\/p>/.exec(html)![0]
    expect(said(draft)).toBe(said(whole))
    expect(await page(`${part}&draft=1`)).not.toContain('a draft')
  })

  it('is whole at once where nothing takes long, and on the page itself', async () => {
    const cheese = packBrief(demo('cheddar'))
    expect(await page(`/exercises/dial/part?b=${cheese}&input=speed&stop=2&draft=1`)).not.toContain('a draft')
    expect(await page(`/exercises/dial?b=${nuts}&input=height&stop=3&draft=1`)).not.toContain('a draft')
  })
})

describe('food in a pipe', () => {
  it('runs out of its picture at either end: all along it can be read', () => {
    const parsed = parseBrief(demo('mince'))
    if (!parsed.ok) throw new Error('the demo brief is read')
    const point = parsed.brief.points[0]!
    const view = viewOf(point, 'down')
    expect(view.outline).toBe('stream')
    expect(readDepthMm(view, 6, point.widthMm / 2)).toBeGreaterThan(0)
  })
})
