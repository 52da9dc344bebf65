import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { violationsOn } from './axe.ts'
import { hasBrowser } from './chromium.ts'
import { faintWordsOn } from './contrast.ts'
import { openHouse } from './house.ts'
import { sheetsOf } from './on-paper.ts'
import { tabStops } from './tab-stops.ts'

const packed = (demo: string) => packBrief(demos.find(({ id }) => id === demo)!.brief)
const nuts = packed('hazelnuts')
/** Demo briefs whose advice is worked out for this run anyway; npm run pages holds them all to their budgets. */
const DEMOS = ['hazelnuts', 'sauce-jar']
const MOST_STOPS = 80

/** How far down the page something ends, px. */
const BOTTOM = (selector: string) =>
  `document.querySelector(${JSON.stringify(selector)}).getBoundingClientRect().bottom + scrollY`

describe.skipIf(!hasBrowser)('the first screen of an advice', () => {
  const { open, complaints } = openHouse()

  it.each(DEMOS)(
    'says what to put where, every row of the answer and what to do before ordering without scrolling, at 1280 × 800: %s',
    async (demo) => {
      const page = await open(`/advice?b=${packed(demo)}`, { viewport: { width: 1280, height: 800 } })
      for (const part of ['.answer', '.answer-table tbody tr:last-child', '.margin ul'])
        expect(await page.evaluate(BOTTOM(part)), part).toBeLessThanOrEqual(800)
      await page.context().close()
    },
  )

  it('says the sentence and the first row without scrolling, and cuts no word, at 390 × 844', async () => {
    const page = await open(`/advice?b=${nuts}`, { viewport: { width: 390, height: 844 } })
    for (const part of ['.answer', '.answer-table tbody tr'])
      expect(await page.evaluate(BOTTOM(part)), part).toBeLessThanOrEqual(844)
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390)
    await page.context().close()
  })

  it('has its head in two lines at 390 px, the other pages behind one word', async () => {
    const page = await open(`/advice?b=${nuts}`, { viewport: { width: 390, height: 844 } })
    expect(await page.evaluate("document.querySelector('.masthead').offsetHeight")).toBeLessThanOrEqual(90)
    expect(await page.getByRole('link', { name: 'Rule book', exact: true }).isVisible()).toBe(false)
    await page.locator('.more-pages > summary').click()
    expect(await page.getByRole('link', { name: 'Rule book', exact: true }).isVisible()).toBe(true)
    await page.context().close()
  })

  it.each(DEMOS)('the page for a boss fits one sheet of A4 and of Letter: %s', async (demo) => {
    const page = await open(`/advice?b=${packed(demo)}&print=page`)
    for (const format of ['A4', 'Letter']) expect(await sheetsOf(page, format), format).toBe(1)
    await page.context().close()
  })

  it('a filled brief is gone through in at most 80 stops of the tab key', async () => {
    const page = await open(`/brief?b=${nuts}`)
    expect(await tabStops(page)).toBeLessThanOrEqual(MOST_STOPS)
    await page.context().close()
  })

  it('opens every fold in its place, and axe finds nothing with all of them open', async () => {
    const page = await open(`/advice?b=${nuts}`)
    const folds = page.locator('.opens > a')
    for (let left = await folds.count(); left > 0; left = await folds.count()) {
      await folds.first().click()
      await expect.poll(() => folds.count()).toBe(left - 1)
    }
    await page.locator('table.machines th a').first().click()
    await page.locator('#why h3').waitFor()
    // What stays in view covers some line of the table wherever the page is scrolled to, but not from its top.
    await page.evaluate('scrollTo(0, 0)')
    expect(await violationsOn(page)).toEqual([])
    await page.context().close()
  })

  it('faint words are found out, whatever lies between them and the ground', async () => {
    const page = await open('/nowhere')
    const said = async (style: string) => {
      await page.evaluate(`document.querySelector('h1').style = ${JSON.stringify(style)}`)
      return (await faintWordsOn(page)).faint.length
    }
    expect(await said('')).toBe(0)
    expect(await said('font-size: 16px; color: #777; background: #fff')).toBeGreaterThan(0)
    expect(await said('font-size: 16px; color: #767676; background: #fff')).toBe(0)
    expect(await said('font-size: 30px; color: #949494; background: #fff')).toBe(0)
    expect(await said('font-size: 30px; color: #000; background: #fff; opacity: 0.3')).toBeGreaterThan(0)
    await page.context().close()
  })

  it('met no error on the way', () => expect(complaints.filter((text) => !text.includes('404'))).toEqual([]))
})
