import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { hasBrowser } from './chromium.ts'
import { itReadsEasily, openHouse } from './house.ts'

const briefOf = (id: string) => demos.find((demo) => demo.id === id)!.brief
const nuts = packBrief(briefOf('hazelnuts'))
const jar = packBrief(briefOf('sauce-jar'))
/** The nuts with a machine from a quote beside two kinds. */
const quoted = packBrief({
  ...briefOf('hazelnuts'),
  equipment: [
    'xray-single',
    'coil-single',
    {
      id: 'quoted-1',
      label: 'offer of March',
      family: 'coil',
      frequenciesKHz: [100, 300],
      use: 'together',
      apertureHeightMm: 120,
    },
  ],
})

describe.skipIf(!hasBrowser)('the pages behind an advice, in a browser', () => {
  const house = openHouse()
  const { open, complaints } = house

  const pages = [
    ['rule book', '/rules'],
    ['rule book with a brief', `/rules?b=${nuts}&outcome=fired`],
    ['a rule with a brief', `/rules/grain-limits-one-energy?b=${nuts}`],
    ['found fragment, nothing asked', `/fragment?b=${jar}`],
    ['found fragment', `/fragment?b=${jar}&material=glass_container&shape=flake&face=30&size=1`],
    ['found fragment with a problem', `/fragment?b=${nuts}&material=quartz&shape=wire&size=thick`],
    [
      'one machine rather than another',
      `/advice/rather?b=${nuts}&point=1&first=xray-dual&second=coil-single`,
    ],
    ['by a changed book', `/advice/difference?b=${nuts}`],
    ['by a book without a rule', `/advice/difference?b=${nuts}&without=grain-limits-one-energy`],
    ['test card', `/card?b=${nuts}&machine=xray-single`],
    ['brief with a quoted machine', `/brief?b=${quoted}`],
    ['advice with a quoted machine', `/advice?b=${quoted}`],
  ] as const

  itReadsEasily(house, pages)

  it('takes a machine from a quote by its figures, from the form to the comparison', async () => {
    const page = await open(`/brief?b=${nuts}`)
    await page.locator('#equipment > summary').click()
    await page.getByRole('button', { name: 'Add a machine from a quote' }).click()
    await page.locator('[id="quoted.0.kind"]').selectOption('xray-dual')
    await page.locator('[id="quoted.0.label"]').fill('offer of March')
    await page.getByText('Of an x-ray machine: tube and detector').click()
    await page.locator('[id="quoted.0.pixelMm"]').fill('0,4')
    await page.locator('[id="note-quoted.0.maxPowerW"]').getByText('as usual for the kind: 1000 W').waitFor()
    await page.getByRole('button', { name: 'Get the advice' }).first().click()
    await page.getByRole('heading', { level: 1 }).waitFor()
    expect(await page.locator('table.machines').first().textContent()).toContain('offer of March')
    await page.context().close()
  })

  it('keeps what was chosen on Trade-offs in the address', async () => {
    const page = await open(`/trade-offs?b=${nuts}`)
    await page.getByRole('radio', { name: 'speed', exact: true }).check()
    await page.getByRole('heading', { name: 'Findable size against speed' }).waitFor()
    await expect.poll(() => new URL(page.url()).searchParams.get('input')).toBe('speed')
    await page.reload()
    expect(await page.getByRole('radio', { name: 'speed', exact: true }).isChecked()).toBe(true)
    await page.context().close()
  })

  it('met no blocked script, no error and no other server on the way', () => {
    expect(complaints).toEqual([])
  })
})
