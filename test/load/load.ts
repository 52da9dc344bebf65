/**
 * Load on the loopback, bounded (npm run load): requests per second and the median and 99th percentile of the time to
 * answer, beside a page of bare hono in the same run; then the same for small things while every worker is busy.
 * Asked as browsers and programs ask, with compression: an advice as JSON has 5 MB, compressed 0.3 MB, and the asker
 * takes longer to read it than the server to give it. Both servers and the asker share this machine, so that figures
 * compare within a run only.
 */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import autocannon from 'autocannon'
import { demos } from '../../src/brief/demos.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { started } from './started.ts'

const SECONDS = 3
const CONNECTIONS = [1, 10, 50]
const path = (relative: string) => fileURLToPath(new URL(relative, import.meta.url))
const brief = demos.find(({ id }) => id === 'hazelnuts')!.brief
const b = packBrief(brief)

const bare = await started(path('./bare.mjs'))
const house = await started(
  path('../../dist/src/main.js'),
  'serve',
  '--port',
  '0',
  '--workers',
  '2',
  '--budget',
  '300',
)
const at = (there: string) => `${house.address}${there}`

interface Asked {
  readonly name: string
  readonly url: string
  readonly body?: string
  readonly cookie?: string
}
const BARE: Asked = { name: 'bare hono page', url: bare.address }
const STATIC: Asked = { name: 'static file', url: at('assets/icon.svg') }
const PAGES: readonly Asked[] = [
  { name: 'examples page', url: at('examples') },
  { name: 'advice page, worked out before', url: at(`advice?b=${b}`) },
  { name: 'POST /api/advice, worked out before', url: at('api/advice'), body: JSON.stringify(brief) },
]

async function measure({ name, url, body, cookie }: Asked, connections: number): Promise<void> {
  const headers = {
    'accept-encoding': 'gzip',
    ...(body ? { 'content-type': 'application/json' } : {}),
    ...(cookie ? { cookie } : {}),
  }
  const sent = { headers, ...(body ? { method: 'POST' as const, body } : {}) }
  const { requests, latency, non2xx, errors } = await autocannon({
    url,
    connections,
    duration: SECONDS,
    ...sent,
  })
  const row = [
    name.padEnd(36),
    String(connections).padStart(4),
    requests.average.toFixed(0).padStart(8),
    latency.p50.toFixed(0).padStart(7),
    latency.p99.toFixed(0).padStart(7),
    latency.max.toFixed(0).padStart(7),
    String(non2xx + errors).padStart(6),
  ]
  console.log(row.join(' '))
}

/** Asks for new work without end: pictures and advice nobody has asked for before. */
function keepBusy(): () => Promise<void> {
  const stop = new AbortController()
  const ask = async (next: (turn: number) => string, from: number) => {
    for (let turn = from; !stop.signal.aborted; turn++)
      await fetch(at(next(turn)), { signal: stop.signal })
        .then((answer) => answer.arrayBuffer())
        .catch(() => {})
  }
  const anew = (turn: number) => `advice?b=${packBrief({ ...brief, title: `load ${turn}` })}`
  const asking = [
    ask((turn) => `card?b=${b}&seed=${turn}`, 1),
    ...[1000, 2000, 3000].map((from) => ask(anew, from)),
  ]
  return async () => {
    stop.abort()
    await Promise.all(asking)
  }
}

/** A server that lets people in by the store, and the cookie of one who has signed in: who asks is looked up each time. */
async function keptHouse() {
  const folder = mkdtempSync(join(tmpdir(), 'gritwise-load-'))
  process.env.GRITWISE_DATA = folder
  const main = path('../../dist/src/main.js')
  const password = 'a password for a load'
  execFileSync(process.execPath, [main, 'people', 'add', 'ann'], {
    input: password,
    stdio: ['pipe', 'ignore', 'inherit'],
  })
  const there = await started(
    main,
    'serve',
    '--port',
    '0',
    '--workers',
    '2',
    '--budget',
    '300',
    '--accounts',
    '--log',
    'error',
  )
  const signedIn = await fetch(`${there.address}sign-in`, {
    method: 'POST',
    body: new URLSearchParams({ name: 'ann', password }),
    redirect: 'manual',
  })
  const cookie = (signedIn.headers.get('set-cookie') ?? '').split(';')[0]!
  if (cookie === '') throw new Error(`nobody signed in: ${signedIn.status}`)
  const end = () => {
    there.child.kill('SIGTERM')
    rmSync(folder, { recursive: true, force: true })
  }
  return { address: there.address, cookie, end }
}

const kept = await keptHouse()
try {
  const sent = {
    method: 'POST',
    body: JSON.stringify(brief),
    headers: { 'content-type': 'application/json' },
  }
  for (const answer of [await fetch(at(`advice?b=${b}`)), await fetch(at('api/advice'), sent)])
    if (answer.status !== 200) throw new Error(`worked out beforehand: ${answer.status} ${answer.url}`)
  console.log(`${'asked for'.padEnd(36)} conn    req/s  p50 ms  p99 ms  max ms failed`)
  for (const asked of [BARE, STATIC, ...PAGES])
    for (const connections of CONNECTIONS) await measure(asked, connections)
  console.log('with the store asked who is reading:')
  const page = { name: PAGES[1]!.name, url: `${kept.address}advice?b=${b}`, cookie: kept.cookie }
  const first = await fetch(page.url, { headers: { cookie: kept.cookie } })
  if (first.status !== 200) throw new Error(`worked out beforehand: ${first.status}`)
  for (const asked of [page, { name: 'what is kept', url: `${kept.address}kept`, cookie: kept.cookie }])
    for (const connections of CONNECTIONS) await measure(asked, connections)
  console.log('while every worker is busy:')
  const leave = keepBusy()
  await new Promise((resolve) => setTimeout(resolve, 1000))
  for (const asked of [BARE, STATIC]) for (const connections of CONNECTIONS) await measure(asked, connections)
  await leave()
} finally {
  kept.end()
  house.child.kill('SIGTERM')
  bare.child.kill('SIGTERM')
}
