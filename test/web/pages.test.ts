import { describe, expect, it, vi } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief, unpackBrief } from '../../src/web/asked/packed-brief.ts'
import { log } from '../../src/web/watched/log.ts'
import { advice, brief } from '../views/fixture.ts'
import { app, appWith, packed, text } from './stand-in.ts'

const get = async (path: string, headers: Record<string, string> = {}) => {
  const answer = await app.request(path, { headers })
  return { status: answer.status, headers: answer.headers, body: await answer.text() }
}

describe('every page', () => {
  const pages = [
    '/',
    '/examples',
    `/brief?b=${packed}`,
    `/advice?b=${packed}`,
    `/advice?b=${packed}&print=1`,
    `/advice/trail?b=${packed}&id=size`,
    `/advice/rules?b=${packed}&point=1&equipment=xray-dual`,
  ]

  it.each(pages)('%s answers with a whole page', async (path) => {
    const { status, body, headers } = await get(path)
    expect(status).toBe(200)
    expect(headers.get('content-type')).toContain('text/html')
    expect(body).toMatch(/^<!DOCTYPE html>/i)
    expect(body.match(/<h1/g)).toHaveLength(1)
    expect(body).toContain('<html lang="en">')
    expect(body).toContain('href="#main"')
  })

  it.each(pages)('%s asks nothing of another server and carries nothing inline', async (path) => {
    const { body, headers } = await get(path)
    expect(headers.get('content-security-policy')).toMatch(/default-src 'self'.*frame-ancestors 'none'/)
    expect(headers.get('strict-transport-security')).toBeNull()
    expect(body).not.toMatch(/(?:src|href)="(?:https?:)?\/\//)
    expect(body).not.toMatch(/<style| style="| on[a-z]+="|<script(?! src=)/)
  })

  it('leads everywhere it says it leads', async () => {
    const seen = new Set<string>()
    for (const page of pages) {
      const { body } = await get(page)
      for (const [, href = ''] of body.matchAll(/(?:href|src)="(\/[^"#]*)/g))
        seen.add(href.replaceAll('&amp;', '&'))
      for (const [, id = ''] of body.matchAll(/href="#([^"]+)"/g))
        expect(body, `${page} #${id}`).toContain(`id="${id}"`)
    }
    expect(seen.size).toBeGreaterThan(20)
    // Pictures of every machine take long to draw; that each is drawn, test/web/card.test.ts says.
    const oneMachine = (href: string) => (href.startsWith('/card?') ? `${href}&machine=xray-single` : href)
    for (const href of seen) expect((await app.request(oneMachine(href))).status, href).toBe(200)
  })

  it('has ids that stand once only', async () => {
    for (const page of pages) {
      const ids = [...(await get(page)).body.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
      expect(
        ids.filter((id, at) => ids.indexOf(id) !== at),
        page,
      ).toEqual([])
    }
  })
})

describe('assets', () => {
  it('are ours, and known again by their tag', async () => {
    for (const [name, type] of [
      ['gritwise.css', 'text/css'],
      ['htmx.js', 'text/javascript'],
      ['icon.svg', 'image/svg+xml'],
    ] as const) {
      const first = await get(`/assets/${name}`)
      expect(first.status).toBe(200)
      expect(first.headers.get('content-type')).toContain(type)
      const again = await get(`/assets/${name}`, { 'if-none-match': first.headers.get('etag') ?? '' })
      expect(again.status).toBe(304)
    }
    expect((await get('/assets/..%2fapp.ts')).status).toBe(404)
  })

  it('and the advice page together come in under 150 kB as sent', async () => {
    let bytes = 0
    for (const path of [`/advice?b=${packed}`, '/assets/gritwise.css', '/assets/htmx.js']) {
      const sent = await app.request(path, { headers: { 'accept-encoding': 'gzip' } })
      expect(sent.headers.get('content-encoding')).toBe('gzip')
      bytes += (await sent.arrayBuffer()).byteLength
    }
    expect(bytes).toBeLessThan(150_000)
  })
})

describe('the brief page', () => {
  it('offers every example, straight to the advice and into the form', async () => {
    const { body } = await get('/')
    for (const demo of demos) {
      expect(body).toContain(demo.title.replaceAll('&', '&amp;'))
      expect(body).toContain(`/advice?b=${packBrief(demo.brief)}`)
      expect(body).toContain(`/brief?b=${packBrief(demo.brief)}`)
    }
  })

  it('says what is assumed under fields left empty', async () => {
    const { body } = await get(`/brief?b=${packed}`)
    expect(text(body)).toMatch(/assumed: 13 mm, 10\.4 to 16/)
  })

  it('gives the brief out as a file that is the same brief', async () => {
    const file = await get(`/brief.json?b=${packed}`)
    expect(file.headers.get('content-disposition')).toBe('attachment; filename="kernels-1-kg-friends.json"')
    expect(JSON.parse(file.body)).toEqual(brief)
  })
})

describe('the advice page', () => {
  it('computes once for all pages about one brief', async () => {
    const advise = vi.fn(async () => advice)
    const own = appWith(advise)
    for (const path of ['/advice', '/brief', '/advice/trail'])
      await own.request(`${path}?b=${packed}&id=size`)
    expect(advise).toHaveBeenCalledTimes(1)
  })

  it('shows the form with the problem where the brief in the address is not whole', async () => {
    const bad = packBrief({ ...brief, points: [{ ...brief.points[0], heightMm: -3 }] })
    const { status, body } = await get(`/advice?b=${bad}`)
    expect(status).toBe(422)
    expect(body).toContain('href="#points.0.heightMm"')
    expect(body).toContain('value="-3"')
  })
})

describe('what goes wrong', () => {
  it('is said as a page to people', async () => {
    const { status, body } = await get('/nowhere')
    expect(status).toBe(404)
    expect(body).toContain('Nothing stands at this address')
    expect((await get('/advice?b=cut%20short')).status).toBe(400)
    expect((await get('/advice')).status).toBe(400)
    expect((await get(`/advice/trail?b=${packed}&id=none`)).status).toBe(404)
    expect((await get(`/advice/rules?b=${packed}&point=7&equipment=xray-dual`)).status).toBe(404)
  })

  it('is said as a part to htmx, so that no page lands inside another', async () => {
    const { status, body } = await get(`/advice/rules/part?b=${packed}&point=7&equipment=x`, {
      'HX-Request': 'true',
    })
    expect(status).toBe(404)
    expect(body).not.toContain('<html')
    expect(body).toContain('role="alert"')
  })

  it('in this program keeps its details to itself', async () => {
    const silent = vi.spyOn(log, 'error').mockImplementation(() => {})
    const failing = appWith(async () => {
      throw new Error('secret detail')
    })
    const answer = await failing.request(`/advice?b=${packed}`)
    expect(answer.status).toBe(500)
    expect(await answer.text()).not.toContain('secret detail')
    expect(silent).toHaveBeenCalledOnce()
    expect(JSON.stringify(silent.mock.calls)).not.toContain('secret detail')
    silent.mockRestore()
  })
})

describe('an address', () => {
  it('carries the brief as given, so that a bookmark is the brief', () => {
    expect(unpackBrief(packed)).toEqual({ brief })
  })
})
