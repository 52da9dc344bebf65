import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../src/advice/book/rulebook.ts'
import { fragmentAnswerSchema } from '../../src/contract/index.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { EVIDENCE_WORDS } from '../../views/words/evidence.ts'
import { demoInput } from '../advice/demo.ts'
import { house } from './house.ts'
import { app, formOf, packed, text } from './stand-in.ts'

const beans = packBrief({ ...demoInput('beans'), equipment: ['xray-dual', 'xray-single'] })
const get = async (path: string, from = app) => {
  const answer = await from.request(path)
  return { status: answer.status, body: await answer.text() }
}
const book = loadRulebook()

describe('every page', () => {
  const pages = [
    '/rules',
    `/rules?b=${packed}&evidence=computed&outcome=fired`,
    '/rules/second-energy-pays',
    `/rules/grain-limits-one-energy?b=${packed}`,
    `/advice/rather?b=${packed}&point=1&first=xray-dual&second=coil-multi`,
    `/advice/difference?b=${packed}`,
    `/advice/difference?b=${packed}&without=second-energy-pays`,
    `/fragment?b=${packed}`,
    `/fragment?b=${packed}&material=quartz&shape=sphere&size=3&length=&face=&placement=inside`,
  ]
  it.each(pages)('%s is whole, carries nothing inline, and each id once', async (path) => {
    const { status, body } = await get(path)
    expect(status).toBe(200)
    expect(body).toMatch(/^<!DOCTYPE html>/i)
    expect(body.match(/<h1/g)).toHaveLength(1)
    expect(body).not.toMatch(/<style| style="| on[a-z]+="|<script(?! src=)/)
    const ids = [...body.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([])
  })
  it.each(pages)('%s leads only to places inside itself that are there', async (path) => {
    const { body } = await get(path)
    for (const [, id = ''] of body.matchAll(/href="#([^"]+)"/g)) expect(body).toContain(`id="${id}"`)
  })
})

describe('the rule book', () => {
  it('leads from an id given up to the one in its place', async () => {
    const { status, headers } = await app.request('/rules/haccp-eu-uk?b=1')
    expect([status, headers.get('location')]).toEqual([301, '/rules/eu-haccp-principles?b=1'])
  })
  it('shows every rule with its permanent address, and the version with its changes', async () => {
    const { body } = await get('/rules')
    for (const { id } of book.rules) expect(body).toContain(`href="/rules/${id}"`)
    expect(text(body)).toContain(book.version)
    for (const change of book.changelog[0]!.changes) expect(text(body)).toContain(change.slice(0, 40))
  })
  it.each([
    ['evidence', 'guidance', (rule: (typeof book.rules)[number]) => rule.evidence === 'guidance'],
    ['family', 'coil', (rule) => rule.appliesTo.includes('coil')],
    ['subject', book.rules[0]!.subject, (rule) => rule.subject === book.rules[0]!.subject],
  ] as [string, string, (rule: (typeof book.rules)[number]) => boolean][])(
    'is narrowed down by %s',
    async (name, value, holds) => {
      const { body } = await get(`/rules?${name}=${encodeURIComponent(value)}`)
      const shown = [...body.matchAll(/href="\/rules\/([\w-]+)"/g)].map(([, id]) => id)
      expect(shown.sort()).toEqual(
        book.rules
          .filter(holds)
          .map(({ id }) => id)
          .sort(),
      )
    },
  )
  it('is narrowed down by what fired for the brief in hand', async () => {
    const fired = await get(`/rules?b=${beans}&outcome=fired`, house)
    const quiet = await get(`/rules?b=${beans}&outcome=not-fired`, house)
    expect(fired.body).toContain('/rules/second-energy-pays?')
    expect(quiet.body).not.toContain('/rules/second-energy-pays?')
  })
  it('gives each rule its template, reason, exception, sources, evidence, thresholds and examples', async () => {
    const rule = book.rules.find(({ id }) => id === 'second-energy-pays')!
    const said = text((await get('/rules/second-energy-pays')).body)
      .replaceAll('&#39;', "'")
      .replaceAll('&amp;', '&')
    expect(said).toContain('[solid food in the beam]')
    for (const part of [
      rule.title,
      rule.because,
      rule.exception,
      EVIDENCE_WORDS[rule.evidence],
      'at least 20 mm',
    ])
      expect(said).toContain(part)
    for (const id of rule.sources) expect(said).toContain(book.sources.get(id)!.text.slice(0, 40))
    expect(said.match(/Advice on it/g)).toHaveLength(rule.examples.length)
  })
  it('says what a rule did for the brief in hand, place by place', async () => {
    const said = text((await get(`/rules/second-energy-pays?b=${beans}`, house)).body)
    expect(said).toMatch(/dual energy: applies/)
    expect(said).toMatch(/single energy: does not apply/)
  })
  it('knows no rule of another name', async () => {
    expect((await get('/rules/nothing')).status).toBe(404)
  })
})

describe('A rather than B', () => {
  it('takes any two machines of a point', async () => {
    const said = text(
      (await get(`/advice/rather?b=${beans}&point=0&first=xray-single&second=xray-dual`, house)).body,
    )
    expect(said).toContain(
      'Compare two machines: x-ray from above, single energy, x-ray from above, dual energy',
    )
    expect(said).toContain('Only what differs')
  })
  it('is nowhere where the point has no such machine', async () => {
    expect(
      (await get(`/advice/rather?b=${beans}&point=0&first=xray-dual&second=nothing`, house)).status,
    ).toBe(404)
    expect(
      (await get(`/advice/rather?b=${beans}&point=9&first=xray-dual&second=xray-single`, house)).status,
    ).toBe(404)
  })
})

describe('another rule book', () => {
  it('shows what a moved threshold changes, at an address that can be kept', async () => {
    const { status, body } = await get(`/advice/difference?b=${beans}&threshold=twoEnergies&value=3`, house)
    expect(status).toBe(200)
    expect(text(body)).toMatch(/second energy pays.*: applies → does not apply/)
  })
  it('takes pasted rules, keeps nothing, and says what is wrong with them', async () => {
    const post = (pasted: string) => house.request(`/advice/difference?b=${beans}`, formOf({ pasted }))
    const wrong = await post('{"rules": [{"id": "x"}]}')
    expect(wrong.status).toBe(422)
    expect(text(await wrong.text())).toMatch(/There is a problem .*pasted\.json/)
    const none = await post('{"name": "empty", "version": "1"}')
    expect(none.status).toBe(200)
    expect(text(await none.text())).toContain('Nothing: every rule that spoke still says the same')
  })
  it('asks again for a value that is none', async () => {
    const { status, body } = await get(
      `/advice/difference?b=${beans}&threshold=twoEnergies&value=many`,
      house,
    )
    expect(status).toBe(422)
    expect(text(body)).toContain('Its new value')
  })
})

describe('a found fragment', () => {
  const mince = { ...demoInput('mince'), equipment: ['coil-pipe'] }
  const page = (query: string) => get(`/fragment?b=${packBrief(mince)}&${query}`, house)

  it('is answered on a page whose address can be kept', async () => {
    const { status, body } = await page(
      'material=steel&shape=sphere&size=3+mm&length=&face=&placement=inside',
    )
    expect(status).toBe(200)
    expect(text(body)).toMatch(/Mild steel, 3 mm across: of the machines named in the brief/)
    expect(text(body)).toContain('What no chance tells')
  })
  it('keeps every answer where one is wrong, and names the field', async () => {
    const { status, body } = await page('material=steel&shape=wire&size=thick&length=&face=&placement=inside')
    expect(status).toBe(422)
    expect(body).toContain('value="thick"')
    expect(body).toContain('href="#size"')
    expect(body).toMatch(/<title>Error: /)
    const wire = await page('material=steel&shape=wire&size=1&length=&face=&placement=inside')
    expect(wire.body).toContain('href="#length"')
  })
  it('is answered as JSON, and refused with the path of what is wrong', async () => {
    const post = (body: unknown) =>
      house.request('/api/fragment', {
        method: 'POST',
        body: JSON.stringify(body),
        headers: { 'content-type': 'application/json' },
      })
    const good = await post({ brief: mince, fragment: { material: 'steel', sizeMm: 3 } })
    expect(good.status).toBe(200)
    expect(fragmentAnswerSchema.safeParse(await good.json()).error?.issues ?? []).toEqual([])
    for (const [body, path] of [
      [{ brief: mince, fragment: { material: 'steel' } }, 'fragment.sizeMm'],
      [{ brief: mince, fragment: { material: 'steel', sizeMm: 3 }, more: 1 }, 'more'],
      [{ fragment: { material: 'steel', sizeMm: 3 } }, ''],
      [[], 'fragment'],
    ] as const) {
      const answer = await post(body)
      expect(answer.status, path).toBe(422)
      const { problems } = (await answer.json()) as { problems: { path: string }[] }
      expect(problems.map((problem) => problem.path)).toContain(path)
    }
  })
})

describe('the brief page', () => {
  it('says beside the form what would sharpen the answer, each leading to its field', async () => {
    const nuts = packBrief({ ...demoInput('hazelnuts'), equipment: ['xray-single'] })
    const { body } = await get(`/brief?b=${nuts}`, house)
    const next = body.split('Would sharpen the answer')[1]!.split('</aside>')[0]!
    const fields = [...next.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id)
    expect(fields).toContain('product.grainMm')
    for (const id of fields) expect(body).toContain(`id="${id}"`)
  })
})
