import type { TestProject } from 'vitest/node'
import { IN_MEMORY } from '../../src/store/open.ts'
import { serve } from '../../src/web/serving/serve.ts'
import { hasBrowser, startBrowser, warnOfNoBrowser } from './chromium.ts'

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the house is served, and the end of the browser that visits it. */
    served: { address: string; browser: string }
  }
}

/** One worker remembers for all files what it has worked out, and may take its time on a busy machine. */
const POOL = { threads: 1, budgetMs: 120_000 }

/** One house and one browser for all files of browser tests. */
export default async function serveOnce(project: TestProject): Promise<(() => Promise<void>) | undefined> {
  if (!hasBrowser) {
    warnOfNoBrowser()
    return
  }
  const browser = await startBrowser()
  const house = await serve({ port: 0, listen: '127.0.0.1', pool: POOL, place: { file: IN_MEMORY } })
  project.provide('served', { address: house.address, browser: browser.wsEndpoint() })
  return async () => {
    await browser.close()
    await house.stop()
  }
}
