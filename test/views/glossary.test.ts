import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { termsLinked } from '../../src/web/serving/terms-linked.ts'
import { linkTerms } from '../../views/glossary/link-terms.ts'
import { TERMS } from '../../views/glossary/terms.ts'

/** All text pages are made of: views, exercises, rules, and the names of places in a pack. */
const written = ['views', 'src/exercises', 'src/xray/places', 'rules']
  .flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(?:tsx?|json)$/.test(name) && !name.includes('glossary'))
      .map((name) => readFileSync(join(folder, name), 'utf8')),
  )
  .join('\n')
  .toLowerCase()

describe('the glossary', () => {
  it.each(TERMS.map((term) => [term.term, term] as const))('says what "%s" is in two sentences', (_, one) => {
    expect(one.means.match(/[.?!](?= |$)/g)).toHaveLength(2)
    expect(one.means).toMatch(/^[A-Z].*\.$/)
    expect(one.id).toMatch(/^[a-z-]+$/)
    const used = [one.term, ...(one.also ?? [])].some((form) => written.includes(form.toLowerCase()))
    expect(used, 'a word no page uses').toBe(true)
  })

  it('has each word once', () => {
    const forms = TERMS.flatMap(({ term, also = [] }) => [term, ...also]).map((form) => form.toLowerCase())
    expect(new Set(forms).size).toBe(forms.length)
    expect(new Set(TERMS.map(({ id }) => id)).size).toBe(TERMS.length)
  })
})

describe('a page as it leaves', () => {
  const body = '<body class="X"><main id="main"><p>Noise</p></main></body>'
  const asked = async (address: string, answer: Response) =>
    (await termsLinked(async () => answer)(new Request(`http://here${address}`))).text()
  const page = (of: string, status = 200) =>
    new Response(body.replace('X', of), { status, headers: { 'content-type': 'text/html; charset=UTF-8' } })

  it('links its words, whatever page it is, and keeps what is not ASCII', async () => {
    expect(await asked('/advice', page(''))).toContain('#noise">Noise</a>')
    const sized = new Response('<main>≥ 3 mm noise µ</main>', { headers: { 'content-type': 'text/html' } })
    expect(await asked('/register', sized)).toMatch(/≥ 3 mm <a [^>]*>noise<\/a> µ/)
  })

  it('links nothing on paper, before a room, in the glossary, between the fields of a brief and in what is no page', async () => {
    expect(await asked('/advice', page('for-paper'))).not.toContain('/glossary')
    expect(await asked('/exercises', page('for-the-room'))).not.toContain('/glossary')
    expect(await asked('/glossary', page(''))).not.toContain('#noise')
    expect(await asked('/brief?b=x', page(''))).not.toContain('#noise')
    const text = new Response('<main>noise</main>', { headers: { 'content-type': 'text/plain' } })
    expect(await asked('/x.txt', text)).toBe('<main>noise</main>')
  })
})

describe('the first use of a word', () => {
  const page = (inner: string) => `<html><body><p>noise</p><main id="main">${inner}</main></body></html>`

  it('is linked, the second is not, and nothing outside the text of the page', () => {
    expect(linkTerms(page('<p>Noise and more noise.</p>'))).toBe(
      page('<p><a class="term" href="/glossary#noise">Noise</a> and more noise.</p>'),
    )
  })

  it('is left alone in headings, links, controls and drawings', () => {
    for (const inner of [
      '<h1>Noise</h1>',
      '<p><a href="/x">the noise</a></p>',
      '<button>noise</button>',
      '<svg><g><text>noise</text></g></svg>',
      '<p title="noise">x</p>',
      '<p>noiseless, pre-noise</p>',
    ])
      expect(linkTerms(page(inner))).toBe(page(inner))
    expect(linkTerms(page('<svg><text>noise</text></svg><input/><p>noise</p>'))).toContain('#noise')
  })

  it('takes the longest word that fits', () => {
    expect(linkTerms(page('<p>A false-reject rate.</p>'))).toContain('#false-reject">false-reject rate</a>')
  })
})
