import { describe, expect, it } from 'vitest'
import { adviceSchema } from '../../src/contract/index.ts'
import { AdvicePage, type AdvicePageProps } from '../../views/advice/advice-page.tsx'
import { advice, names } from './fixture.ts'

const page = (more: Partial<AdvicePageProps> = {}) =>
  String(
    <AdvicePage
      advice={advice}
      title={advice.brief.title ?? ''}
      names={names}
      packed="PACKED"
      pointLines={['line of the belt', 'false rejects 1 in 1,000: about 77 packs a day']}
      printedOn={null}
      {...more}
    />,
  )

const text = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ')
const sectionOf = (html: string, id: string) =>
  html.split(`aria-labelledby="${id}"`)[1]?.split('</section>')[0] ?? ''

describe('the advice page', () => {
  it('is drawn from what the contract calls an advice', () => {
    expect(adviceSchema.safeParse(advice).error?.issues ?? []).toEqual([])
  })

  it('says the answer first, then what no machine finds, and why', () => {
    const html = page()
    expect(html.indexOf(advice.summary)).toBeLessThan(html.indexOf('What no machine here will find'))
    expect(text(sectionOf(html, 'honest-no'))).toContain(
      'wood, air dry, sphere. Wood is lighter than the kernels',
    )
    expect(sectionOf(html, 'honest-no')).not.toContain('quartz')
    expect(html.indexOf('What no machine here will find')).toBeLessThan(html.indexOf('id="ladders"'))
  })

  it('says nothing of an honest no where something finds every contaminant', () => {
    const found = {
      ...advice,
      points: advice.points.map((point) => ({
        ...point,
        options: point.options.map((option) => ({
          ...option,
          findings: option.findings.filter(({ material }) => material !== 'wood'),
        })),
      })),
    }
    expect(page({ advice: found })).not.toContain('honest-no')
  })

  it('escapes what people typed and what rules say', () => {
    const html = page()
    expect(html).toContain('Kernels &lt;1 kg&gt; &amp; &quot;friends&quot;')
    expect(html).toContain('&lt;script&gt;alert(1)&lt;/script&gt;')
    expect(html).not.toContain('<script>alert')
    expect(html).not.toMatch(/ style=| on\w+=/)
  })

  it('uses the words of the trade once, and never a word of approval', () => {
    const words = text(page())
    expect(words.match(/sensitivity/g)).toHaveLength(1)
    expect(words).toContain('promise no better than')
    expect(words).toContain('you must find 3 mm')
    expect(words).toMatch(/best fit to this brief/)
    expect(words).toMatch(/worth a test on your product/)
    expect(words).not.toMatch(/approved|validated|guarantee/i)
  })

  it('has a short form for paper: answer, ladders, table and cautions, and where the rest stands', () => {
    const short = page({ printedOn: '1 May 2026', short: true })
    for (const id of ['ladders', 'comparison', 'cautions']) expect(short).toContain(`id="${id}"`)
    for (const id of ['reasons', 'assumed', 'sources']) expect(short).not.toContain(`id="${id}"`)
    expect(short).toContain('class="short-form"')
    expect(short).not.toMatch(/<details open/)
    expect(text(short)).toContain('whole advice')
    expect(page()).toContain('print=short')
  })

  it('says provisional where expected and promised sizes stand', () => {
    expect(text(page())).toMatch(/Provisional: expected and promised sizes/)
    expect(text(sectionOf(page(), 'comparison'))).toContain('both provisional')
  })

  it('leads from a size to its own calculation, or to that of the finding', () => {
    const html = page()
    expect(html).toContain('/advice/trail?b=PACKED&amp;id=size')
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
    expect(page({ advice: own })).toContain('id=p1.dual.c0.cautious')
  })

  it('compares per point: scope, right-aligned numbers, the unit in words, its own scroll region', () => {
    const html = page()
    const table = html.split('id="compared-1"')[1]?.split('</table>')[0] ?? ''
    expect(html).toContain('<section class="scroll" tabindex="0" aria-labelledby="compared-1">')
    expect(table).toContain('scope="col"')
    expect(table).toContain('scope="row"')
    expect(text(table)).toContain('false rejects 1 in 1,000: about 77 packs a day')
    expect(text(table)).toMatch(/2\.5\s*\/\s*3\.0/)
    expect(text(table)).toMatch(/2\.9 \/ – ◐ maybe/)
    expect(text(table)).toContain('It sees metal only.')
  })

  it('shows removal as shares beside, never among, the machines compared', () => {
    const html = page()
    expect(text(sectionOf(html, 'removals-0'))).toContain('20 to 60')
    expect(sectionOf(html, 'comparison')).not.toContain('sieve')
  })

  it('says what would change the answer, with both inputs and their places', () => {
    expect(text(page())).toContain(
      'height of the food at after packing from 45 to 30 mm, with speed at after packing from 30 to 45 m/min',
    )
  })

  it('lists what was assumed with its range', () => {
    expect(text(page())).toMatch(/running time per day at belt 16 h 8 to 24 h two shifts/)
  })

  it('opens every detail on paper and leaves out what only a screen can use', () => {
    const paper = page({ printedOn: '1 May 2026' })
    expect(paper.match(/<details(?![^>]* open)/g) ?? []).toHaveLength(1)
    expect(paper).toContain('Printed on 1 May 2026')
    expect(paper).not.toContain('<nav')
    expect(paper).not.toContain('<script')
  })
})

describe('an advice without machines', () => {
  it('says so at the point, and draws no empty picture or table', () => {
    const bare = { ...advice, points: advice.points.map((point) => ({ ...point, options: [] })) }
    const html = page({ advice: bare })
    expect(text(html)).toContain('belt: no detector of the list fits')
    expect(html).not.toContain('<svg')
    expect(html).not.toContain('class="comparison"')
  })
})
