import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { fileURLToPath, pathToFileURL } from 'node:url'

const path = (relative: string) => fileURLToPath(new URL(relative, import.meta.url))
const PROGRAM = path('../../dist/src/main.js')
const SAID = pathToFileURL(path('./said-at-end.mjs')).href

export interface LinesRun {
  readonly rows: number
  /** Products that came out, wrong rows among them. */
  readonly out: number
  readonly seconds: number
  /** Of all its threads, user and system. */
  readonly cpuS: number
  readonly mostMB: number
}

/** Sends a table through `gritwise lines` on so many workers; what came out is counted and let go. */
export async function linesRun(table: Iterable<string>, workers: number): Promise<LinesRun> {
  const begun = performance.now()
  const child = spawn(
    process.execPath,
    ['--import', SAID, PROGRAM, 'lines', '-', '--json', '--workers', String(workers)],
    {
      stdio: ['pipe', 'pipe', 'ignore', 'pipe'],
    },
  )
  let lines = 0
  child.stdout?.on('data', (chunk: Buffer) => {
    for (const byte of chunk) if (byte === 10) lines++
  })
  let said = ''
  ;(child.stdio[3] as Readable).on('data', (chunk) => {
    said += chunk
  })
  let rows = -1
  const counted = function* () {
    for (const line of table) {
      rows++
      yield line
    }
  }
  const closed = once(child, 'close')
  await pipeline(Readable.from(counted()), child.stdin!)
  await closed
  // The last line is the summary.
  return { rows, out: lines - 1, seconds: (performance.now() - begun) / 1000, ...JSON.parse(said) }
}
