import { describe, expect, it } from 'vitest'
import { shortAddresses, withRelativeLinks } from '../../src/web/serving/short-address.ts'

const html = (body: string) => new Response(body, { headers: { 'content-type': 'text/html; charset=UTF-8' } })
const asked: string[] = []
const pages = shortAddresses(async (request) => {
  const url = new URL(request.url)
  asked.push(`${request.method} ${url.pathname}${url.search}`)
  if (request.method === 'POST')
    return new Response(null, { status: 303, headers: { location: '/advice?b=abc&x=1' } })
  return html('<a href="/advice/trail?b=abc&amp;id=p0.c1">calculation</a> <a href="/examples">examples</a>')
})
const get = (path: string, headers: Record<string, string> = { accept: 'text/html' }) =>
  pages(new Request(`http://here${path}`, { headers }))

describe('the brief stands once in the address of its pages', () => {
  it('moves a person to the short address, and no program', async () => {
    const moved = await get('/advice?b=abc&print=1')
    expect([moved.status, moved.headers.get('location')]).toEqual([302, '/b/abc/advice?print=1'])
    expect((await get('/advice?b=abc', { accept: '*/*' })).status).toBe(200)
    expect((await get('/brief.json?b=abc')).status).toBe(200)
    expect((await get('/advice/part?b=abc', { accept: 'text/html', 'hx-request': 'true' })).status).toBe(200)
  })

  it('asks the page as it always was, and makes its links relative', async () => {
    const page = await get('/b/abc/advice?print=1')
    expect(asked.at(-1)).toBe('GET /advice?print=1&b=abc')
    expect(await page.text()).toBe(
      '<a href="advice/trail?id=p0.c1">calculation</a> <a href="/examples">examples</a>',
    )
  })

  it('counts folders up: of a page from where it stands, of a part from the page it is put into', async () => {
    expect(await (await get('/b/abc/advice/trail?id=x')).text()).toContain('"../advice/trail?id=p0.c1"')
    const part = await get('/b/abc/advice/part?part=why', {
      'hx-request': 'true',
      'hx-current-url': 'http://here/b/abc/advice',
    })
    expect(await part.text()).toContain('"advice/trail?id=p0.c1"')
  })

  it('a sent form leads to the short address at once', async () => {
    const answer = await pages(new Request('http://here/advice', { method: 'POST' }))
    expect(answer.headers.get('location')).toBe('/b/abc/advice?x=1')
  })

  it('leaves links to other briefs and anchors whole', () => {
    expect(withRelativeLinks('<a href="/brief?b=abc#points.0"><a href="/brief?b=abcd">', 'abc', 0)).toBe(
      '<a href="brief#points.0"><a href="/brief?b=abcd">',
    )
  })
})
