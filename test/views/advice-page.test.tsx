import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import { adviceSchema } from '../../src/contract/index.ts'
import { AdvicePage, type AdvicePageProps } from '../../views/advice/advice-page.tsx'
import { BossPage } from '../../views/advice/paper/boss-page.tsx'
import { PaperPage } from '../../views/advice/paper/paper-page.tsx'
import { Part } from '../../views/advice/parts/part.tsx'
import { advice, names } from './fixture.ts'

const shown = {
  advice,
  title: advice.brief.title ?? '',
  names,
  packed: 'PACKED',
  pointLines: ['line of the belt', 'false rejects 1 in 1,000: about 77 packs a day'],
}
const page = (more: Partial<AdvicePageProps> = {}) =>
  String(<AdvicePage {...shown} changeLinks={[]} hasDose={false} {...more} />)
const NO_LAW = { ceiling: null, usualMicroGy: 100, usualSource: '' }
const parsed = parseBrief(advice.brief)
if (!parsed.ok) throw new Error('the brief of the fixture is none')
const onPaper = { ...shown, brief: parsed.brief, printedOn: '1 May 2026' }
const paper = (short: boolean) => String(<PaperPage {...onPaper} short={short} doseLaw={NO_LAW} />)
const part = (name: 'why' | 'device' | 'assumed' | 'prevent', point = 0, equipment = '') =>
  String(<Part {...shown} part={name} point={point} equipment={equipment} contaminant={0} doseLaw={NO_LAW} />)

const ladder = (contaminant: number, of = advice) =>
  String(
    <Part {...{ ...shown, advice: of, contaminant }} part="ladder" point={0} equipment="" doseLaw={NO_LAW} />,
  )

const text = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ')
const sectionOf = (html: string, id: string) =>
  html.split(`aria-labelledby="${id}"`)[1]?.split('</section>')[0] ?? ''

