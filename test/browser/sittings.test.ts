import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { EXERCISES } from '../../src/exercises/list.ts'
import { VOICES } from '../../src/exercises/voice.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { enter, pressKey, tabTo, type } from './by-keyboard.ts'
import { hasBrowser } from './chromium.ts'
import { openHouse } from './house.ts'
import { printed } from './on-paper.ts'

const packedOf = (id: string) => packBrief(demos.find((demo) => demo.id === id)!.brief)

describe.skipIf(!hasBrowser)('three sittings', () => {
  const house = openHouse()
  const { open, address, complaints } = house
  const titleOf = (page: Page) => page.locator('h1').textContent()

  it('buyer: from an example to a printed comparison with clause, by keyboard alone', async () => {
    const page = await open('/examples')
    await enter(page, /^Hazelnut kernels/)
    await expect.poll(() => page.title()).toContain('Advice: Hazelnut kernels')
    await enter(page, /^Compare quotes$/)
    expect(await titleOf(page)).toContain('Hazelnut kernels')
    await tabTo(page, /^Machines: \d+ of \d+$/)
    await page.keyboard.press('Enter')
    await tabTo(page, /^x-ray from above, single energy, after packing$/)
    await page.keyboard.press('Space')
    await enter(page, /^Compare$/)
    await tabTo(page, /^Enter prices, power and work/)
    await page.keyboard.press('Enter')
    await type(page, /^Days the line runs a year$/, '250')
    await type(page, /^A good pack rejected$/, '1,5')
    await enter(page, /^Work out the cost$/)
    expect(await page.locator('#costs').locator('..').textContent()).toMatch(/Good packs rejected18,000/)
    await enter(page, /^Print$/)
    const paper = await printed(page)
    for (const words of [
      'By cost and effort',
      'Side by side',
      'Ask the supplier',
      'Settle ourselves',
      'Acceptance clause for the order',
      '29 runs',
      '2,995 good packs in a row',
      'On our site.',
      '18,000',
    ])
      expect(paper).toContain(words)
    await page.context().close()
  })

  it('consultant: from a filled brief to a number, its calculation and the printed advice with sources', async () => {
    const page = await open(`/brief?b=${packedOf('cheddar')}`)
    await type(page, /^Speed/, '16')
    await enter(page, /^Get the advice$/)
    await expect.poll(() => page.title()).toContain('Advice: Cheddar block')
    await enter(page, /^\d+\.\d+$/)
    expect(new URL(page.url()).pathname).toMatch(/\/advice\/trail$/)
    expect(await page.locator('main').textContent()).toContain('Sources')
    await page.goBack()
    await enter(page, /^everything$/)
    const paper = await printed(page)
    for (const words of [
      'Cheddar block, 5 kg, film wrapped',
      'Machines, ranked',
      'Assumed',
      'Sources',
      'Printed on',
    ])
      expect(paper).toContain(words)
    expect(paper).toMatch(/safe to promise/i)
    expect(paper).toMatch(/A test on the real product decides/)
    await page.context().close()
  })

  it('trainer: through a prediction, the room, the clock, the handout and the record', async () => {
    const page = await open('/')
    await enter(page, /^Exercises$/)
    await enter(page, /^One in a thousand$/)
    await type(page, /^How many good packs lie in the reject bin/, '115')
    await enter(page, /^Predict, and show the answer$/)
    expect(await page.locator('.judged').textContent()).toContain('was right')
    await enter(page, /^All exercises$/)
    await enter(page, /^Thin and fast, or thick and slow$/)
    await tabTo(page, /^It gets larger, by more than a twentieth$/)
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('ArrowDown')
    await enter(page, /^Predict, and show the answer$/)
    expect(await page.locator('.judged').textContent()).toContain('Smaller, by a fifth to two fifths')
    await enter(page, /^Record of this sitting$/)
    await type(page, /^Name$/, 'A. Person')
    await enter(page, /^Write the names in$/)
    await enter(page, /^Print$/)
    const record = await printed(page)
    for (const words of ['Assessment record', 'A. Person', '2 of 2 predictions right', '115', 'Signature'])
      expect(record).toContain(words)

    await page.goto(`${address()}exercises`)
    await enter(page, /^In front of a room$/)
    await enter(page, /^Foil and metallised film$/)
    const screens: string[] = []
    for (let screen = 0; screen < 6; screen++) {
      screens.push((await page.locator('.over-title').textContent()) ?? '')
      if (screen < 5) await pressKey(page, screen % 2 === 0 ? 'ArrowRight' : 'PageDown')
    }
    expect(screens).toEqual([
      'Predict, 1 of 2',
      'What comes out, 1 of 2',
      'Why, 1 of 2',
      'Predict, 2 of 2',
      'What comes out, 2 of 2',
      'Why, 2 of 2',
    ])
    await pressKey(page, 'ArrowLeft')
    await pressKey(page, 'PageUp')
    expect(await page.locator('.over-title').textContent()).toBe('Predict, 2 of 2')
    const size = await page.evaluate("parseFloat(getComputedStyle(document.querySelector('h1')).fontSize)")
    expect(size).toBeGreaterThan(40)

    await page.goto(`${address()}exercises?handout=1&answers=0`)
    const questions = await printed(page)
    expect(questions).toContain('Because')
    expect(questions).not.toContain('Nothing is found there')
    for (const exercise of EXERCISES) expect(questions).toContain(exercise.title(VOICES.full))
    await page.goto(`${address()}exercises?handout=1&answers=1&only=jar-heel`)
    expect(await printed(page)).toContain('Nothing is found there')
    await page.context().close()
  })

  it('the drill keeps time without script', async () => {
    const page = await open('/exercises/failed-check', { javaScriptEnabled: false })
    await page.getByRole('link', { name: 'Start the clock' }).click()
    for (const step of ['stop', 'all', 'bad', 'proof', 'open', 'whole']) {
      await page.locator(`input[value="${step}"]`).check()
      await page.getByRole('button', { name: 'Go on' }).click()
    }
    expect(await page.locator('.answer').textContent()).toMatch(
      /^(?:\d+ min )?\d+ s, 6 of 6 right\. On a running line \d+ packs/,
    )
    await page.context().close()
  })

  it('every sitting goes the same way without script', async () => {
    const page = await open(`/compare?b=${packedOf('hazelnuts')}`, { javaScriptEnabled: false })
    await page.getByText('Enter prices, power and work').click()
    await page.locator('[id="perRejectedPack"]').fill('nonsense')
    await page.getByRole('button', { name: 'Work out the cost' }).click()
    await expect.poll(() => page.title()).toMatch(/^Error: Compare quotes/)
    await page.locator('[id="perRejectedPack"]').fill('2')
    await page.locator('[id="misses"]').selectOption('1')
    await page.getByRole('button', { name: 'Write the clause anew' }).click()
    expect(await page.locator('.clause').first().textContent()).toContain('46 runs')
    await page.goto(`${address()}exercises/jar-heel?b=${packedOf('sauce-jar')}`)
    await page.locator('input[value="heel"]').check()
    await page.getByRole('button', { name: 'Predict, and show the answer' }).click()
    expect(await page.locator('.judged').textContent()).toContain('was wrong')
    await page.context().close()
  })

  it('met no blocked script, no error and no other server on the way', () => {
    expect(complaints).toEqual([])
  })
})
