import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { violationsOn } from './axe.ts'
import { hasBrowser } from './chromium.ts'
import { openHouse } from './house.ts'

const nuts = packBrief(demos.find(({ id }) => id === 'hazelnuts')!.brief)

/** How far down the page something ends, px. */
const BOTTOM = (selector: string) =>
  `document.querySelector(${JSON.stringify(selector)}).getBoundingClientRect().bottom + scrollY`

describe.skipIf(!hasBrowser)('the first screen of an advice', () => {
  const { open, complaints } = openHouse()

  it('says what to put where and every row of the answer without scrolling, at 1280 × 800', async () => {
    const page = await open(`/advice?b=${nuts}`, { viewport: { width: 1280, height: 800 } })
    for (const part of ['.answer', '.answer-table tbody tr:last-child', '.margin h2'])
      expect(await page.evaluate(BOTTOM(part)), part).toBeLessThanOrEqual(800)
    await page.context().close()
  })

  it('says the sentence and the first row without scrolling, and cuts no word, at 390 × 844', async () => {
    const page = await open(`/advice?b=${nuts}`, { viewport: { width: 390, height: 844 } })
    for (const part of ['.answer', '.answer-table tbody tr'])
      expect(await page.evaluate(BOTTOM(part)), part).toBeLessThanOrEqual(844)
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390)
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
    expect(await violationsOn(page)).toEqual([])
    await page.context().close()
  })

  it('met no error on the way', () => expect(complaints).toEqual([]))
})
