import { once } from 'node:events'
import { connect } from 'node:net'
import { beforeAll, describe, expect, it, vi } from 'vitest'
import { IN_MEMORY } from '../../../src/store/open.ts'
import { wayInOf } from '../../../src/web/people/way-in.ts'
import { door } from '../../../src/web/serving/door.ts'
import { ownNames } from '../../../src/web/serving/own-names.ts'
import { type Served, serve } from '../../../src/web/serving/serve.ts'
import { log, logFault } from '../../../src/web/watched/log.ts'
import { mayNotWatch } from '../../../src/web/watched/metrics.ts'

/** What a line says back to bytes that were sent, until it is closed. */
function line(port: number, sent: string): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = ''
    const socket = connect(port, '127.0.0.1', () => socket.write(sent))
    socket.on('data', (chunk) => {
      said += chunk
    })
    socket.on('close', () => resolve(said))
    socket.on('error', reject)
  })
}

/** Headers that say what a file is and who may use it. */
const SAID = ['content-type', 'etag', 'vary', 'cache-control', 'content-security-policy', 'x-frame-options']

describe('the server', () => {
  let served: Served
  const port = () => Number(new URL(served.address).port)
  beforeAll(async () => {
    served = await serve({
      port: 0,
      listen: '127.0.0.1',
      place: { file: IN_MEMORY },
      pool: { threads: 1, budgetMs: 120_000 },
    })
  })

  it('says of an address that is too long that it is, and where a file goes in', async () => {
    const said = await line(port(), `GET /advice?b=${'a'.repeat(70_000)} HTTP/1.1\r\nhost: x\r\n\r\n`)
    expect(said).toMatch(/^HTTP\/1\.1 431 /)
    expect(said).toContain('Load a brief')
  })

  it('answers what is no request in words and closes the line', async () => {
    expect(await line(port(), 'hello there\r\n\r\n')).toMatch(
      /^HTTP\/1\.1 400 .*<h1>This cannot be read<\/h1>/s,
    )
  })

  it('waits for the head of a request and for its body no longer than its patience', () => {
    expect(served.server.headersTimeout).toBeLessThanOrEqual(10_000)
    expect(served.server.requestTimeout).toBeLessThanOrEqual(30_000)
  })

  it('answers files that never change ahead of all else, as the door would', async () => {
    for (const encoding of ['identity', 'gzip']) {
      const ask = (path: string, more: Record<string, string> = {}) =>
        fetch(`${served.address}${path}`, { headers: { 'accept-encoding': encoding, ...more } })
      const file = await ask('assets/gritwise.css')
      // With a query it is the same file by another address, which only the door knows.
      const byDoor = await ask('assets/gritwise.css?by=door')
      const told = (answer: Response) =>
        Object.fromEntries(SAID.map((name) => [name, answer.headers.get(name)]))
      expect(told(file)).toEqual(told(byDoor))
      expect(await file.text()).toBe(await byDoor.text())
      const known = { 'if-none-match': file.headers.get('etag') ?? '' }
      expect((await ask('assets/gritwise.css', known)).status).toBe(304)
      const elsewhere = { 'sec-fetch-site': 'cross-site', 'sec-fetch-dest': 'style' }
      expect((await ask('assets/gritwise.css', elsewhere)).status).toBe(403)
    }
  })

  it('is asked by the names of this machine only', async () => {
    const asked = (host: string) =>
      line(port(), `GET /lines/none HTTP/1.1\r\nhost: ${host}\r\nconnection: close\r\n\r\n`)
    for (const host of ['localhost', 'LOCALHOST:8317', '127.0.0.1:1', '[::1]:8317', 'gritwise.localhost'])
      expect(await asked(host), host).toMatch(/^HTTP\/1\.1 404 /)
    for (const host of ['elsewhere.example', 'localhost.example:8317', '127.0.0.1.example', '10.0.0.1'])
      expect(await asked(host), host).toMatch(/^HTTP\/1\.1 403 .*is not called/s)
    const named = door(() => new Response('x'), ownNames('127.0.0.1', ['line.example']))
    const open = door(() => new Response('x'), ownNames('0.0.0.0', []))
    const statusAt = async (app: typeof named, host: string) =>
      (await app.request('/x', { headers: { host } })).status
    expect(await statusAt(named, 'Line.example:443')).toBe(200)
    expect(await statusAt(named, 'other.example')).toBe(403)
    expect(await statusAt(open, 'plant-7.example')).toBe(200)
  })

  it('logs a request by its number, pattern, status and time; nothing of what it carries is written', async () => {
    const lines: string[] = []
    const heard = vi.spyOn(log, 'info').mockImplementation((line: unknown) => {
      lines.push(JSON.stringify(line))
    })
    const answer = await fetch(`${served.address}b/secret-brief/kept/secret-thing?after=secret-query`, {
      headers: { 'x-request-id': 'secret-number' },
    })
    await answer.text()
    await fetch(`${served.address}assets/icon.svg`).then((file) => file.text())
    await expect.poll(() => lines.length).toBe(2)
    heard.mockRestore()
    expect(lines.join()).not.toContain('secret')
    expect(JSON.parse(lines[0]!)).toMatchObject({
      method: 'GET',
      route: '/kept/:id',
      status: 404,
      whole: true,
    })
    expect(JSON.parse(lines[0]!).request).toBe(answer.headers.get('x-request-id'))
    expect(JSON.parse(lines[1]!)).toMatchObject({ route: '/assets/:name', status: 200 })
  })

  it('logs a fault by its kind and place, without its words', () => {
    const heard = vi.spyOn(log, 'error').mockImplementation(() => {})
    logFault(new TypeError('the brief\n    at atlantic salmon'), 'r1')
    const [line] = heard.mock.calls[0] as unknown as [{ at: string[] }]
    heard.mockRestore()
    expect(line).toMatchObject({ request: 'r1', kind: 'TypeError' })
    expect(line.at.join()).toContain('serving.test')
    expect(JSON.stringify(line)).not.toContain('salmon')
  })

  it('gives figures to who watches: requests by pattern, workers, the database; beyond this machine for a token only', async () => {
    await fetch(`${served.address}nowhere/${'x'.repeat(40)}`).then((answer) => answer.text())
    const answer = await fetch(`${served.address}metrics`)
    expect(answer.headers.get('content-type')).toContain('text/plain')
    const said = await answer.text()
    expect(said).toMatch(/gritwise_requests_total\{method="GET",route="none",status="404"\} [1-9]/)
    expect(said).toMatch(/gritwise_request_seconds_count\{route="\/assets\/:name"\} [1-9]/)
    expect(said).toContain('gritwise_pool_workers{lane="pages"} 1')
    expect(said).toContain('gritwise_store_reached 1')
    expect(said).not.toContain('xxx')
    const outside = wayInOf('0.0.0.0', { accounts: true })
    const asked = (token?: string) =>
      new Request('http://plant.example/metrics', {
        headers: token ? { authorization: `Bearer ${token}` } : {},
      })
    expect(mayNotWatch(asked(), wayInOf('127.0.0.1', {}), null)).toBe(403)
    expect(mayNotWatch(asked(), outside, null)).toBe(403)
    expect(mayNotWatch(asked('wrong'), outside, 'right')).toBe(401)
    expect(mayNotWatch(asked('right'), outside, 'right')).toBeNull()
  })

  it('gives up a port that is taken', async () => {
    await expect(serve({ port: port(), listen: '127.0.0.1', pool: { threads: 1 } })).rejects.toMatchObject({
      code: 'EADDRINUSE',
    })
  })

  it('told to stop, finishes what it has begun and takes nothing new', async () => {
    await fetch(`${served.address}examples`)
    const seen = once(served.server, 'request')
    const begun = fetch(`${served.address}glossary`)
    await seen
    const stopping = served.stop()
    expect((await begun).status).toBe(200)
    await stopping
    await expect(fetch(served.address)).rejects.toThrow()
  })
})
