import { text } from 'node:stream/consumers'
import { describe, expect, it } from 'vitest'
import { readRunsTable, readTrial } from '../../src/runs/index.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { bagOfKernels, TRIAL_CSV } from '../runs/bag-of-kernels.ts'
import { hasBrowser } from './chromium.ts'
import { expectReadable, openHouse } from './house.ts'

/**
 * The remaining pieces in the page itself: what lies under a thumb at the middle of "Found" and of "Next", both within
 * the screen, is pressed until no piece is left. As many as were answered, or what lay in the way.
 */
const FIND_THE_REST = `(() => {
  const under = (element) => {
    const { left, top, width, height } = element.getBoundingClientRect()
    const [x, y] = [left + width / 2, top + height / 2]
    return y < innerHeight && x < innerWidth ? document.elementFromPoint(x, y) : null
  }
  const next = [...document.querySelectorAll('.entry-bar button')].find((b) => b.textContent === 'Next')
  for (let pressed = 0; ; pressed++) {
    const piece = document.querySelector('.entry-piece:not([hidden])')
    if (!piece) return pressed
    if (!next.disabled) return piece.id + ' can be passed over unanswered'
    const tile = piece.querySelector('.tile.found')
    tile.scrollIntoView({ block: 'nearest' })
    const there = under(tile)
    if (!tile.contains(there)) return piece.id + ' is out of reach'
    there.click()
    if (next.disabled || under(next) !== next) return 'Next is out of reach after ' + piece.id
    next.click()
  }
})()`

const packed = packBrief(bagOfKernels)

describe.skipIf(!hasBrowser)('a trial', () => {
  const house = openHouse()
  const phone = { viewport: { width: 390, height: 844 }, hasTouch: true }

  it('is planned and read on pages that anyone can read', async () => {
    const plan = await house.open(`/plan?b=${packed}&contaminant=0&size=5`)
    await expectReadable(plan)
    const runs = await house.open(`/runs?b=${packed}`)
    await runs.fill('#table', TRIAL_CSV)
    await runs.getByRole('button', { name: 'Read the runs' }).click()
    await runs.waitForSelector('.trial-plot')
    await expectReadable(runs)
  }, 180_000)

  it('is entered with one hand; nothing typed is lost, and a missed answer cannot be passed over', async () => {
    const page = await house.open(`/runs/enter?b=${packed}&contaminant=0&size=3.3`, phone)
    await page.waitForSelector('.entry-bar')
    await expectReadable(page)
    await page.setViewportSize(phone.viewport)
    const next = page.getByRole('button', { name: 'Next' })
    for (const [name, value] of [
      ['equipment', 'X-07'],
      ['setting', '12'],
      ['date', '2026-11-27'],
      ['cleanPacks', '9151'],
      ['cleanRejects', '3'],
    ] as const)
      await page.fill(`#${name}`, value)
    await next.click()
    const pieces = await page.locator('.entry-piece').count()
    expect(pieces).toBeGreaterThanOrEqual(60)
    const shown = page.locator('.entry-piece:not([hidden])')
    expect(await shown.count()).toBe(1)
    expect(await next.isDisabled()).toBe(true)
    await shown.locator('.tile.missed').tap()
    await next.click()
    await shown.locator('.tile.found').tap()

    // The page is left and opened again: what was answered is there, at the first open piece.
    await page.reload()
    await page.waitForSelector('.entry-bar')
    expect(await page.inputValue('#equipment')).toBe('X-07')
    expect(await shown.getAttribute('id')).toBe('seen-3')
    await shown.locator('.tile.found').tap()
    await next.click()
    expect(await page.evaluate(FIND_THE_REST)).toBe(pieces - 3)
    expect(await page.locator('.entry-state').textContent()).toMatch(
      /All \d+ answered\. .*3\.3 mm: \d+ of \d+ found/,
    )

    // Without a connection it is kept, and can be saved as the table that the program reads.
    await page.context().setOffline(true)
    await page.getByRole('button', { name: 'Send all entries' }).click()
    expect(await page.locator('.entry-state').textContent()).toContain('No connection')
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ])
    const read = readRunsTable(await text(await download.createReadStream()))
    expect(read.ok ? [] : read.problems).toEqual([])
    const saved = readTrial(read.ok ? read.rows : [])
    expect(saved.groups[0]!.pieces).toBe(pieces)
    expect(saved.clean[0]!.run).toMatchObject({ packs: 9151, rejects: 3 })

    await page.context().setOffline(false)
    await page.getByRole('button', { name: 'Send all entries' }).click()
    await page.waitForSelector('[data-arrived]')
    expect(await page.textContent('#shown ~ article, .trial-group')).toContain('X-07')
    expect(await page.evaluate('localStorage.length')).toBe(0)
    await expectReadable(page)
  }, 240_000)

  it('complains of nothing', () => expect(house.complaints).toEqual([]))
})
