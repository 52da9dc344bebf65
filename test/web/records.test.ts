import { describe, expect, it } from 'vitest'
import { advise } from '../../src/advise.ts'
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/parse.ts'
import { STAGES } from '../../src/contract/brief.ts'
import type { BriefInput } from '../../src/contract/index.ts'
import { createApp } from '../../src/web/app.ts'
import { packBrief, unpackBrief } from '../../src/web/asked/packed-brief.ts'
import { visibleText } from './words/crawl.ts'

const app = createApp()
const powder = demos.find(({ id }) => id === 'milk-powder')!.brief
const packed = packBrief(powder)
const page = async (path: string) => {
  const answer = await app.request(path)
  return { status: answer.status, html: await answer.text() }
}
const post = (path: string, fields: Record<string, string>) =>
  app.request(path, {
    method: 'POST',
    headers: { 'content-type': 'application/x-www-form-urlencoded' },
    body: new URLSearchParams(fields),
  })
const briefIn = (location: string) =>
  (unpackBrief(new URL(location, 'http://house.test').searchParams.get('b') ?? '') as { brief: BriefInput })
    .brief

const registerOf = async (given: BriefInput) => {
  const parsed = parseBrief(given)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return (await advise(parsed.brief, { withoutChanges: true, withoutMissing: true })).register
}

