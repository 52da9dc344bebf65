import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, expect } from 'vitest'
import { type Served, serve } from '../../src/web/serving/serve.ts'
import { violationsOn } from './axe.ts'
import { startBrowser } from './chromium.ts'

export interface House {
  /** Opens a page of the served house in a context of its own. */
  readonly open: (path: string, options?: BrowserContextOptions) => Promise<Page>
  /** The house's own address, once it is served. */
  readonly address: () => string
  /** Errors of the console and of scripts, and requests that left the house. */
  readonly complaints: string[]
}

/** Serves the house and starts a browser for the tests of a describe block. */
export function openHouse(): House {
  let browser: Browser
  let served: Served
  let address: string
  const complaints: string[] = []
  beforeAll(async () => {
    browser = await startBrowser()
    served = await serve({ port: 0, listen: '127.0.0.1', pool: { budgetMs: 120_000 } })
    address = served.address
  })
  afterAll(async () => {
    await browser?.close()
    await served?.stop()
  })
  const open = async (path: string, options: BrowserContextOptions = {}): Promise<Page> => {
    const page = await (await browser.newContext(options)).newPage()
    page.on('console', (message) => {
      if (message.type() === 'error' && !message.text().includes('422')) complaints.push(message.text())
    })
    page.on('pageerror', (error) => complaints.push(error.message))
    page.on('request', (request) => {
      if (!request.url().startsWith(address)) complaints.push(`asked elsewhere: ${request.url()}`)
    })
    await page.goto(`${address}${path.replace(/^\//, '')}`)
    return page
  }
  return { open, address: () => address, complaints }
}

/** axe finds nothing, in light and dark, with everything unfolded, and nothing scrolls sideways at any width. */
export async function expectReadable(page: Page): Promise<void> {
  await page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true })")
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    expect(await violationsOn(page), colorScheme).toEqual([])
  }
  for (const width of [320, 390, 640, 768, 1280, 1600]) {
    await page.setViewportSize({ width, height: 900 })
    expect(await page.evaluate('document.documentElement.scrollWidth'), `${width} px`).toBeLessThanOrEqual(
      width,
    )
  }
}
