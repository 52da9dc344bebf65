/**
 * How long, heavy and wordy the pages are, for every demo brief and the briefs of test/practice (npm run pages):
 * screens at 1280 × 900 and 390 × 844, words a reader sees, elements, kB before compression, sheets of A4, processor
 * time of the first view over the advice (worked out before), in ms. A figure over its budget is marked with "!".
 */
import { chromium, type Page } from 'playwright-core'
import { advise } from '../../src/advise.ts'
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { Advice } from '../../src/contract/index.ts'
import { createApp } from '../../src/web/app.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { serve } from '../../src/web/serving/serve.ts'
import { startBrowser } from '../browser/chromium.ts'
import { BRIEFS } from '../practice/expert-briefs.ts'
import { UNSEEN } from '../practice/unseen-briefs.ts'

interface Budget {
  readonly desk?: number
  readonly phone?: number
  readonly words?: number
  readonly nodes?: number
  readonly kB?: number
  readonly sheets?: number
}

const PAGES: readonly (readonly [name: string, path: string, budget: Budget])[] = [
  ['advice', 'advice', { desk: 5, phone: 9, words: 900, nodes: 2500, kB: 250 }],
  ['brief', 'brief', { desk: 4 }],
  ['compare', 'compare', { desk: 4 }],
  ['one page', 'advice?print=page', { sheets: 1 }],
  ['in short', 'advice?print=short', { sheets: 4 }],
  ['everything', 'advice?print=1', { sheets: 15 }],
]

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

const { address, stop } = await serve({ port: 0, listen: '127.0.0.1' })
const server = await startBrowser()
const browser = await chromium.connect(server.wsEndpoint())
const page = await browser.newPage()

const shown = (value: number, budget: number | undefined) =>
  `${value}${budget !== undefined && value > budget ? '!' : ''}`.padStart(7)

async function screens(at: Page, url: string, width: number, height: number): Promise<number> {
  await at.setViewportSize({ width, height })
  await at.goto(url)
  const high = await at.evaluate<number>('document.documentElement.scrollHeight')
  return Number((high / height).toFixed(1))
}

async function sheetsOf(at: Page, url: string): Promise<number> {
  await at.goto(url)
  const pdf = (await at.pdf({ format: 'A4', preferCSSPageSize: false })).toString('latin1')
  return [...pdf.matchAll(/\/Type\s*\/Page\b(?!s)/g)].length
}

/** Processor time of drawing a page over an advice that is there already, the first time it is asked for. */
async function firstViewMs(advice: Advice, path: string): Promise<number> {
  const app = createApp(async () => advice)
  await app.request('/examples')
  const start = process.cpuUsage()
  await (await app.request(path)).arrayBuffer()
  const { user, system } = process.cpuUsage(start)
  return Math.round((user + system) / 1000)
}

console.log(`${'brief'.padEnd(24)}${'page'.padEnd(12)}   desk  phone  words  nodes     kB sheets     ms`)
let over = 0
for (const [name, brief] of briefs) {
  const parsed = parseBrief(structuredClone(brief))
  if (!parsed.ok) throw new Error(`${name} is no brief`)
  const packed = packBrief(parsed.brief.given)
  const advice = await advise(parsed.brief)
  for (const [words, path, budget] of PAGES) {
    const url = `${address}b/${packed}/${path}`
    const onPaper = budget.sheets !== undefined
    const phone = onPaper ? 0 : await screens(page, url, 390, 844)
    const desk = onPaper ? 0 : await screens(page, url, 1280, 900)
    const seen = onPaper
      ? { words: 0, nodes: 0 }
      : await page.evaluate<{ words: number; nodes: number }>(SEEN)
    const kB = Math.round((await (await fetch(url)).arrayBuffer()).byteLength / 1024)
    const sheets = onPaper ? await sheetsOf(page, url) : 0
    const ms = await firstViewMs(advice, `/${path}${path.includes('?') ? '&' : '?'}b=${packed}`)
    const line = [
      shown(desk, budget.desk),
      shown(phone, budget.phone),
      shown(seen.words, budget.words),
      shown(seen.nodes, budget.nodes),
      shown(kB, budget.kB),
      shown(sheets, budget.sheets),
      shown(ms, 10),
    ].join('')
    over += [...line.matchAll(/!/g)].length
    console.log(`${name.padEnd(24)}${words.padEnd(12)}${line}`)
  }
}
console.log(`${over} figures over their budget`)
await browser.close()
await server.close()
await stop()
