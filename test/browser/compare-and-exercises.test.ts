import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { hasBrowser } from './chromium.ts'
import { itReadsEasily, openHouse } from './house.ts'

const packedOf = (id: string) => packBrief(demos.find((demo) => demo.id === id)!.brief)

describe.skipIf(!hasBrowser)('comparison and exercises in a browser', () => {
  const house = openHouse()
  const { open, address, complaints } = house

  const jar = packedOf('sauce-jar')
  const nuts = packedOf('hazelnuts')
  const pages = [
    ['compare', `/compare?b=${nuts}`],
    [
      'compare three for paper',
      `/compare?b=${nuts}&x=p1.xray-single&x=p1.xray-dual&x=p1.coil-single&print=1`,
    ],
    ['compare with a problem', `/compare?b=${nuts}&perKWh=much`],
    ['compare two packs', `/compare?b=${nuts}&points.1.heightMm=30`],
    ['exercises', '/exercises'],
    ['exercises of a brief, in plain words', `/exercises?b=${jar}&words=plain`],
    ['exercises in front of a room', `/exercises?b=${jar}&present=1`],
    ['a question with choices', '/exercises/turning-a-wire'],
    ['a question with a number', '/exercises/hold-and-interval'],
    ['an answer with a curve', '/exercises/turning-a-wire?guess=along'],
    ['an answer with hills', '/exercises/threshold-game?guess=r1000'],
    ['an answer with bars', '/exercises/foil-and-film?guess=xray'],
    ['a question in the room', '/exercises/false-alarms?present=1'],
    ['an answer in the room', '/exercises/threshold-game?present=1&guess=r1000'],
    ['a reason in the room', '/exercises/threshold-game?present=1&guess=r1000&s=why'],
    ['the clock', '/exercises/failed-check'],
    [
      'the summary',
      '/exercises/failed-check?began=1700000000000&ended=1700000090000&g=stop_all_bad_proof_open_whole',
    ],
    ['own exercise', `/exercises/own-weak-place?b=${jar}&guess=-`],
    ['handout', '/exercises?handout=1&answers=0'],
    ['handout with answers', '/exercises?handout=1&answers=1'],
    ['record', '/exercises/record?done=jar-heel_base'],
    ['a plan', '/exercises/lesson?lesson=jar-heel!8!Bring a jar~routine-check'],
    ['a live control', `/exercises/dial?b=${jar}`],
    ['record of a class', '/exercises/record?class=1'],
    ['record for paper', '/exercises/record?print=1'],
  ] as const

  itReadsEasily(house, pages)

  it('reads at 200 % of a 1280 px screen', async () => {
    const page = await open(`/compare?b=${nuts}`, {
      viewport: { width: 640, height: 400 },
      deviceScaleFactor: 2,
    })
    for (const path of [
      `/compare?b=${nuts}`,
      '/exercises',
      '/exercises/threshold-game?present=1&guess=r1000',
    ]) {
      await page.goto(`${address()}${path.slice(1)}`)
      expect(await page.evaluate('document.documentElement.scrollWidth'), path).toBeLessThanOrEqual(640)
    }
    await page.context().close()
  })

  it('met no blocked script, no error and no other server on the way', () => {
    expect(complaints).toEqual([])
  })
})
