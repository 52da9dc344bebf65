import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { hasBrowser } from './chromium.ts'
import { openHouse } from './house.ts'

describe.skipIf(!hasBrowser)('in a browser', () => {
  const house = openHouse()
  const { open, complaints } = house

  const beans = packBrief(demos.find(({ id }) => id === 'beans')?.brief)

  it('walks from an example through a changed number to the advice, a reason and a calculation', async () => {
    const page = await open('/')
    await page.locator('#demo-beans').getByText('Open in the form').click()
    const headline = page.locator('#headline')
    await page.getByLabel('Height of the food').fill('1,5 cm')
    await page.locator('#note-points\\.0\\.heightMm').getByText('understood as 15 mm').waitFor()
    // The line under the field comes with the answer so far, in one part.
    expect(await headline.textContent()).toContain('safe to promise')

    await page.getByRole('button', { name: 'Get the advice' }).first().click()
    await page.getByRole('heading', { level: 1, name: 'Green beans, frozen, deep bed' }).waitFor()
    expect(await page.locator('.caption-line').first().textContent()).toContain('15 × 390')

    await page.locator('table.machines th a').first().click()
    await page.locator('#why h3').waitFor()
    expect(new URL(page.url()).pathname).toMatch(/^\/b\/[\w-]+\/advice$/)
    await page.locator('#why').getByText('Every rule that was tried').click()
    await page
      .getByText(/Does not apply/)
      .first()
      .waitFor()
    await page.goBack()

    await page.locator('table.answer-table td.n a').first().click()
    await page.getByText('Under each value').waitFor()
    await page.locator('.trail details:not([open]) > summary').first().click()
    expect(await page.locator('.trail').textContent()).toContain('table value')
    await page.goBack()
    await page.getByRole('heading', { level: 1, name: 'Green beans, frozen, deep bed' }).waitFor()
  })

  it('walks the same way without script', async () => {
    const page = await open('/', { javaScriptEnabled: false })
    await page.locator('#demo-beans a.second').click()
    await page.locator('[id="points.0.heightMm"]').fill('thick')
    await page.locator('button[value="advise"]').last().click()
    await expect.poll(() => page.title()).toBe('Error: Brief – gritwise')
    await page.locator('.summary-of-errors a').first().click()
    expect(page.url()).toContain('#points.0.heightMm')
    await page.locator('[id="points.0.heightMm"]').fill('20')
    await page.locator('button[value="add:contaminants"]').click()
    await page.locator('[id="contaminants.5.material"]').selectOption('ss316')
    await page.locator('[id="contaminants.5.mustFindMm"]').fill('2')
    await page.locator('button[value="advise"]').last().click()
    await expect.poll(() => page.title()).toBe('Advice: Green beans, frozen, deep bed – gritwise')
    expect(await page.locator('table.answer-table').textContent()).toContain('stainless steel 316')
    await page.locator('table.machines th a').first().click()
    await page.getByText('Every rule that was tried').click()
    expect(await page.locator('h1').textContent()).toContain('Rules tried')
  })

  it('moves the focus to what is wrong', async () => {
    const page = await open(`/brief?b=${beans}`)
    await page.getByLabel('Height of the food').fill('')
    await page.getByRole('button', { name: 'Get the advice' }).first().click()
    await page.getByRole('heading', { name: 'There is a problem' }).waitFor()
    await expect.poll(() => page.evaluate('document.activeElement.className')).toContain('summary-of-errors')
  })

  it('met no blocked script, no error and no other server on the way', () => {
    expect(complaints.filter((text) => !text.includes('404'))).toEqual([])
  })
})
