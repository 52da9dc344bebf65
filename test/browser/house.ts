import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, it } from 'vitest'
import { AXE, violationsOn } from './axe.ts'
import { faintWordsOn } from './contrast.ts'

/** A busy machine may take its time; a test that hangs ends all the same. */
const PATIENCE_MS = 120_000

export interface House {
  /** Opens a page of the served house in a context of its own. */
  readonly open: (path: string, options?: BrowserContextOptions) => Promise<Page>
  /** The house's own address, once it is served. */
  readonly address: () => string
  /** Errors of the console and of scripts, and requests that left the house. */
  readonly complaints: string[]
}

/** The served house for the tests of a describe block. */
export function openHouse(): House {
  let browser: Browser
  let address: string
  const complaints: string[] = []
  beforeAll(async () => {
    const served = inject('served')
    address = served.address
    browser = await chromium.connect(served.browser)
  })
  afterAll(() => browser?.close())
  const open = async (path: string, options: BrowserContextOptions = {}): Promise<Page> => {
    const page = await (await browser.newContext(options)).newPage()
    page.setDefaultTimeout(PATIENCE_MS)
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

/**
 * Each page once, one after another in one window: axe finds nothing, in light and dark, with everything unfolded,
 * and nothing scrolls sideways at any width.
 */
export function itReadsEasily(house: House, pages: readonly (readonly [name: string, path: string])[]): void {
  let page: Page
  beforeAll(async () => {
    page = await house.open('/')
    await page.addInitScript({ content: AXE })
  })
  afterAll(() => page?.context().close())
  it.each(pages)(
    '%s: axe finds nothing, in light and dark, and nothing scrolls sideways',
    async (_, path) => {
      await page.goto(`${house.address()}${path.slice(1)}`)
      await expectReadable(page)
    },
  )
}

/** 640 px is 200 % of a screen of 1280. */
const WIDTHS = [1280, 1600, 768, 640, 390, 320]

/** The same of a page as it stands: one that was sent a form, or filled in. */
export async function expectReadable(page: Page): Promise<void> {
  await page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true })")
  await page.setViewportSize({ width: WIDTHS[0]!, height: 900 })
  await page.emulateMedia({ colorScheme: 'light' })
  expect(await violationsOn(page), 'light').toEqual([])
  // Nothing but colours changes with the scheme (test/web/colour-scheme.test.ts), so only they are looked at again.
  await page.emulateMedia({ colorScheme: 'dark' })
  const { seen, faint } = await faintWordsOn(page)
  expect(faint, 'dark').toEqual([])
  expect(seen).toBeGreaterThan(5)
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 900 })
    expect(await page.evaluate('document.documentElement.scrollWidth'), `${width} px`).toBeLessThanOrEqual(
      width,
    )
  }
}
