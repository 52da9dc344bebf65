import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { violationsOn } from './axe.ts'
import { hasBrowser } from './chromium.ts'
import { itReadsEasily, openHouse } from './house.ts'

describe.skipIf(!hasBrowser)('form, advice and what stands behind a number', () => {
  const house = openHouse()
  const { open, complaints } = house
  const jar = packBrief(demos.find(({ id }) => id === 'sauce-jar')?.brief)

  const pages = [
    ['empty brief', '/'],
    ['examples', '/examples'],
    ['filled brief', `/brief?b=${jar}`],
    ['advice', `/advice?b=${jar}`],
    ['advice for paper', `/advice?b=${jar}&print=1`],
    ['calculation', `/advice/trail?b=${jar}&id=p0.xray-side.c0.expected`],
    ['rules tried', `/advice/rules?b=${jar}&point=0&equipment=xray-side`],
    ['missing page', '/nowhere'],
  ] as const

  itReadsEasily(house, pages)

  it('axe finds nothing against the form with problems', async () => {
    const page = await open(`/brief?b=${jar}`)
    await page.getByLabel('Height of the food').fill('thick')
    await page.getByRole('button', { name: 'Get the advice' }).first().click()
    await page.getByRole('heading', { name: 'There is a problem' }).waitFor()
    expect(await violationsOn(page)).toEqual([])
  })

  it('prints to A4 and Letter with every reason open', async () => {
    const page = await open(`/advice?b=${jar}&print=1`)
    for (const format of ['A4', 'Letter']) {
      const pdf = await page.pdf({ format })
      expect(pdf.subarray(0, 5).toString()).toBe('%PDF-')
    }
    expect(await page.locator('details:not([open])').count()).toBeLessThanOrEqual(1)
  })

  it('met no blocked script, no error and no other server on the way', () => {
    expect(complaints.filter((text) => !text.includes('404'))).toEqual([])
  })
})
