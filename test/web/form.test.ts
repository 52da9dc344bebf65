import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { writeForm } from '../../src/brief/form/form-writing.ts'
import { unpackBrief } from '../../src/web/asked/packed-brief.ts'
import { brief } from '../views/fixture.ts'
import { app, formOf, text } from './stand-in.ts'

const send = async (answers: Readonly<Record<string, string>>, path = '/advice', headers = {}) => {
  const form = formOf(answers)
  const answer = await app.request(path, { ...form, headers: { ...form.headers, ...headers } })
  return { status: answer.status, location: answer.headers.get('location'), body: await answer.text() }
}

const briefAt = (location: string | null) => unpackBrief(location?.split('b=')[1] ?? '')

/** The form at the address that a button leads to. */
const follow = async (answers: Record<string, string>) => {
  const sent = await send(answers)
  expect(sent.status).toBe(303)
  const answer = await app.request(sent.location!)
  expect(answer.status).toBe(200)
  return { location: sent.location!, body: await answer.text() }
}

describe('the form sent', () => {
  it.each(demos.map((demo) => [demo.id, demo.brief] as const))('%s goes to its advice', async (_, given) => {
    const { status, location } = await send({ ...writeForm(given), action: 'advise' })
    expect(status).toBe(303)
    expect(location).toMatch(/^\/advice\?b=/)
    expect(briefAt(location)).toEqual({ brief: given })
  })

  it('takes typed units', async () => {
    const { location } = await send({ ...writeForm(brief), 'points.0.heightMm': '1 1/2 in' })
    expect(briefAt(location)).toMatchObject({ brief: { points: [{ heightMm: 38.1 }, {}] } })
  })

  it('leads to the composition a food of one’s own lacks, and opens it', async () => {
    const { status, body } = await send({ ...writeForm(brief), 'product.food': 'custom' })
    expect(status).toBe(422)
    expect(body).toContain('href="#product.composition"')
    expect(body).toContain('<details class="fold" id="product.composition" open')
    expect(body).toContain('id="error-product.composition"')
  })

  it('takes a machine from a quote in a row of its own, and offers it for a quoted size', async () => {
    const added = await follow({ ...writeForm(brief), action: 'add:quoted' })
    expect(added.body).toContain('Quoted machine 1')
    const answers = {
      ...writeForm(brief),
      'quoted.0.kind': 'xray-dual',
      'quoted.0.label': 'offer of March',
      'quoted.0.pixelMm': '0.4',
    }
    const shown = await send({ ...answers, action: 'check' })
    expect(text(shown.body)).toContain('as usual for the kind: 1,000 W'.replace(',', ''))
    const { location } = await send({ ...answers, action: 'advise' })
    expect(briefAt(location)).toMatchObject({
      brief: {
        equipment: expect.arrayContaining([expect.objectContaining({ id: 'quoted-1', pixelMm: 0.4 })]),
      },
    })
    const again = await follow({ ...answers, action: 'add:quotes' })
    expect(again.body).toContain('<option value="quoted-1">offer of March</option>')
    const wrong = await send({ ...answers, 'quoted.0.pixelMm': 'fine', action: 'advise' })
    expect(wrong.status).toBe(422)
    expect(wrong.body).toContain('href="#quoted.0.pixelMm"')
  })

  it('comes back with every answer kept and every problem named when it is not good', async () => {
    const answers = {
      ...writeForm(brief),
      title: 'My "own" <title>',
      'points.0.heightMm': 'thick',
      'points.1.speedMPerMin': '99999',
      'contaminants.0.mustFindMm': '',
      'contaminants.3.mustFindMm': '2',
    }
    const { status, body } = await send({ ...answers, action: 'advise' })
    expect(status).toBe(422)
    expect(body).toContain('<title>Error: Brief – gritwise</title>')
    for (const path of ['points.0.heightMm', 'points.1.speedMPerMin', 'contaminants.3.material']) {
      expect(body).toContain(`href="#${path}"`)
      expect(body).toMatch(new RegExp(`id="error-${path}"`))
    }
    expect(text(body)).toContain('write a number, like 45 or 4.5; &quot;thick&quot; was given')
    expect(body).toContain('value="thick"')
    expect(body).toContain('value="99999"')
    expect(body).toContain('value="My &quot;own&quot; &lt;title&gt;"')
    const values = new Set([...body.matchAll(/value="([^"]*)"/g)].map(([, value]) => value))
    for (const [path, value] of Object.entries(writeForm(brief))) {
      if (!(path in answers) || answers[path as keyof typeof answers] !== value) continue
      expect([...values], path).toContain(value.replaceAll('&', '&amp;').replaceAll('"', '&quot;'))
    }
  })

  it('asks for food, height and speed of an empty form, in its own words, and for nothing else', async () => {
    const { status, body } = await send({ 'points.0': 'row', 'contaminants.0': 'row', action: 'advise' })
    expect(status).toBe(422)
    expect(body).toContain('<a href="#product.food">Choose the food</a>')
    const named = await send({ 'points.0': 'row', 'product.food': 'hazelnut', action: 'advise' })
    expect(named.status).toBe(422)
    for (const needed of ['points.0.heightMm', 'points.0.speedMPerMin'])
      expect(named.body).toContain(`<a href="#${needed}">`)
    expect(body + named.body).not.toMatch(/<a href="#(?:contaminants|points\.0\.widthMm)/)
  })

  it('adds and removes rows without script, keeping what was typed, the place, and the field to go on in', async () => {
    const more = await follow({ ...writeForm(brief), 'points.0.name': 'changed', action: 'add:contaminants' })
    expect(more.location).toMatch(/#contaminants\.3$/)
    expect(more.body).toMatch(/id="contaminants\.3\.material"[^>]*autofocus/)
    expect(more.body).toContain('value="changed"')
    expect(more.body).not.toContain('There is a problem')
    const fewer = await follow({ ...writeForm(brief), action: 'remove:points.0' })
    expect(fewer.body).toContain('value="after packing"')
    expect(fewer.body).not.toContain('id="points.1.heightMm"')
    const part = await follow({ ...writeForm(brief), action: 'add:points.1.parts' })
    expect(part.body).toContain('id="points.1.parts.0.material"')
  })

  it('keeps a form that is too long for an address, too', async () => {
    const long = Object.fromEntries(
      Array.from({ length: 40 }, (_, at) => [
        `contaminants.${at}.entersAt`,
        Array.from({ length: 20 }, (_, k) => Math.sin(at * 31 + k)).join(' '),
      ]),
    )
    const { status, body } = await send({ ...writeForm(brief), ...long, action: 'add:flow' })
    expect(status).toBe(200)
    expect(body).toContain('id="flow.0.step"')
  })

  it('shows what was understood when asked to, without complaint', async () => {
    const { status, body } = await send({ ...writeForm(brief), 'points.0.heightMm': '2 cm', action: 'check' })
    expect(status).toBe(200)
    expect(body).toContain('understood as 20 mm')
  })
})

describe('the headline while typing', () => {
  it('is a part of the page with the answer and the lines under the fields', async () => {
    const { status, body } = await send(
      { ...writeForm(brief), 'points.0.heightMm': '2 cm', 'product.grainMm': '' },
      '/advice/headline',
      { 'HX-Request': 'true' },
    )
    expect(status).toBe(200)
    expect(body).not.toContain('<html')
    expect(body).toContain('class="answer">Put x-ray, dual ene')
    expect(body).toContain('id="note-points.0.heightMm" hx-swap-oob="true">understood as 20 mm</p>')
    expect(body).toMatch(/id="note-product\.grainMm" hx-swap-oob="true">assumed: 13 mm/)
  })

  it('never complains of what is not finished', async () => {
    const { status, body } = await send({ 'points.0.heightMm': 'thi' }, '/advice/headline')
    expect(status).toBe(200)
    expect(body).not.toMatch(/error|problem|must/i)
  })
})

describe('a brief brought in', () => {
  const bring = async (json: string) => {
    const form = new FormData()
    form.set('brief-json', json)
    const answer = await app.request('/brief/import', { method: 'POST', body: form })
    return { status: answer.status, location: answer.headers.get('location'), body: await answer.text() }
  }

  it('opens in the form', async () => {
    const { status, location } = await bring(JSON.stringify(brief))
    expect(status).toBe(303)
    expect(briefAt(location)).toEqual({ brief })
  })

  it('as a file, too', async () => {
    const form = new FormData()
    form.set('brief-json', '')
    form.set('brief-file', new File([JSON.stringify(brief)], 'brief.json', { type: 'application/json' }))
    const answer = await app.request('/brief/import', { method: 'POST', body: form })
    expect(briefAt(answer.headers.get('location'))).toEqual({ brief })
  })

  it('comes back as pasted, with the reason, when it cannot be read', async () => {
    const broken = await bring('{"product": {"food": "hazelnut"')
    expect(broken.status).toBe(422)
    expect(broken.body).toContain('Not readable as JSON')
    expect(broken.body).toContain('{&quot;product&quot;: {&quot;food&quot;: &quot;hazelnut&quot;')
    const misspelt = await bring(JSON.stringify({ ...brief, prodct: 1 }))
    expect(text(misspelt.body)).toContain('did you mean product?')
  })
})
