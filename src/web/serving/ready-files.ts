import type { IncomingMessage, ServerResponse } from 'node:http'
import { ASSET_NAMES } from '../assets.ts'
import { noteRoute } from '../watched/route.ts'
import type { Answers } from './door.ts'

interface Ready {
  readonly tag: string
  readonly headers: Readonly<Record<string, string>>
  readonly bytes: Uint8Array
  /** Headers for a reader that has the file already. */
  readonly known: Readonly<Record<string, string>>
}

/** Whether the request was answered here. */
export type ReadyFiles = (request: IncomingMessage, answer: ServerResponse) => boolean

const takesGzip = ({ headers }: IncomingMessage) =>
  /\bgzip\b(?!\s*;\s*q=0)/.test(String(headers['accept-encoding']))
/** Asked for by a page of this program, or by a program; to all else the door says what is to be said. */
const fromHere = ({ headers }: IncomingMessage) =>
  ['same-origin', 'none', undefined].includes(headers['sec-fetch-site'] as string | undefined)

/**
 * The files that never change, answered ahead of everything else and out of memory, so that a page finds its style
 * while all else works: the door is asked for each once, plain and compressed, and what it says is said again.
 */
export async function readyFiles(door: Answers): Promise<ReadyFiles> {
  const ready = new Map<string, Ready>()
  for (const name of ASSET_NAMES)
    for (const encoding of ['identity', 'gzip'])
      ready.set(`${encoding} /assets/${name}`, await askedOf(door, `/assets/${name}`, encoding))
  return (request, answer) => {
    if (request.method !== 'GET' || !fromHere(request)) return false
    const file = ready.get(`${takesGzip(request) ? 'gzip' : 'identity'} ${request.url}`)
    if (!file) return false
    noteRoute(request, '/assets/:name')
    if (request.headers['if-none-match']?.includes(file.tag)) answer.writeHead(304, file.known).end()
    else answer.writeHead(200, file.headers).end(file.bytes)
    return true
  }
}

async function askedOf(door: Answers, path: string, encoding: string): Promise<Ready> {
  const ask = (more: Record<string, string>) =>
    door(new Request(`http://localhost${path}`, { headers: { 'accept-encoding': encoding, ...more } }))
  const whole = await ask({})
  const tag = /"(.+)"/.exec(whole.headers.get('etag') ?? '')?.[1] ?? ''
  const bytes = new Uint8Array(await whole.arrayBuffer())
  const known = await ask({ 'if-none-match': `"${tag}"` })
  return {
    tag,
    bytes,
    headers: { ...Object.fromEntries(whole.headers), 'content-length': String(bytes.byteLength) },
    known: Object.fromEntries(known.headers),
  }
}
