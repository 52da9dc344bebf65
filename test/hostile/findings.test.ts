import { deflateRawSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../src/advice/book/rulebook.ts'
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { cardOf } from '../../src/card/card.ts'
import type { Brief } from '../../src/contract/index.ts'
import { createApp } from '../../src/web/app.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { MACHINE_WORDS, readable } from './machine-words.ts'

const app = createApp()
const demo = (id: string) => structuredClone(demos.find((one) => one.id === id)!.brief)
const json = (path: string, body: string) =>
  app.request(path, { method: 'POST', headers: { 'content-type': 'application/json' }, body })
const form = (path: string, fields: readonly (readonly [string, string])[]) =>
  app.request(path, {
    method: 'POST',
    body: new URLSearchParams(fields as readonly [string, string][]),
  })
const refusalOf = (work: () => unknown): string => {
  try {
    work()
  } catch (error) {
    return (error as Error).message
  }
  return ''
}
const addressOf = (text: string) => deflateRawSync(Buffer.from(text)).toString('base64url')

const PAGES = [
  '/brief',
  '/advice',
  '/rules',
  '/compare',
  '/fragment',
  '/trade-offs',
  '/card',
  '/exercises',
  '/brief.json',
]

/** Twelve points, forty contaminants and thirty machines: every list of the contract full. */
const full = (equipment: unknown[] = []) => ({
  product: { food: 'hazelnut' },
  points: Array.from({ length: 12 }, (_, at) => ({
    name: `p${at}`,
    heightMm: 30,
    widthMm: 160,
    lengthMm: 180,
    speedMPerMin: 30,
  })),
  contaminants: Array.from({ length: 40 }, (_, at) => ({ material: 'quartz', mustFindMm: 1 + at / 10 })),
  equipment,
})
const coils = Array.from({ length: 30 }, (_, at) => ({
  id: `c${at}`,
  family: 'coil',
  frequenciesKHz: [100, 400, 800],
}))

describe('work without a bound', () => {
  it.each([
    ['thirty quoted coils', full(coils), '14,400'],
    ['the usual machines', full(), 'sizes would have to be worked out'],
  ])(
    '%s at twelve points for forty contaminants: refused with the figures, by every door',
    async (_, brief, figure) => {
      for (const page of ['/advice', '/rules', '/fragment', '/card', '/trade-offs', '/compare']) {
        const answer = await app.request(`${page}?b=${packBrief(brief)}`)
        expect(answer.status, page).toBe(422)
        expect(readable(await answer.text()), page).toContain(figure)
      }
      const answer = await json('/api/advice', JSON.stringify(brief))
      expect(answer.status).toBe(422)
      expect(JSON.stringify(await answer.json())).toContain(figure)
      const compared = await json('/api/compare', JSON.stringify({ brief, other: brief }))
      expect(compared.status).toBe(422)
      expect(JSON.stringify(await compared.json())).toContain(figure)
    },
  )

  it('a form of a thousand or twenty thousand rows: no more than a brief takes is read or drawn', async () => {
    for (const rows of [1000, 20_000]) {
      const answer = await form(
        '/advice',
        Array.from({ length: rows }, (_, at) => [`points.${at}`, 'r'] as const),
      )
      const page = await answer.text()
      expect(answer.status).toBe(422)
      expect(readable(page)).toContain(`at most 12 rows; ${rows.toLocaleString('en')} were given`)
      expect(page.length).toBeLessThan(1_000_000)
    }
  })

  it.each([
    [400, 0.1],
    [600, 0.02],
  ])('a card of %i mm at %f mm: the pixels it would have', async (mm, pixelMm) => {
    const brief = {
      product: { food: 'cheddar' },
      points: [{ heightMm: 20, widthMm: mm, lengthMm: mm, speedMPerMin: 1 }],
      contaminants: [{ material: 'quartz', mustFindMm: 3 }],
      equipment: [
        {
          id: 'fine',
          family: 'xray',
          kV: 80,
          mA: 5,
          pixelMm,
          maxLinesPerSecond: 100000,
          maxWidthMm: 2000,
          sourceToDetectorMm: 3000,
          detectorLayers: [
            { scintillator: 'gos', mgPerCm2: 100, swank: 0.8, electronsPerKeV: 10, noiseElectrons: 100 },
          ],
        },
      ],
    }
    const answer = await app.request(`/card?b=${packBrief(brief)}`)
    expect(answer.status).toBe(422)
    expect(readable(await answer.text())).toMatch(/this card would have [\d,]{9,} pixels/)
  })
})

describe('refusals', () => {
  it('of many unknown keys are fifty at most, and short', async () => {
    for (const keys of [15_000, 45_000]) {
      const answer = await json(
        '/api/advice',
        JSON.stringify(Object.fromEntries(Array.from({ length: keys }, (_, k) => [`k${k}`, 1]))),
      )
      const said = await answer.text()
      expect(answer.status).toBe(422)
      expect(JSON.parse(said).problems.length).toBeLessThanOrEqual(50)
      expect(said.length).toBeLessThan(50_000)
    }
  })

  it('of a body that is not read close the line, so that the next request does not die on it', async () => {
    const body = JSON.stringify({ ['k'.repeat(600_000)]: 1 })
    const headers = { 'content-type': 'application/json', 'content-length': String(body.length) }
    const tooLarge = await app.request('/api/compare', { method: 'POST', headers, body })
    expect([tooLarge.status, tooLarge.headers.get('connection')]).toEqual([413, 'close'])
  })

  it('do not give a long key or value back', async () => {
    const long = 'k'.repeat(500_000)
    for (const body of [{ [long]: 1 }, { title: long }, { product: { food: long } }]) {
      const answer = await json('/api/advice', JSON.stringify(body))
      expect(answer.status).toBe(422)
      expect((await answer.text()).length).toBeLessThan(5000)
    }
  })

  it.each([
    '3',
    'null',
    '"x"',
    '[]',
    '{"product":null}',
    '{"points":"x"}',
    '{"points":[null]}',
    '{"equipment":null}',
    '{"flow":3}',
    '{"title":{"a":1}}',
    '{"contaminants":[[1]]}',
    '{"quotes":{"a":[]}}',
    '{"equipment":[null,3,{"family":{}}]}',
  ])('%s is a brief with problems to the API and to every page', async (text) => {
    expect((await json('/api/advice', text)).status).toBe(422)
    for (const page of PAGES) {
      const answer = await app.request(`${page}?b=${addressOf(text)}`)
      const said = readable(await answer.text())
      expect([200, 422], page).toContain(answer.status)
      if (page !== '/brief') expect(answer.status, page).toBe(422)
      expect(MACHINE_WORDS.exec(said)?.[0], page).toBeUndefined()
    }
  })

  it('of a deep document are the same on every page: 422', async () => {
    const deep = `{"title":${'['.repeat(50_000)}${']'.repeat(50_000)}}`
    for (const page of PAGES) {
      const answer = await app.request(`${page}?b=${addressOf(deep)}`)
      expect(answer.status, page).toBe(422)
      expect(readable(await answer.text())).toContain('nested more than 20 deep')
    }
    expect((await json('/api/advice', deep)).status).toBe(422)
    const nested = `{"subject":"s","rules":[{"conditions":${'{"not":'.repeat(5000)}1${'}'.repeat(5000)}}]}`
    expect(() => loadRulebook([{ name: 'deep', files: { 'deep.json': nested } }])).toThrow(
      'nested more than 20 deep',
    )
  })

  it('of a book with thousands of bad rules tell the first fifty', () => {
    const rules = JSON.stringify({ subject: 's', rules: Array.from({ length: 5000 }, () => ({})) })
    const said = refusalOf(() => loadRulebook([{ name: 'bad', files: { 'bad.json': rules } }]))
    expect(said).toContain('more than 50 problems')
    expect(MACHINE_WORDS.exec(said)?.[0]).toBeUndefined()
  })

  it('of a broken form are 400, of a wrong method 405 with what is allowed', async () => {
    const broken = await app.request('/advice', {
      method: 'POST',
      headers: { 'content-type': 'multipart/form-data; boundary=x' },
      body: '--y\r\nno',
    })
    expect(broken.status).toBe(400)
    for (const [path, allow] of [
      ['/advice', 'GET, HEAD, POST'],
      ['/api/advice', 'POST'],
      ['/assets/icon.svg', 'GET, HEAD'],
    ] as const) {
      const wrong = await app.request(path, { method: 'DELETE' })
      expect(wrong.status, path).toBe(405)
      expect(wrong.headers.get('allow'), path).toBe(allow)
    }
  })

  it('of what carries a brief, a table or what is kept stay in no cache on the way', async () => {
    for (const path of ['/kept', '/kept/x', '/kept/export.json', '/lines/x', '/brief?b=x', '/b/x/advice'])
      expect((await app.request(path)).headers.get('cache-control'), path).toBe('no-store')
    expect((await json('/api/plan', '{}')).headers.get('cache-control')).toBe('no-store')
  })

  it('of what another site sends or loads from here are 403; its links lead here', async () => {
    const across = { 'sec-fetch-site': 'cross-site' }
    expect(
      (await app.request('/examples', { headers: { ...across, 'sec-fetch-dest': 'image' } })).status,
    ).toBe(403)
    expect(
      (await app.request('/advice', { method: 'POST', headers: { ...across, 'sec-fetch-dest': 'document' } }))
        .status,
    ).toBe(403)
    expect(
      (await app.request('/examples', { headers: { ...across, 'sec-fetch-dest': 'document' } })).status,
    ).toBe(200)
    for (const [origin, status] of [
      ['http://elsewhere.example', 403],
      ['null', 403],
      ['http://plant:8317', 415],
    ] as const) {
      const headers = { origin, host: 'plant:8317' }
      expect((await app.request('/api/plan', { method: 'POST', headers })).status, origin).toBe(status)
    }
  })
})

describe('words that every object has', () => {
  const mince = () => demo('mince')

  it.each(['__proto__', 'constructor', 'toString'])(
    '%s is a word like any other at every door',
    async (word) => {
      const brief = { ...mince(), contaminants: [{ material: word, mustFindMm: 2 }] }
      expect((await json('/api/advice', JSON.stringify(brief))).status).toBe(422)
      expect((await app.request(`/advice?b=${packBrief(brief)}`)).status).toBe(422)
      const posted = await form('/brief/import', [['contaminants.0.material', word]])
      expect(posted.status).toBe(422)
      const asked = await json('/api/compare', JSON.stringify({ brief: mince(), machines: word }))
      expect(asked.status).toBe(422)
      expect(MACHINE_WORDS.exec(await asked.text())?.[0]).toBeUndefined()
      const ofNone = await app.request(`/trade-offs?b=${packBrief(mince())}&contaminant=${word}`)
      expect(readable(await ofNone.text())).toContain(`no contaminant &quot;${word}&quot;`)
    },
  )
})

describe('names', () => {
  const evil = ['../../x', 'con/dir', 'A', 'a', '"ü\t💀', '..']
  const bars = () => {
    const brief = demo('chocolate') as Record<string, unknown>
    return { ...brief, contaminants: [{ material: 'ss304', mustFindMm: 1 }] }
  }

  it('of machines never become paths, and never one another', () => {
    const machine = {
      family: 'xray',
      kV: 60,
      mA: 5,
      pixelMm: 0.8,
      detectorLayers: [
        { scintillator: 'gos', mgPerCm2: 100, swank: 0.8, electronsPerKeV: 10, noiseElectrons: 100 },
      ],
    }
    const parsed = parseBrief({ ...bars(), quotes: [], equipment: evil.map((id) => ({ ...machine, id })) })
    const card = cardOf((parsed as { brief: Brief }).brief)
    const names = card.machines.flatMap(({ pictures }) => pictures.map(({ name }) => name.toLowerCase()))
    expect(names.length).toBeGreaterThanOrEqual(evil.length)
    expect(new Set(names).size).toBe(names.length)
    for (const name of names) expect(name).toMatch(/^[\p{L}\p{N}][\p{L}\p{N}-]*$/u)
  })

  it('in headers are one file name, whatever the title', async () => {
    for (const title of ['x"; filename="evil.exe', 'Nüsse 💀 набор', '../..', '\n', 'a'.repeat(200)]) {
      const answer = await app.request(`/brief.json?b=${packBrief({ ...bars(), title })}`)
      expect(answer.status).toBe(200)
      expect(answer.headers.get('content-disposition')).toMatch(
        /^attachment; filename="[\w-]+\.json"(?:; filename\*=UTF-8''[\w.%-]+)?$/,
      )
      expect(answer.headers.get('cache-control')).toBe('no-store')
    }
  })
})
