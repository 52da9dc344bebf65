import { describe, expect, it } from 'vitest'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { FOUR_BRIEFS } from '../report/four-briefs.ts'
import { sweep } from '../sweep.ts'
import { hasBrowser } from './chromium.ts'
import { openHouse } from './house.ts'
import { sheetsPrinted } from './on-paper.ts'

/** The powder's report takes no x-ray physics; all four are printed with the sweeps. */
const PRINTED = sweep(["infants' powder"], Object.keys(FOUR_BRIEFS))

describe.skipIf(!hasBrowser)('the report on paper', () => {
  const { open } = openHouse()

  it.each(PRINTED)(
    'leaves no heading at the foot of a sheet, no sheet half empty and no sheet for a last line: %s',
    async (name) => {
      const page = await open(`/report?b=${packBrief(FOUR_BRIEFS[name]!)}`)
      const headings = new Set(
        await page.evaluate<string[]>(
          `[...document.querySelectorAll('.report :is(h1, h2, h3, h4, caption)')].map((one) => one.textContent.replace(/\\s+/g, ' ').trim())`,
        ),
      )
      expect(headings.size).toBeGreaterThan(15)
      for (const format of ['A4', 'Letter']) {
        const sheets = await sheetsPrinted(page, format)
        for (const [at, { lines, filled }] of sheets.entries()) {
          const where = `${format}, sheet ${at + 1} of ${sheets.length}: ${lines.at(-1)}`
          expect(headings.has(lines.at(-1) ?? ''), where).toBe(false)
          if (at < sheets.length - 1) expect(filled, where).toBeGreaterThan(0.5)
        }
        expect(sheets.at(-1)!.lines.join(' ')).toContain('Signature')
      }
      await page.context().close()
    },
    60_000,
  )

  it('a drill sheet is one sheet, on A4 and on Letter', async () => {
    // The bag has five pieces at two places, the most of the demo briefs.
    for (const [name, point] of [
      ['bag', 1],
      ["infants' powder", 0],
    ] as const) {
      const page = await open(`/checks/drill?b=${packBrief(FOUR_BRIEFS[name]!)}&point=${point}`)
      for (const format of ['A4', 'Letter']) expect(await sheetsPrinted(page, format), name).toHaveLength(1)
      await page.context().close()
    }
  }, 60_000)
})
