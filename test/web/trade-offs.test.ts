import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { app, text } from './stand-in.ts'

const get = async (path: string, headers: Record<string, string> = {}) => {
  const answer = await app.request(path, { headers })
  return { status: answer.status, headers: answer.headers, body: await answer.text() }
}

const brief = {
  title: 'Beans <raw>',
  product: { food: 'beans_frozen' },
  points: [
    { name: 'belt', stage: 'loose', heightMm: 30, widthMm: 250, lengthMm: 300, speedMPerMin: 20 },
    { name: 'bag', stage: 'packed', heightMm: 50, widthMm: 160, lengthMm: 200, speedMPerMin: 25 },
  ],
  contaminants: [
    { material: 'quartz', mustFindMm: 4 },
    { material: 'ss316', mustFindMm: 2 },
  ],
  equipment: ['xray-single', 'xray-side', 'coil-single'],
}
const b = packBrief(brief)
const mince = packBrief(demos.find(({ id }) => id === 'mince')!.brief)
const noMetal = packBrief({ ...brief, contaminants: [{ material: 'quartz', mustFindMm: 4 }] })

const pages = [
  `/trade-offs?b=${b}`,
  `/trade-offs?b=${b}&point=1&machines=xray-single&machines=coil-single&contaminant=1&input=depth-with-speed`,
  `/trade-offs?b=${b}&print=1`,
  `/trade-offs?b=${mince}`,
  `/trade-offs/metal-detector?b=${b}&angle=30`,
  `/trade-offs/metal-detector?b=${b}&print=1`,
  `/trade-offs/metal-detector?b=${mince}`,
  `/trade-offs/metal-detector?b=${noMetal}`,
]

describe('the Trade-offs pages', () => {
  it.each(pages)('%s answers with a whole page, nothing inline, nothing from elsewhere', async (path) => {
    const { status, body, headers } = await get(path)
    expect(status).toBe(200)
    expect(headers.get('content-security-policy')).toMatch(/default-src 'self'/)
    expect(body).toMatch(/^<!DOCTYPE html>/i)
    expect(body.match(/<h1/g)).toHaveLength(1)
    expect(body).not.toMatch(/<style| style="| on[a-z]+="|<script(?! src=)/)
    expect(body).not.toMatch(/(?:src|href)="(?:https?:)?\/\//)
    expect(body).not.toContain('NaN')
    expect(body).not.toContain('undefined')
    const ids = [...body.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([])
    for (const [, id = ''] of body.matchAll(/(?:href="#|url\(#|aria-labelledby=")([^" )]+)/g))
      expect(ids, id).toContain(id)
  })

  it('lead to addresses that answer, and stand in the navigation of a page about a brief', async () => {
    const { body } = await get(pages[0]!)
    const links = [...body.matchAll(/href="(\/trade-offs[^"]*)"/g)].map(([, href]) =>
      href!.replaceAll('&amp;', '&'),
    )
    expect(links.some((href) => href.startsWith('/trade-offs/metal-detector'))).toBe(true)
    for (const href of links) expect((await get(href)).status, href).toBe(200)
    expect((await get(`/brief?b=${b}`)).body).toContain(`/trade-offs?b=${b}`)
  })

  it('draw what the address asks for', async () => {
    const words = text((await get(pages[1]!)).body)
    expect(words).toContain('Findable size against height, with speed to match')
    expect(words).toContain('Speed, m/min')
    expect(words).toContain('A: x-ray from above, single energy')
    expect(words).toContain('B: metal detector, one frequency at a time')
    expect(words).toContain('(the brief)')
  })

  it('take machines by comma as well, and say what cannot be drawn', async () => {
    const { body } = await get(`/trade-offs?b=${b}&machines=coil-single,xray-side,gone&input=grain`)
    expect(text(body)).toContain('A machine that does not stand here is left out.')
    expect(text(body)).toContain('grain size does not enter its sizes here')
    const wrong = await get(`/trade-offs?b=${b}&input=colour`)
    expect(text(wrong.body)).toContain('What was to be moved means nothing here')
  })

  it('say at once what is not in the brief', async () => {
    expect((await get(`/trade-offs?b=${b}&point=7`)).status).toBe(404)
    expect((await get(`/trade-offs?b=${b}&contaminant=-1`)).status).toBe(404)
    expect((await get(`/trade-offs?b=${b}&contaminant=one`)).status).toBe(404)
    expect((await get(`/trade-offs/metal-detector?b=${b}&point=7`)).status).toBe(404)
    expect((await get('/trade-offs')).status).toBe(400)
  })

  it('give the part that changes to htmx, without a page around it', async () => {
    for (const path of [`/trade-offs/part?b=${b}`, `/trade-offs/metal-detector/part?b=${b}`]) {
      const { status, body } = await get(path, { 'HX-Request': 'true' })
      expect(status).toBe(200)
      expect(body).not.toContain('<html')
      expect(body).toContain('id="chooser"')
    }
  })
})

describe('inside the metal detector', () => {
  it('turns the piece by the angle in the address, comma or point', async () => {
    expect(text((await get(`/trade-offs/metal-detector?b=${b}&angle=37,5`)).body)).toContain(
      'at 37.5° to the travel',
    )
    const wrong = text((await get(`/trade-offs/metal-detector?b=${b}&angle=200`)).body)
    expect(wrong).toContain('The angle is a number from 0 to 90 degrees; 0 is drawn.')
  })

  it('says so where there is no metal, or no metal detector', async () => {
    expect(text((await get(`/trade-offs/metal-detector?b=${noMetal}`)).body)).toContain('names no metal')
    const xrayOnly = packBrief({ ...brief, equipment: ['xray-single'] })
    expect(text((await get(`/trade-offs/metal-detector?b=${xrayOnly}`)).body)).toContain(
      'No metal detector stands at belt.',
    )
  })

  it('shows the response plane, what moves the size, the turned piece and the opening', async () => {
    const words = text((await get(`/trade-offs/metal-detector?b=${b}`)).body)
    for (const heading of [
      'What the coil hears: the response plane',
      'Against frequency',
      'Against height of the opening',
      'Against conductivity of the food',
      'Against temperature of the food',
      'A piece turned',
      'Where in the opening',
    ])
      expect(words).toContain(heading)
  })
})
