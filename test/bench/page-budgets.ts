/**
 * How long, heavy and wordy the pages are, for every demo brief and the briefs of test/practice (npm run pages;
 * -- --demos for the demo briefs alone): screens at 1280 × 900 and 390 × 844, words a reader sees, elements, stops of
 * the tab key, kB before compression, sheets of A4 and of Letter, where the answer ends on the first screen, px, and
 * processor time of the first view over an advice that is there already, ms (the program warm, the page drawn
 * afresh). A figure over its budget is marked with "!", and the script ends with 1.
 */
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { serve } from '@hono/node-server'
import { chromium, type Page } from 'playwright-core'
import { advise } from '../../src/advise.ts'
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { Advice } from '../../src/contract/index.ts'
import { createPages } from '../../src/web/app.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { door } from '../../src/web/serving/door.ts'
import { shortAddresses } from '../../src/web/serving/short-address.ts'
import { startBrowser } from '../browser/chromium.ts'
import { sheetsOf } from '../browser/on-paper.ts'
import { tabStops } from '../browser/tab-stops.ts'
import { BRIEFS } from '../practice/briefs/expert.ts'
import { UNSEEN } from '../practice/briefs/unseen.ts'

interface Budget {
  readonly desk?: number
  readonly phone?: number
  readonly words?: number
  readonly nodes?: number
  readonly stops?: number
  readonly kB?: number
  readonly sheets?: number
  /** Ends of what stands without scrolling, px: all rows of the answer at 1280 × 900, its first row at 390 × 844. */
  readonly answer?: number
  readonly firstRow?: number
}

const PAGES: readonly (readonly [name: string, path: string, budget: Budget])[] = [
  ['advice', 'advice', { desk: 5, phone: 9, words: 900, nodes: 2500, kB: 250, answer: 900, firstRow: 844 }],
  ['brief', 'brief', { desk: 4, stops: 80 }],
  ['compare', 'compare', { desk: 4 }],
  ['one page', 'advice?print=page', { sheets: 1 }],
  ['in short', 'advice?print=short', { sheets: 4 }],
  ['everything', 'advice?print=1', { sheets: 15 }],
]
const MOST_MS = 10
/** First views drawn, of which the median counts; of the first brief so many before that, until the program is warm. */
const TIMES = 9
const WARM_UP = 4

setFlagsFromString('--expose-gc')
const sweep = runInNewContext('gc') as (how: { type: 'minor' | 'major' }) => void

const quickly = process.argv.includes('--demos')
const briefs: readonly (readonly [string, unknown])[] = [
  ...demos.map(({ id, brief }) => [id, brief] as const),
  ...(quickly ? [] : [...Object.entries(BRIEFS), ...Object.entries(UNSEEN)]),
]

/** What a reader sees: words are what has a letter in it, figures and marks aside. */
const SEEN = `(() => {
  for (const one of document.querySelectorAll('.unseen')) one.remove()
  const words = document.body.innerText.split(/\\s+/).filter((word) => /\\p{L}/u.test(word)).length
  return { words, nodes: document.querySelectorAll('*').length }
})()`

const known = new Map<string, Advice>()
const pages = () =>
  door(
    shortAddresses(
      createPages(async (brief) => known.get(JSON.stringify(brief.given)) ?? advise(brief)).fetch,
    ),
  )
const server = serve({ fetch: pages().fetch, port: 0, hostname: '127.0.0.1' })
const address = await new Promise<string>((resolve) => {
  server.once('listening', () => resolve(`http://127.0.0.1:${(server.address() as { port: number }).port}/`))
})
const chrome = await startBrowser()
const browser = await chromium.connect(chrome.wsEndpoint())
const page = await browser.newPage()

async function screens(at: Page, url: string, width: number, height: number): Promise<number> {
  await at.setViewportSize({ width, height })
  await at.goto(url)
  const high = await at.evaluate<number>('document.documentElement.scrollHeight')
  return Number((high / height).toFixed(1))
}

