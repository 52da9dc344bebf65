/**
 * Load on the loopback, bounded (npm run load): requests per second and the median and 99th percentile of the time to
 * answer, beside a page of bare hono in the same run; then the same for small things while every worker is busy.
 * Asked as browsers and programs ask, with compression: an advice as JSON has 5 MB, compressed 0.3 MB, and the asker
 * takes longer to read it than the server to give it. Both servers and the asker share this machine, so that figures
 * compare within a run only.
 */
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
}
const BARE: Asked = { name: 'bare hono page', url: bare.address }
const STATIC: Asked = { name: 'static file', url: at('assets/icon.svg') }
const PAGES: readonly Asked[] = [
  { name: 'examples page', url: at('examples') },
  { name: 'advice page, worked out before', url: at(`advice?b=${b}`) },
  { name: 'POST /api/advice, worked out before', url: at('api/advice'), body: JSON.stringify(brief) },
]

async function measure({ name, url, body }: Asked, connections: number): Promise<void> {
  const headers = { 'accept-encoding': 'gzip', ...(body ? { 'content-type': 'application/json' } : {}) }
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
  console.log('while every worker is busy:')
  const leave = keepBusy()
  await new Promise((resolve) => setTimeout(resolve, 1000))
  for (const asked of [BARE, STATIC]) for (const connections of CONNECTIONS) await measure(asked, connections)
  await leave()
} finally {
  house.child.kill('SIGTERM')
  bare.child.kill('SIGTERM')
}
