import { once } from 'node:events'
import { connect } from 'node:net'
import { beforeAll, describe, expect, it } from 'vitest'
import { door } from '../../../src/web/serving/door.ts'
import { ownNames } from '../../../src/web/serving/own-names.ts'
import { type Served, serve } from '../../../src/web/serving/serve.ts'

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
    served = await serve({ port: 0, listen: '127.0.0.1', pool: { threads: 1, budgetMs: 120_000 } })
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
