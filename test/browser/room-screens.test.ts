import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { hasBrowser } from './chromium.ts'
import { openHouse } from './house.ts'

const jar = packBrief(demos.find(({ id }) => id === 'sauce-jar')!.brief)
const ANSWERED = [
  'routine-check?guess=c0',
  'turning-a-wire?guess=along',
  'bone-by-age?guess=n0',
  'bone-by-age?guess=hands.1.2.3.0.0',
  'failed-check?began=1&ended=99000&g=again_all_lay_one_bin_short',
  'misconceptions?guess=hands.1.2',
  'voltage-too-high?guess=smaller',
].map((path) => `/exercises/${path}&present=1`)
const WITH_PICTURES = [`?b=${jar}&`, `/dial?b=${jar}&`, `/spot?b=${jar}&step=marks&squares=C3&`].map(
  (path) => `/exercises${path}present=1`,
)

/** Run in the page. */
const MEASURE = `({
  heightPx: document.documentElement.scrollHeight,
  widthPx: document.documentElement.scrollWidth,
  lettersPx: [...document.querySelectorAll('main svg text')].map(
    (text) => Number.parseFloat(getComputedStyle(text).fontSize) * (text.getScreenCTM()?.a ?? 1),
  ),
})`
interface Seen {
  readonly heightPx: number
  readonly widthPx: number
  readonly lettersPx: readonly number[]
}

describe.skipIf(!hasBrowser)('a screen before a room, 1920 by 1080', () => {
  const { open } = openHouse()

  it('holds all that is shown, and no drawing has letters under 20 px', { timeout: 120_000 }, async () => {
    const page = await open('/exercises?present=1')
    await page.setViewportSize({ width: 1920, height: 1080 })
    for (const path of [...ANSWERED, ...WITH_PICTURES]) {
      await page.goto(new URL(path, page.url()).href)
      const seen = (await page.evaluate(MEASURE)) as Seen
      expect([seen.heightPx, seen.widthPx], path).toEqual([1080, 1920])
      expect(Math.min(...seen.lettersPx, 99), path).toBeGreaterThanOrEqual(20)
    }
    await page.context().close()
  })
})
