import { describe, expect, it } from 'vitest'
import { differenceOf } from '../../src/advice/book/difference.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { adviceText } from '../../src/commands/text/advice-text.ts'
import { shortWhy, treeText } from '../../src/commands/text/condition-text.ts'
import { contrastText } from '../../src/commands/text/contrast-text.ts'
import { differenceText } from '../../src/commands/text/difference-text.ts'
import { trailText } from '../../src/commands/text/trail-text.ts'
import { type Advice, adviceSchema, type Brief } from '../../src/contract/index.ts'
import { AdvicePage } from '../../views/advice/advice-page.tsx'
import { PARTS } from '../../views/advice/links.ts'
import { PaperPage } from '../../views/advice/paper/paper-page.tsx'
import { Part } from '../../views/advice/parts/part.tsx'
import { DifferencePage } from '../../views/difference/difference-page.tsx'
import { RatherPage } from '../../views/rather/rather-page.tsx'
import { RulesPart } from '../../views/trail/rules-page.tsx'
import { TrailPage } from '../../views/trail/trail-page.tsx'
import { type Step, unfold } from '../../views/trail/unfold.ts'
import { advice, brief as given, names } from './fixture.ts'

const NO_LAW = { ceiling: null, usualMicroGy: 100, usualSource: '' }
const parsed = parseBrief(given)
const brief = (parsed.ok ? parsed.brief : null) as Brief
const flat = (html: string) =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&gt;', '>')
    .replaceAll('&lt;', '<')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ')
const plain = (text: string) => text.replace(/\s+/g, ' ')

const shown = (of: Advice) => ({
  advice: of,
  title: 'Kernels',
  names,
  packed: 'PACKED',
  pointLines: ['', ''],
})

/** The page with everything on it opened that can be. */
const page = (of: Advice = advice) => {
  const machines = of.points.flatMap(({ options, removals }, point) => [
    ...options.map(({ equipment }) => ({ part: 'why' as const, point, equipment })),
    ...removals.map(({ equipment }) => ({ part: 'device' as const, point, equipment })),
  ])
  const parts = PARTS.filter((part) => part !== 'why' && part !== 'device')
  const opened = [...parts.map((part) => ({ part, point: 0, equipment: '' })), ...machines].map((one) =>
    String(<Part {...shown(of)} {...one} contaminant={0} doseLaw={NO_LAW} />),
  )
  return flat([String(<AdvicePage {...shown(of)} changeLinks={[]} hasDose />), ...opened].join(' '))
}

const print = (of: Advice = advice) =>
  flat(
    String(<PaperPage {...shown(of)} brief={brief} printedOn="1 May 2026" short={false} doseLaw={NO_LAW} />),
  )

/** The advice in its four renderings, all from one fixture. */
const RENDERINGS = {
  page: page(),
  print: print(),
  json: plain(JSON.stringify(advice)),
  terminal: plain(adviceText(brief, advice, { reasons: true, tree: true })),
} as const
type Rendering = keyof typeof RENDERINGS
const everywhere = Object.keys(RENDERINGS) as Rendering[]
const READ: readonly Rendering[] = ['page', 'print', 'terminal']

describe('the fixture', () => {
  it('is an advice as the contract has it, and a brief that parses', () => {
    expect(adviceSchema.safeParse(advice).error?.issues ?? []).toEqual([])
    expect(parsed.ok).toBe(true)
  })
})

describe('1 and 2: every node has its truth, every leaf its value, threshold, margin and origin', () => {
  const rules = advice.trace.rules
  const [fired, absent] = rules
  const LEAF = 'holds: grain size is above 5 mm; here 13 mm (assumed, margin 8 mm (160 %))'
  it('in the trees of page and terminal, and the leaf that settles it on paper', () => {
    const tree = flat(String(<RulesPart rules={rules} packed="PACKED" pieces={[]} />))
    expect(tree).toContain(`holds: all of ${LEAF}`)
    expect(plain(treeText(fired!).join('\n'))).toContain(`holds: all of ${LEAF}`)
    expect(RENDERINGS.print).toContain(LEAF)
  })
  it('and "does not apply" is a value of its own', () => {
    const tree = flat(String(<RulesPart rules={rules} packed="PACKED" pieces={[]} />))
    expect(tree).toContain('does not apply here: wrapper.foil is; here there is no such value here')
    expect(treeText(absent!).join()).toContain('does not apply here')
    expect(advice.trace.rules[1]?.conditions.truth).toBe('not-applicable')
  })
  it('and a computed fact leads to its calculation', () => {
    const computed = structuredClone(fired!)
    const leaf = computed.conditions.children![0]!
    Object.assign(leaf, { origin: 'computed', calculation: 'size' })
    const html = String(<RulesPart rules={[computed]} packed="PACKED" pieces={[]} />)
    expect(html).toContain('href="/advice/trail?b=PACKED&amp;id=size"')
    expect(treeText(computed).join()).toContain('[trail size]')
    expect(JSON.stringify(computed)).toContain('"calculation":"size"')
  })
})

describe('3: a calculation is walked to its end', () => {
  const trail = unfold(advice.trace, 'size') as Extract<Step, { kind: 'calculation' }>
  const html = (print: boolean) =>
    flat(
      String(
        <TrailPage trail={trail} about="" sources={advice.trace.sources} packed="PACKED" print={print} />,
      ),
    )
  it.each(['d₉₀ = 2.41 mm', 'POD(d) = 0.90', 'μ = 0.0689 1/mm', 'Table of attenuation coefficients'])(
    '%s',
    (said) => {
      for (const rendered of [html(false), html(true), plain(trailText(advice, 'size')!)])
        expect(rendered).toContain(said)
      const all = JSON.stringify(advice.trace)
      for (const piece of said.split(' = ')) expect(all).toContain(piece.split(' ')[0])
    },
  )
  it('and one that is not there is none', () => {
    expect(trailText(advice, 'nothing')).toBeNull()
  })
})

describe('4: why and why not', () => {
  it.each(READ)('the shortest sufficient set stands under the reason: %s', (where) => {
    expect(RENDERINGS[where]).toMatch(
      /Dual energy cancels the pattern of kernels .*? holds: grain size is above 5 mm; here 13 mm/,
    )
  })
  it('as paths in the JSON, which lead to the same leaves', () => {
    expect(advice.trace.rules[0]?.decisive).toEqual(['0'])
    expect(shortWhy(advice.trace.rules[0]!)).toEqual([
      'holds: grain size is above 5 mm; here 13 mm (assumed, margin 8 mm (160 %))',
    ])
  })
  it.each(everywhere)('every machine short of best fit says why not: %s', (where) => {
    expect(RENDERINGS[where]).toContain('The wire is missed by 0.12 mm.')
    expect(RENDERINGS[where]).toContain('Quartz is no metal.')
  })
})

describe('5: what would change it', () => {
  it.each(READ)('with both inputs, their places and the effect: %s', (where) => {
    expect(RENDERINGS[where]).toContain(
      'height of the food at “after packing” from 45 to 30 mm, with speed at “after packing” from 30 to 45 m/min',
    )
    expect(RENDERINGS[where]).toContain('inspection point from belt to after packing')
  })
  it.each(everywhere)('and where nothing does, that: %s', (where) => {
    const none = { ...advice, changes: [], changesNote: 'No change of the line does it.' }
    const rendered = {
      page: () => page(none),
      print: () => print(none),
      json: () => JSON.stringify(none),
      terminal: () => adviceText(brief, none),
    }
    expect(rendered[where]()).toContain('No change of the line does it.')
  })
})

describe('6: A rather than B', () => {
  it.each(everywhere)('in a line: %s', (where) => {
    expect(RENDERINGS[where]).toContain('dual energy leaves none unmet; single energy leaves the wire.')
  })
  it('side by side, only what differs', () => {
    const point = advice.points[1]!
    const [contrast] = point.contrasts
    const [first, second] = point.options
    const machines = point.options.map(({ equipment, label }) => ({ equipment, label }))
    const html = (print: boolean) =>
      flat(
        String(
          <RatherPage
            contrast={contrast!}
            machines={machines}
            point={1}
            pointName="after packing"
            pieces={['quartz', 'the wire', 'wood']}
            packed="PACKED"
            print={print}
          />,
        ),
      )
    const text = plain(contrastText(brief, 'after packing', contrast!, [first!, second!]))
    for (const rendered of [html(false), html(true), text]) {
      expect(rendered).toContain('best fit to this brief')
      expect(rendered).toContain('0.40 / 0.55 mm, met')
      expect(rendered).toMatch(/Grain hides stones.* applies .*does not apply/)
      expect(rendered).not.toContain('quartz')
    }
  })
})

describe('7: a close call', () => {
  it.each(everywhere)('says that it is close and which test would settle it: %s', (where) => {
    expect(RENDERINGS[where]).toContain('The choice is close: it hangs on quartz of 3.0 mm')
    expect(RENDERINGS[where]).toContain('29 of 29 found')
  })
})

describe('8: permanent names, versions, and the same brief under another book', () => {
  it.each(everywhere)('versions: %s', (where) => {
    for (const version of ['0.1.0', 'r1', 'd1']) expect(RENDERINGS[where]).toContain(version)
    expect(RENDERINGS[where]).toContain('grain-limits-one-energy')
  })
  it('the difference in words', () => {
    const other = structuredClone(advice)
    other.versions = { ...other.versions, rules: 'r2' }
    other.trace.rules[0]!.outcome = 'not-fired'
    other.points[1]!.options[0]!.verdict = 'conditional'
    const difference = differenceOf(advice, other)
    const html = flat(
      String(
        <DifferencePage
          packed="PACKED"
          title="Kernels"
          thresholds={[]}
          rules={[]}
          asked={{ threshold: '', value: '', without: '', pasted: '' }}
          problem=""
          difference={difference}
          pieces={[]}
        />,
      ),
    )
    for (const rendered of [html, plain(differenceText(brief, difference))]) {
      expect(rendered).toContain('From r1 to r2')
      expect(rendered).toMatch(/Grain hides stones.*: applies → does not apply/)
      expect(rendered).toContain('best fit to this brief, place 1 → suitable with conditions, place 1')
    }
  })
})

describe('9: one trace model', () => {
  it('links every reason to a rule that was tried, under one key', () => {
    const keys = new Set(advice.trace.rules.map(({ key }) => key))
    for (const { reasons } of advice.points.flatMap(({ options }) => options))
      for (const { trace } of reasons) expect(keys).toContain(trace)
  })
  it.each(everywhere)('says what to find out next, what still enters and what to ask: %s', (where) => {
    expect(RENDERINGS[where]).toContain('Turns an answer: at 24 single energy does not meet quartz.')
    expect(RENDERINGS[where]).toContain('The wire can still enter behind the belt.')
    expect(RENDERINGS[where]).toContain('Two looks at the same thing miss the same pieces.')
    expect(RENDERINGS[where]).toContain('Keep wood out of open-food areas.')
    expect(RENDERINGS[where]).toContain('How many runs in fresh packs, and how many found?')
  })
})
