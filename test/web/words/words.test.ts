import { beforeAll, describe, expect, it } from 'vitest'
import { demos } from '../../../src/brief/demos.ts'
import { packBrief } from '../../../src/web/asked/packed-brief.ts'
import { VERDICT_WORDS } from '../../../views/words/verdict.ts'
import { house } from '../house.ts'
import { type CrawledPage, crawl, visibleText } from './crawl.ts'
import { labelsOn, reviewedLabels } from './labels.ts'
import { NAMED_IN_FULL, NEVER, ONCE, SPELT_OUT } from './word-rules.ts'

let pages: (CrawledPage & { readonly text: string })[] = []

beforeAll(async () => {
  pages = (await crawl(house)).map((page) => ({ ...page, text: visibleText(page.html) }))
}, 600_000)

const short = (path: string) => path.replace(/b=[\w-]+/, 'b=…')

/** Where a word stands, with what stands around it. */
function met(word: RegExp, text: string): string | null {
  const found = word.exec(text)
  return found ? text.slice(Math.max(0, found.index - 40), found.index + found[0].length + 40) : null
}

describe('the crawl', () => {
  it('reaches every kind of page with every demo brief', () => {
    const paths = new Set(pages.map(({ path }) => new URL(path, 'http://house.test').pathname))
    for (const path of ['/', '/brief', '/advice', '/advice/trail', '/advice/rules', '/compare', '/exercises'])
      expect(paths).toContain(path)
    expect(paths).toContain('/exercises/record')
    for (const { brief } of demos)
      expect(pages.some(({ path }) => path.startsWith(`/advice?b=${packBrief(brief)}`))).toBe(true)
    expect(pages.length).toBeGreaterThan(200)
  })
})

describe('words on pages', () => {
  it.each(NEVER.map((rule) => [`${rule.say}, because ${rule.because}`, rule] as const))(
    'say %s',
    (_, { never, but = [] }) => {
      const wrong = pages
        .filter(({ path }) => !but.some((start) => path.startsWith(start)))
        .flatMap(({ path, text }) => {
          const found = met(never, text)
          return found ? [`${short(path)}: … ${found} …`] : []
        })
      expect(wrong.slice(0, 5)).toEqual([])
    },
  )

  it.each(ONCE)('say once at most: $say', ({ word }) => {
    const wrong = pages.filter(({ text }) => [...text.matchAll(word)].length > 1)
    expect(wrong.map(({ path }) => short(path))).toEqual([])
  })

  it.each(SPELT_OUT)('spell out $short', ({ short: abbreviation, long }) => {
    // The rule book shows conditions with the values that programs compare.
    const wrong = pages.filter(
      ({ path, text }) => !/^\/(?:advice\/)?rules/.test(path) && abbreviation.test(text) && !long.test(text),
    )
    expect(wrong.map(({ path }) => short(path))).toEqual([])
  })

  it.each(NAMED_IN_FULL)('name in full: $full', ({ where, names, full }) => {
    const naming = pages.filter(({ path, text }) => where.test(path) && names.test(text))
    expect(naming.length).toBeGreaterThan(0)
    expect(naming.filter(({ text }) => !full.test(text)).map(({ path }) => short(path))).toEqual([])
  })

  it('give every verdict its words, and no other', () => {
    const said = pages
      .filter(({ path }) => path.startsWith('/advice?'))
      .flatMap(({ html }) => [...html.matchAll(/<td class="verdict">([\s\S]*?)<\/td>/g)])
      .map(([, inner = '']) => visibleText(inner).replace(/^\S /, ''))
    expect(said.length).toBeGreaterThan(20)
    for (const words of new Set(said))
      expect(Object.values(VERDICT_WORDS).map((v) => v.words)).toContain(words)
  })

  it('say false rejects as packs a day wherever packs are counted', () => {
    for (const { brief } of demos) {
      const page = pages.find(({ path }) => path === `/advice?b=${packBrief(brief)}`)!
      const counted = brief.points.filter(({ packsPerMin }) => packsPerMin !== undefined).length
      const said = [...page.text.matchAll(/false rejects 1 in [\d,]+: about [\d.,]+ packs a day/g)]
      expect(said.length, brief.title).toBeGreaterThanOrEqual(counted)
    }
  })
})

describe('labels', () => {
  it('are all reviewed: the trade’s own, an open standard’s, or ours', () => {
    const reviewed = reviewedLabels()
    const shown = new Map(
      pages.flatMap(({ path, html }) => [...labelsOn(html)].map((label) => [label, short(path)] as const)),
    )
    const unknown = [...shown]
      .filter(([label]) => !reviewed[label])
      .map(([label, path]) => `${label} (${path})`)
    expect(unknown, 'review these: npm run labels, then say of each whose word it is').toEqual([])
    for (const origin of Object.values(reviewed)) expect(['trade', 'standard', 'ours']).toContain(origin)
  })
})
