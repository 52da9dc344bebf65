import { existsSync } from 'node:fs'
import { type Browser, chromium } from 'playwright-core'

const PATH = process.env.GRITWISE_CHROMIUM ?? '/usr/bin/chromium'

/** True where there is a browser to drive. Without one the walk is skipped aloud, or fails where it is required. */
export const hasBrowser = existsSync(PATH)

if (!hasBrowser) {
  const message = `the browser part was SKIPPED: there is no Chromium at ${PATH} (set GRITWISE_CHROMIUM)`
  if (process.env.GRITWISE_REQUIRE_BROWSER === '1') throw new Error(message)
  console.warn(`\n${'!'.repeat(message.length)}\n${message}\n${'!'.repeat(message.length)}\n`)
}

/** A browser that speaks to nobody but the page under test. */
export const startBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: PATH,
    args: [
      '--no-sandbox',
      '--headless',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })
