import { describe, expect, it } from 'vitest'
import { BriefPage, type BriefPageProps } from '../../views/brief/brief-page.tsx'
import type { Sheet } from '../../views/brief/sheet.ts'

const sheet: Sheet = {
  answers: {
    title: '"><b>',
    'product.food': 'nutmeg',
    'points.0.heightMm': '3 cm',
    'contaminants.0.severity': '4',
    'equipment.of-old': 'on',
  },
  problems: new Map(),
  notes: new Map([
    ['points.0.heightMm', { understood: '30 mm' }],
    ['product.grainMm', { assumed: '13 mm (usual)' }],
  ]),
  foods: [{ words: 'Grains', options: [{ value: 'hazelnut', words: 'hazelnut kernels' }] }],
  contaminants: [],
  packaging: [],
  machines: [{ value: 'sieve', words: 'sieve' }],
  quotedMachines: [],
  detectors: [],
}

const page = (more: Partial<BriefPageProps> = {}) =>
  String(
    <BriefPage
      sheet={sheet}
      problems={[]}
      packed={null}
      demos={[]}
      headline={null}
      needed={[]}
      next={null}
      {...more}
    />,
  )

/** The part of the page around one field, from its label to the next. */
const field = (html: string, path: string) => html.split(`<label for="${path}"`)[1]?.split('</div>')[0] ?? ''

const MORE = 'More: structure, composition, density, fill fraction, unevenness, conductivity'

describe('the brief page', () => {
  it('shows a number as typed, its unit beside it, its range, and what was understood', () => {
    const height = field(page(), 'points.0.heightMm')
    expect(height).toContain('value="3 cm"')
    expect(height).toContain('inputmode="decimal"')
    expect(height).toContain('1 to 2,000 mm')
    expect(height).toContain('<span class="unit">mm</span>')
    expect(height).toContain('understood as 30 mm')
  })

  it('shows a default as assumed, not as entered', () => {
    const grain = field(page(), 'product.grainMm')
    expect(grain).toContain('value=""')
    expect(grain).toContain('assumed: 13 mm (usual)')
  })

  it('keeps an answer that is in no list', () => {
    expect(field(page(), 'product.food')).toContain('<option value="nutmeg" selected="">nutmeg</option>')
    expect(page()).toContain('name="equipment.of-old" value="on" checked=""')
  })

  it('puts words beside the numbers of severity', () => {
    expect(field(page(), 'contaminants.0.severity')).toMatch(/value="4" selected="">4: a deep cut, surgery/)
  })

  it('escapes what was typed', () => {
    expect(page()).toContain('value="&quot;&gt;&lt;b&gt;"')
  })

  it('has a label for every field', () => {
    const html = page()
    const ids = [...html.matchAll(/<(?:input type="text"|select|textarea)[^>]* id="([^"]+)"/g)].map(
      ([, id]) => id,
    )
    expect(ids.length).toBeGreaterThan(30)
    for (const id of ids) expect(html, id).toContain(`<label for="${id}"`)
  })

  it('says what is wrong at the top and beside the field, in the same words', () => {
    const message = 'Height of the food: write a number'
    const html = page({
      problems: [{ path: 'points.0.heightMm', message }],
      sheet: { ...sheet, problems: new Map([['points.0.heightMm', message]]) },
    })
    expect(html).toContain('<title>Error: Brief – gritwise</title>')
    expect(html.indexOf('There is a problem')).toBeLessThan(html.indexOf('<h1>'))
    expect(html).toContain(`<a href="#points.0.heightMm">${message}</a>`)
    const height = field(html, 'points.0.heightMm')
    expect(height).toContain(message)
    expect(height).toContain('aria-invalid="true"')
    expect(height).toMatch(/aria-describedby="[^"]*error-points\.0\.heightMm/)
  })

  it('opens a fold that holds a problem and no other; folded, it says what it holds', () => {
    const fold = (html: string, words: string) =>
      /<details class="fold"[^>]*?( open="")?>/.exec(
        html.slice(html.lastIndexOf('<details', html.indexOf(words))),
      )?.[1]
    expect(fold(page(), MORE)).toBeUndefined()
    const answered = { ...sheet, answers: { ...sheet.answers, 'product.composition.waterPct': '80' } }
    expect(fold(page({ sheet: answered }), MORE)).toBeUndefined()
    expect(page({ sheet: answered })).toContain(`${MORE}<span class="held">: water 80</span>`)
    const wrong = { ...sheet, problems: new Map([['product.composition.ashPct', 'x']]) }
    expect(fold(page({ sheet: wrong }), MORE)).toBeDefined()
  })

  it('sends without script: a plain form, with the advice as the first button', () => {
    const html = page()
    expect(html).toContain(
      '<form id="brief" class="sheet compact" method="post" action="/advice" novalidate="">',
    )
    expect(/<form id="brief".*?<button[^>]*value="([^"]+)"/s.exec(html)?.[1]).toBe('advise')
  })

  it('says what is still needed, and marks the fields without which there is no answer', () => {
    const html = page({ needed: ['food', 'speed'] })
    expect(html).toContain('Still needed: food and speed.')
    expect(field(html, 'points.0.heightMm')).toContain('needed')
    expect(field(html, 'points.0.massG')).not.toContain('needed')
  })
})
