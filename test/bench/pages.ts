/**
 * Server time of each page with its advice already worked out (npm run bench:pages): median processor time over
 * repeated requests over the loopback, asker and server together, in ms (other work on the machine does not count);
 * the wall time of the first request; the weight of the page as sent. Pages that compute beside the advice (test
 * card, trade-offs, found fragment) are listed apart: their time is that of the calculation. The advice and the rules
 * tried are kept as bytes (src/web/serving/answered.ts): their median is that of a page shown again.
 */
import { Agent, request } from 'node:http'
import { demos } from '../../src/brief/demos.ts'
import { EXERCISES } from '../../src/exercises/list.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { serve } from '../../src/web/serving/serve.ts'

const MOST_MS = 10
const TIMES = 25
/** Requests before those that count: a server that has been up for a while. */
const WARMING = 25
const b = packBrief(demos.find(({ id }) => id === (process.argv[2] ?? 'hazelnuts'))!.brief)

const PAGES = [
  '/',
  '/examples',
  `/brief?b=${b}`,
  `/advice?b=${b}`,
  `/advice?b=${b}&print=1`,
  `/advice/trail?b=${b}&id=p1.xray-dual.c0.expected`,
  `/advice/rules?b=${b}&point=1&equipment=xray-dual`,
  `/compare?b=${b}`,
  `/compare?b=${b}&x=p1.xray-single&x=p1.xray-dual&x=p1.coil-single&print=1`,
  '/exercises',
  `/exercises?b=${b}`,
  '/exercises?handout=1&answers=1',
  '/exercises/record?done=jar-heel_base',
  `/exercises/own-smallest-size?b=${b}&guess=-`,
  ...EXERCISES.map(({ id }) => `/exercises/${id}${id === 'failed-check' ? '' : '?guess=-'}`),
  `/rules?b=${b}`,
]
const COMPUTING = [
  `/trade-offs?b=${b}`,
  `/trade-offs/metal-detector?b=${b}`,
  `/fragment?b=${b}`,
  `/card?b=${b}`,
]

const { server, address } = await serve({ port: 0, listen: '127.0.0.1' })
const agent = new Agent({ keepAlive: true, maxSockets: 1 })
const short = (path: string) => path.replace(/b=[\w-]+/, 'b=…')

/** One request as a browser sends it, read to its end. */
function get(path: string, headers: Record<string, string> = {}): Promise<{ status: number; bytes: number }> {
  return new Promise((resolve, reject) => {
    request(new URL(path, address), { agent, headers }, (answer) => {
      let bytes = 0
      answer.on('data', (part: Buffer) => {
        bytes += part.length
      })
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, bytes }))
    })
      .on('error', reject)
      .end()
  })
}

async function timed(path: string, times: number, warming = 0) {
  const first = performance.now()
  const { status, bytes } = await get(path, { 'accept-encoding': 'gzip' })
  const firstMs = performance.now() - first
  for (let k = 0; k < warming; k++) await get(path)
  const ms: number[] = []
  for (let k = 0; k < times; k++) {
    const start = process.cpuUsage()
    await get(path)
    const { user, system } = process.cpuUsage(start)
    ms.push((user + system) / 1000)
  }
  ms.sort((x, y) => x - y)
  return { status, bytes, firstMs, ms: ms[ms.length >> 1] ?? firstMs }
}

console.log(`median of ${TIMES} in ms of the processor, first time in ms by the clock, kB as sent, page`)
let slow = 0
for (const path of PAGES) {
  const { status, bytes, firstMs, ms } = await timed(path, TIMES, WARMING)
  const over = ms > MOST_MS
  if (over || status !== 200) slow++
  const columns = [
    ms.toFixed(1).padStart(7),
    firstMs.toFixed(0).padStart(7),
    (bytes / 1000).toFixed(0).padStart(5),
  ]
  console.log(
    `${columns.join(' ')}  ${short(path)}${over ? `  over ${MOST_MS} ms` : ''}${status === 200 ? '' : ` ${status}`}`,
  )
}
console.log('pages that compute beside the advice:')
for (const path of COMPUTING) {
  const { status, bytes, firstMs, ms } = await timed(path, 3)
  console.log(
    `${[ms.toFixed(1).padStart(7), firstMs.toFixed(0).padStart(7), (bytes / 1000).toFixed(0).padStart(5)].join(' ')}  ${short(path)} ${status}`,
  )
}
console.log(slow === 0 ? `every page within ${MOST_MS} ms` : `${slow} pages over ${MOST_MS} ms`)
process.exitCode = slow === 0 ? 0 : 1
agent.destroy()
server.close()