describe('the advice page', () => {
  it('is drawn from what the contract calls an advice', () => {
    expect(adviceSchema.safeParse(advice).error?.issues ?? []).toEqual([])
  })

  it('says the answer first, then a row for each contaminant, then sizes, machines and the rest', () => {
    const html = page()
    const order = [advice.answer.sentence, 'class="answer-table"', 'id="sizes"', 'id="machines"', 'id="more"']
    const places = order.map((one) =>
      html.indexOf(one.replaceAll('"', one.includes('class=') || one.includes('id=') ? '"' : '&quot;')),
    )
    expect(places).toEqual([...places].sort((a, b) => a - b))
    expect(places).not.toContain(-1)
    const rows = html.split('class="answer-table"')[1]!.split('</table>')[0]!.split('<tr').slice(2)
    expect(rows).toHaveLength(advice.answer.rows.length)
  })

  it('shows in a row what was asked, expected, safe to promise, and what is left, with its rule', () => {
    const table = page().split('class="answer-table"')[1]!.split('</table>')[0]!
    for (const { left, rule } of advice.answer.rows.map((row) => ({
      left: row.left.text,
      rule: row.left.rule,
    }))) {
      expect(text(table)).toContain(left)
      if (rule) expect(table).toContain(`/rules/${rule}?b=PACKED`)
    }
  })

  it('escapes what people typed and what rules say', () => {
    const html = page() + part('why', 1, 'xray-dual')
    expect(html).toContain('Kernels &lt;1 kg&gt; &amp; &quot;friends&quot;')
    expect(html).toContain('&lt;script&gt;alert(1)&lt;/script&gt;')
    expect(html).not.toContain('<script>alert')
    expect(html).not.toMatch(/ style=| on\w+=/)
  })

  it('uses the words of the trade once, and never a word of approval', () => {
    const words = text(page())
    expect(words.match(/sensitivity/g)).toHaveLength(1)
    expect(words).toContain('safe to promise')
    expect(words).toMatch(/best fit to this brief/)
    expect(words).toMatch(/test first/)
    expect(words).not.toMatch(/approved|validated|guarantee/i)
  })

  it('ranks machines with how many sizes each meets, and a mark for each contaminant', () => {
    const table = text(page().split('id="ranked-1"')[1]?.split('</table>')[0] ?? '')
    expect(table).toContain('1 x-ray, dual energy ● best fit to this brief 2 promised 4')
    expect(table).toContain('1 expected, 1 not')
  })

  it('draws one line a machine, and says in a sentence who finds nothing', () => {
    const quartz = ladder(0)
    expect(text(quartz)).toContain('2 · x-ray, dual energy 2.5 3.0')
    expect(text(quartz)).toContain('Not found by any metal detector.')
    expect(text(ladder(2))).toContain('No machine compared here finds it.')
  })

  it('leads from a size to its own calculation, or to that of the finding', () => {
    expect(ladder(0)).toContain('/advice/trail?b=PACKED&amp;id=size')
    const more = { ...advice.trace.calculations[0]!, id: 'p1.dual.c0.cautious' }
    const own = {
      ...advice,
      points: advice.points.map((point) => ({
        ...point,
        options: point.options.map((option) => ({
          ...option,
          findings: option.findings.map((finding) => ({ ...finding, calculation: 'p1.dual.c0.expected' })),
        })),
      })),
      trace: { ...advice.trace, calculations: [...advice.trace.calculations, more] },
    }
    expect(ladder(0, own)).toContain('id=p1.dual.c0.cautious')
  })

  it('keeps what is folded out of the page: a link, opened in place by htmx, a page without script', () => {
    const html = page()
    expect(html).not.toContain('two shifts')
    expect(html).toContain('href="/advice/part?b=PACKED&amp;part=assumed"')
    expect(html).toContain('hx-get="/advice/part?b=PACKED&amp;part=assumed"')
    expect(text(part('assumed'))).toMatch(/running time per day at “belt” 16 h 8 to 24 h two shifts/)
    expect(text(part('why', 1, 'coil-multi'))).toContain('It sees metal only.')
    expect(text(part('prevent'))).toContain('Keep wood out of open-food areas.')
  })

  it('shows removal as shares beside, never among, the machines ranked', () => {
    const html = page()
    expect(text(sectionOf(html, 'upstream') + html.split('id="upstream-')[1])).toContain('20–60')
    expect(html.split('id="machines"')[1]!.split('id="upstream"')[0]).not.toContain('sieve')
  })

  it('says what would change the answer, with both inputs and their places', () => {
    expect(text(page())).toContain(
      'height of the food at “after packing” from 45 to 30 mm, with speed at “after packing” from 30 to 45 m/min',
    )
  })
})

describe('the advice on paper', () => {
  it('in short: answer, machines and cautions; the whole adds sizes, reasons, assumptions and sources', () => {
    for (const id of ['machines', 'cautions', 'before-ordering']) expect(paper(true)).toContain(`id="${id}"`)
    for (const id of ['sizes', 'reasons', 'assumed']) expect(paper(true)).not.toContain(`id="${id}"`)
    for (const id of ['sizes', 'reasons', 'assumed', 'sources', 'why-not'])
      expect(paper(false)).toContain(`id="${id}"`)
  })

  it('leaves out what only a screen can use', () => {
    for (const html of [paper(true), paper(false), String(<BossPage {...onPaper} />)]) {
      expect(html).not.toContain('<nav')
      expect(html).not.toContain('<script')
      expect(html).not.toContain('hx-get')
    }
    expect(paper(false).match(/<details(?![^>]* open)/g)).toBeNull()
  })

  it('for a boss: the first part of the answer as its title, what it rests on, lines to sign', () => {
    const boss = text(String(<BossPage {...onPaper} />))
    expect(boss).toContain(advice.answer.parts[0]!.text)
    expect(boss).toContain('about 77 packs a day')
    expect(boss).toContain('Assumed: running time per day at “belt” 16 h (8 to 24)')
    expect(boss).toContain('Not an approval')
    expect(boss).toContain('Agreed by, date')
  })
})

describe('an advice without machines', () => {
  it('says so at the point, and draws no empty table', () => {
    const bare = { ...advice, points: advice.points.map((point) => ({ ...point, options: [] })) }
    const html = page({ advice: bare })
    expect(text(html)).toContain('belt: no detector compared here fits')
    expect(html).not.toContain('id="ranked-0"')
  })
})
