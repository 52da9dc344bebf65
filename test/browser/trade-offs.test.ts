import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { hasBrowser } from './chromium.ts'
import { itReadsEasily, openHouse } from './house.ts'

const packed = (demo: string) => packBrief(demos.find(({ id }) => id === demo)?.brief)

describe.skipIf(!hasBrowser)('trade-offs in a browser', () => {
  const house = openHouse()
  const { open, complaints } = house

  const pages = [
    ['trade-offs', `/trade-offs?b=${packed('hazelnuts')}&point=1&machines=xray-single,xray-dual`],
    ['trade-offs for paper', `/trade-offs?b=${packed('cheddar')}&input=false-rejects&print=1`],
    ['metal detector', `/trade-offs/metal-detector?b=${packed('cheddar')}&angle=30`],
    ['metal detector for paper', `/trade-offs/metal-detector?b=${packed('mince')}&print=1`],
  ] as const

  itReadsEasily(house, pages)

  it('redraws as one chooses, and keeps the focus where it was', async () => {
    const page = await open(`/trade-offs?b=${packed('cheddar')}`)
    await page.getByRole('radio', { name: 'speed', exact: true }).check()
    await page.getByRole('heading', { name: 'Findable size against speed' }).waitFor()
    await expect.poll(() => page.evaluate('document.activeElement.id')).toBe('input-speed')
    expect(await page.locator('main').count()).toBe(1)
    await page.getByRole('checkbox', { name: 'metal detector, one frequency at a time' }).check()
    await page.getByRole('heading', { name: 'C: metal detector, one frequency at a time' }).waitFor()
    await expect.poll(() => page.getByRole('checkbox', { checked: true }).count()).toBe(3)
    await page.context().close()
  })

  it('draws the same without script', async () => {
    const page = await open(`/trade-offs?b=${packed('cheddar')}`, { javaScriptEnabled: false })
    await page.locator('#input-kV').check()
    await page.getByRole('button', { name: 'Draw' }).click()
    await page.getByRole('heading', { name: 'Findable size against tube voltage' }).waitFor()
    expect(new URL(page.url()).searchParams.get('input')).toBe('kV')
    await page.getByRole('link', { name: 'Metal detector response' }).click()
    await page.locator('#choose-angle').fill('60')
    await page.getByRole('button', { name: 'Draw' }).click()
    expect(await page.locator('main').textContent()).toContain('at 60° to the travel')
    await page.context().close()
  })

  it('prints to A4 and Letter', async () => {
    const page = await open(`/trade-offs?b=${packed('cheddar')}&print=1`)
    for (const format of ['A4', 'Letter'])
      expect((await page.pdf({ format })).subarray(0, 5).toString()).toBe('%PDF-')
    expect(await page.locator('details:not([open])').count()).toBe(0)
    await page.context().close()
  })

  it('met no blocked script and no error on the way', () => {
    expect(complaints).toEqual([])
  })
})
