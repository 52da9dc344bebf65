import { beforeAll, describe, expect, it } from 'vitest'
import { demos } from '../../../src/brief/demos.ts'
import { packBrief } from '../../../src/web/asked/packed-brief.ts'
import { house } from '../house.ts'

const packedOf = (id: string) => packBrief(demos.find((demo) => demo.id === id)!.brief)
const linksIn = (html: string) =>
  [...html.matchAll(/href="([^"]+)"/g)].map((match) => match[1]!.replaceAll('&amp;', '&'))

describe.each(['mince', 'milk-powder', 'cheddar'])('from the advice page of %s', (id) => {
  let html = ''
  let parts: string[] = []
  beforeAll(async () => {
    html = await (await house.request(`/advice?b=${packedOf(id)}`)).text()
    const folded = [...new Set(linksIn(html))].filter((link) => link.startsWith('/advice/part?'))
    parts = await Promise.all(
      folded.map(async (link) => (await house.request(link, { headers: { 'hx-request': 'true' } })).text()),
    )
  })
  it('every calculation, rule and list of rules that is linked is there', async () => {
    const links = [...new Set([html, ...parts].flatMap(linksIn))].filter((link) =>
      /^\/(advice\/|rules\/)/.test(link),
    )
    expect(links.length).toBeGreaterThan(20)
    for (const link of links) {
      const { status } = await house.request(link)
      expect([link.replace(/b=[\w-]+/, 'b=…'), status]).toEqual([link.replace(/b=[\w-]+/, 'b=…'), 200])
    }
  }, 60_000)
  it('every anchor is on its page, or in the part that is opened', () => {
    for (const shown of [html, ...parts]) {
      const anchors = linksIn(shown).filter((link) => link.startsWith('#'))
      // A part is opened in its page, and may draw with what the page holds already.
      for (const anchor of new Set(anchors)) expect(shown + html).toContain(`id="${anchor.slice(1)}"`)
    }
  })
  it('each change opens the advice with it, and a caution of a rule opens the rule', async () => {
    const changed = [...html.matchAll(/href="([^"]+)"[^>]*>See it/g)]
    // Every change that is listed has its link; where none is, the section says so in a sentence.
    const section = html.split('id="changes"')[1]!.split('</section>')[0]!
    const listed = [...section.matchAll(/<li>/g)].length
    expect(changed).toHaveLength(listed)
    if (listed === 0) expect(section).toMatch(/<p>(?:<a [^>]*>)?[^<]{10,}/)
    for (const [, link] of changed) expect((await house.request(link!)).status).toBe(200)
    expect(parts.join()).toMatch(/Rule\s*<a href="\/rules\/[\w-]+\?b=/)
  }, 60_000)
})