describe('the hazard register as a page', () => {
  it('puts what nothing controls first, and names every class in full', async () => {
    const { status, html } = await page(`/register?b=${packed}`)
    expect(status).toBe(200)
    const text = visibleText(html)
    expect(text.indexOf('not controlled here')).toBeGreaterThan(0)
    expect(text.indexOf('not controlled here')).toBeLessThan(text.indexOf('Hazard by hazard'))
    expect(text).toContain('critical control point (CCP)')
    expect(text).toContain('not legal advice')
  })

  it('never lets predicted read as demonstrated', async () => {
    const text = visibleText((await page(`/register?b=${packed}`)).html)
    expect(text).toMatch(
      /Controls in turn Control .* Predicted, safe to promise Demonstrated on this product /,
    )
    expect(text).toMatch(/drop pipe above the filler 1\.2 mm [\d.]+ mm not yet /)
  })

  it('leads each sentence to its rule and each figure to its calculation', async () => {
    const { html } = await page(`/register?b=${packed}`)
    const links = [...html.matchAll(/href="(\/(?:rules|advice\/trail)[^"#]*)"/g)].map(([, href]) =>
      href!.replaceAll('&amp;', '&'),
    )
    expect(links.length).toBeGreaterThan(20)
    for (const href of new Set(links)) expect((await page(href)).status, href).toBe(200)
  })
})

describe('an answer of a person', () => {
  const key = 'c0.p0.q8'
  it('is kept in the brief, changes the class and is printed beside what was filled in', async () => {
    const before = visibleText((await page(`/register?b=${packed}`)).html)
    const sent = await post('/register/answer', {
      b: packed,
      question: key,
      answer: 'no',
      because: 'nobody is on site at night',
      do: 'set',
    })
    expect(sent.status).toBe(303)
    const location = sent.headers.get('location')!
    expect(briefIn(location).answers).toEqual([
      { question: key, answer: 'no', because: 'nobody is on site at night' },
    ])
    const after = visibleText((await page(location)).html)
    expect(after).toContain('nobody is on site at night')
    expect(after).not.toBe(before)
    const cleared = await post('/register/answer', {
      b: new URL(location, 'http://house.test').searchParams.get('b')!,
      question: key,
      do: 'clear',
    })
    expect(briefIn(cleared.headers.get('location')!).answers).toBeUndefined()
  })

  it('needs its reason, and a question that exists', async () => {
    const refused = await post('/register/answer', {
      b: packed,
      question: key,
      answer: 'no',
      because: '',
      do: 'set',
    })
    expect(refused.status).toBe(422)
    expect(await refused.text()).toContain('needs its reason')
    const unreadable = await post('/register/answer', {
      b: packed,
      question: 'c0.severity',
      answer: '9',
      because: 'as the team says',
    })
    expect(unreadable.status).toBe(422)
    expect(visibleText(await unreadable.text())).toMatch(/1 to 5/)
    expect((await page(`/register/answer?b=${packed}&question=c0.p0.q9`)).status).toBe(404)
    expect((await page(`/register/answer?b=${packed}&question=${key}`)).html).toContain(
      '<option value="unknown"',
    )
  })

  it('overrules the likelihood: its reason is printed, the significance and the first question follow', async () => {
    const key = 'c1.likelihood'
    const before = (await registerOf(powder)).hazards.find(({ contaminant }) => contaminant === 1)!
    const asked = visibleText((await page(`/register/answer?b=${packed}&question=${key}`)).html)
    expect(asked).toContain(`Filled in: ${before.likelihood.value}: ${before.likelihood.words}.`)
    const sent = await post('/register/answer', {
      b: packed,
      question: key,
      answer: '1',
      because: 'none in nine years at the sister site',
    })
    const next = briefIn(sent.headers.get('location')!)
    const register = await registerOf(next)
    const after = register.hazards.find(({ contaminant }) => contaminant === 1)!
    expect(after.likelihood).toMatchObject({ value: 1, from: 'none in nine years at the sister site' })
    expect(after.significance).not.toBe(before.significance)
    expect(after.controls[0]!.questions[0]!.because).toContain('likelihood 1')
    expect(register.overruled).toContainEqual({
      question: key,
      filled: String(before.likelihood.value),
      answer: '1',
      because: 'none in nine years at the sister site',
    })
    const text = visibleText((await page(sent.headers.get('location')!)).html)
    expect(text).toMatch(/Likelihood 1: never seen here \(none in nine years at the sister site\)/)
  })

  it('confirms an assumption, which then asks for nothing more', async () => {
    const sent = await post('/register/confirm', {
      b: packed,
      what: 'c1.median',
      by: 'quality',
      date: '2026-11-27',
    })
    const location = sent.headers.get('location')!
    expect(briefIn(location).confirmed).toEqual([{ what: 'c1.median', by: 'quality', date: '2026-11-27' }])
    expect(visibleText((await page(location)).html)).toContain('(quality, 2026-11-27)')
    for (const fields of [
      { what: 'c1.median', by: '', date: '' },
      { what: 'no such assumption', by: 'quality', date: '2026-11-27' },
    ])
      expect((await post('/register/confirm', { b: packed, ...fields })).status).toBe(422)
  })
})

describe('the check plan and its sheets', () => {
  it('keeps size to find, predicted, demonstrated and routine piece apart', async () => {
    const { html } = await page(`/checks?b=${packed}`)
    for (const head of ['Size to find', 'Predicted, safe to promise', 'Demonstrated', 'Routine piece'])
      expect(html).toContain(`>${head}</th>`)
  })

  it('proves one failure for each link, at every stage in its own words', async () => {
    const acts = new Map<string, string>()
    for (const id of ['milk-powder', 'sauce-jar', 'beans', 'mince']) {
      const { brief } = demos.find((demo) => demo.id === id)!
      const { html } = await page(`/checks?b=${packBrief(brief)}`)
      const proofs = [...html.matchAll(/<th scope="row">(\w+)<\/th><td class="prose">(.*?)<\/td>/g)]
      expect(
        proofs.map(([, link]) => link),
        id,
      ).toEqual(['detect', 'decide', 'act', 'confirm', 'contain', 'count'])
      acts.set(brief.points[0]!.stage!, proofs[2]![2]!)
    }
    expect([...acts.keys()].sort()).toEqual([...STAGES].sort())
    expect(new Set(acts.values()).size).toBe(STAGES.length)
  })

  it('has a drill sheet and a record sheet for a machine, and none for a point without', async () => {
    const drill = await page(`/checks/drill?b=${packed}&point=0`)
    expect(visibleText(drill.html)).toContain('A piece did not come out?')
    expect(visibleText(drill.html)).toContain('Keep hands and tools out of the opening')
    expect(drill.html).not.toContain('x-ray cabinet')
    const jar = packBrief(demos.find(({ id }) => id === 'sauce-jar')!.brief)
    expect(visibleText((await page(`/checks/drill?b=${jar}&point=0`)).html)).toMatch(
      /Keep hands out of the machine.*Never reach into the x-ray cabinet/,
    )
    expect((await page(`/checks/record?b=${packed}&point=0`)).html).toContain('Piece 1 in the bin')
    expect((await page(`/checks/drill?b=${packed}&point=7`)).status).toBe(404)
  })
})

describe('the report', () => {
  it('numbers every source it cites, and cites none that is not in its list', async () => {
    const { html } = await page(`/report?b=${packed}`)
    const listed = [...html.matchAll(/<ol class="report-sources">([\s\S]*?)<\/ol>/g)].flatMap(
      ([, inner = '']) => [...inner.matchAll(/<li>/g)],
    ).length
    const cited = [...html.matchAll(/<span class="source-numbers"> \[([\d, ]+)\]/g)].flatMap(
      ([, numbers = '']) => numbers.split(', ').map(Number),
    )
    expect(cited.length).toBeGreaterThan(20)
    expect(Math.max(...cited)).toBeLessThanOrEqual(listed)
    expect(new Set(cited).size).toBeGreaterThan(listed * 0.8)
  })

  it('has every section its contents name, and signatures, cautions and versions', async () => {
    const { html } = await page(`/report?b=${packed}`)
    for (const [, id] of html.matchAll(/href="#([^"]+)"/g)) expect(html).toContain(`id="${id}"`)
    const text = visibleText(html)
    for (const words of ['Signature', 'Cautions', 'rule book gritwise', 'Ten questions an auditor asks'])
      expect(text).toContain(words)
  })

  it('as a file loads nothing and links to no address of this program', async () => {
    const { html } = await page(`/report/file?b=${packed}`)
    expect(html).not.toMatch(/<(?:script|link|img)\b|(?:src|href)="(?!#)|url\((?!#)/)
  })
})
