import { once } from 'node:events'
import { connect } from 'node:net'
import { beforeAll, describe, expect, it } from 'vitest'
import { demos } from '../../../src/brief/demos.ts'
import { packBrief } from '../../../src/web/asked/packed-brief.ts'
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

const mince = packBrief(demos.find(({ id }) => id === 'mince')!.brief)

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

  it('gives up a port that is taken', async () => {
    await expect(serve({ port: port(), listen: '127.0.0.1', pool: { threads: 1 } })).rejects.toMatchObject({
      code: 'EADDRINUSE',
    })
  })

  it('told to stop, finishes what it has begun and takes nothing new', async () => {
    await fetch(`${served.address}examples`)
    const seen = once(served.server, 'request')
    const begun = fetch(`${served.address}advice?b=${mince}`)
    await seen
    const stopping = served.stop()
    expect((await begun).status).toBe(200)
    await stopping
    await expect(fetch(served.address)).rejects.toThrow()
  })
})