/** Sheets it takes on the paper that needs more; on a crowded machine printing now and then fails and is asked for again. */
async function mostSheets(at: Page, url: string, again = 3): Promise<number> {
  await at.goto(url)
  try {
    return Math.max(await sheetsOf(at, 'A4'), await sheetsOf(at, 'Letter'))
  } catch (error) {
    if (again === 0) throw error
    return mostSheets(at, url, again - 1)
  }
}

/** How far down the first screen the answer ends, px. */
const endOf = (at: Page, selector: string) =>
  at.evaluate<number>(
    `Math.ceil((document.querySelector(${JSON.stringify(selector)})?.getBoundingClientRect().bottom ?? Infinity) + scrollY)`,
  )

/** Median processor time of drawing a page over an advice that is there, each time as for a first reader. */
async function firstViewMs(key: string, path: string): Promise<number> {
  const times: number[] = []
  // Copied ahead and swept up after, so that the page pays for its own garbage alone: what the collector had to move of
  // copies just made took longer than drawing.
  const advices = Array.from({ length: TIMES }, () => structuredClone(known.get(key)!))
  sweep({ type: 'major' })
  for (const advice of advices) {
    const app = pages()
    known.set(key, advice)
    // The advice is kept before the first page asks for it, as it is on the server.
    await (await app.request(path.replace(/[^/]*$/, 'advice/part?part=missing'))).arrayBuffer()
    for (const _ of [1, 2]) sweep({ type: 'minor' })
    const start = process.cpuUsage()
    await (await app.request(path)).arrayBuffer()
    const { user, system } = process.cpuUsage(start)
    times.push((user + system) / 1000)
  }
  return Math.round(times.sort((a, b) => a - b)[TIMES >> 1]!)
}

let over = 0
function shown(value: number | undefined, budget: number | undefined): string {
  const isOver = value !== undefined && budget !== undefined && value > budget
  if (isOver) over++
  return `${value ?? ''}${isOver ? '!' : ''}`.padStart(7)
}

console.log(
  `${'brief'.padEnd(20)}${'page'.padEnd(11)}   desk  phone  words  nodes  stops     kB sheets answer   row1     ms`,
)
for (const [name, brief] of briefs) {
  const parsed = parseBrief(structuredClone(brief))
  if (!parsed.ok) throw new Error(`${name} is no brief`)
  const packed = packBrief(parsed.brief.given)
  const key = JSON.stringify(parsed.brief.given)
  known.set(key, await advise(parsed.brief))
  if (name === briefs[0]![0])
    for (let k = 0; k < WARM_UP; k++)
      for (const [, path] of PAGES) await firstViewMs(key, `/b/${packed}/${path}`)
  for (const [words, path, budget] of PAGES) {
    const url = `${address}b/${packed}/${path}`
    const figures: { -readonly [what in keyof Budget]: Budget[what] } = {}
    if (budget.sheets !== undefined) figures.sheets = await mostSheets(page, url)
    else {
      figures.phone = await screens(page, url, 390, 844)
      if (budget.firstRow) figures.firstRow = await endOf(page, '.answer-table tbody tr:not(.line-name)')
      figures.desk = await screens(page, url, 1280, 900)
      if (budget.answer) figures.answer = await endOf(page, '.answer-table tbody tr:last-child')
      figures.stops = await tabStops(page)
      Object.assign(figures, await page.evaluate<{ words: number; nodes: number }>(SEEN))
    }
    figures.kB = Math.round((await (await fetch(url)).arrayBuffer()).byteLength / 1024)
    const line = (['desk', 'phone', 'words', 'nodes', 'stops', 'kB', 'sheets', 'answer', 'firstRow'] as const)
      .map((what) => shown(figures[what], budget[what]))
      .join('')
    const ms = await firstViewMs(key, `/b/${packed}/${path}`)
    console.log(`${name.padEnd(20)}${words.padEnd(11)}${line}${shown(ms, MOST_MS)}`)
  }
}
console.log(over === 0 ? 'every figure within its budget' : `${over} figures over their budget`)
await browser.close()
await chrome.close()
server.close()
process.exitCode = over === 0 ? 0 : 1
