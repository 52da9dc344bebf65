import { existsSync } from 'node:fs'
import { type BrowserServer, chromium } from 'playwright-core'

/** Chromium without windows (Debian: chromium-headless-shell) takes a third of the time that the whole one takes. */
const PLACES = ['/usr/bin/chromium-headless-shell', '/usr/bin/chromium']

const PATH = process.env.GRITWISE_CHROMIUM ?? PLACES.find(existsSync) ?? PLACES[0]!

/** True where there is a browser to drive. Without one the browser part is skipped, or fails where it is required. */
export const hasBrowser = existsSync(PATH)

const missing = `the browser part was SKIPPED: there is no Chromium at ${process.env.GRITWISE_CHROMIUM ?? PLACES.join(' or ')} (set GRITWISE_CHROMIUM)`
if (!hasBrowser && process.env.GRITWISE_REQUIRE_BROWSER === '1') throw new Error(missing)

/** Says aloud that the browser part is left out. */
export const warnOfNoBrowser = (): void => {
  const line = '!'.repeat(missing.length)
  console.warn(`\n${line}\n${missing}\n${line}\n`)
}

/** A browser for every file of tests, that speaks to nobody but the page under test. */
export const startBrowser = (): Promise<BrowserServer> =>
  chromium.launchServer({
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
