import { describe, expect, it } from 'vitest'
import type { Present } from '../../src/trade-offs/present.ts'
import type { SizeStep } from '../../src/trade-offs/size-against.ts'
import type { Sizes } from '../../src/trade-offs/sizes-at.ts'
import { addressOf, type TradeOffsProps } from '../../views/trade-offs/props.ts'
import { bandsOf, gapsOf } from '../../views/trade-offs/size-panel.tsx'
import { TradeOffsPage } from '../../views/trade-offs/trade-offs-page.tsx'
import { inputValueWords } from '../../views/words/trade-offs.ts'

/** Written by hand; the sizes are not computed. */
const sizes: Sizes = {
  bestMm: 1.2,
  expectedMm: 1.5,
  cautiousMm: 2.2,
  cautiousKnown: true,
  gap: null,
  kV: 60,
  mA: 10,
  frequenciesKHz: [],
  openingMm: null,
  conductivitySPerM: null,
}
const none = { bestMm: null, expectedMm: null, cautiousMm: null } as const
const step = (value: number, more: Partial<SizeStep> = {}): SizeStep => ({
  ...sizes,
  value,
  heightMm: value,
  speedMPerMin: 30,
  ...more,
})
const steps = [
  step(20),
  step(30, { cautiousKnown: false, cautiousMm: null }),
  step(40, { cautiousMm: null }),
  step(50),
  step(60, { ...none, gap: 'too-high' }),
  step(70, { ...none, gap: 'too-wide' }),
]

const finding: Present['finding'] = {
  contaminant: 0,
  material: 'quartz',
  shape: 'sphere',
  placement: 'inside',
  lengthMm: null,
  faceMm2: null,
  bestMm: 1.2,
  bestRangeMm: null,
  extrapolated: null,
  halfMm: 1.3,
  expectedMm: 1.5,
  sureMm: 1.9,
  cautiousMm: 2.2,
  chanceAtMustFind: 0.97,
  chanceAnyOrientation: null,
  meets: 'yes',
  mustFindMm: 3,
  demonstrated: null,
  measured: false,
  curve: { sizesMm: [1, 1.5, 2], chance: [0.1, 0.9, 0.9999] },
  zones: [],
  widest: '',
  note: '',
  calculation: 'size',
}

const present: Present = {
  machine: 'one',
  label: 'x-ray & "friends"',
  finding,
  noise: { photon: 0.5, grain: 0.3, unevenness: 0.1, electronics: 0.06, packaging: 0.04 },
  tube: {
    kV: 60,
    mA: 10,
    currentLimit: 'power',
    runnerUp: { kV: 50, worseBy: 0.2 },
    steps: [
      { kV: 50, mA: 10, expectedMm: [1.8] },
      { kV: 60, mA: 10, expectedMm: [1.5] },
    ],
  },
}

const props: TradeOffsProps = {
  packed: 'abc',
  title: 'Kernels <1 kg>',
  asked: { point: 1, contaminant: 0, machines: ['one'], input: 'height' },
  choices: {
    points: ['belt', '<after> packing'],
    pieces: ['quartz, <sphere>'],
    machines: [
      { id: 'one', label: 'x-ray & "friends"' },
      { id: 'two', label: 'metal detector' },
    ],
    inputs: ['height', 'depth-with-speed'],
    mostMachines: 3,
    metalDetector: true,
  },
  note: '',
  unit: 'mm',
  scale: 'log',
  mustFindMm: 3,
  measure: 'sphere diameter',
  series: [
    { machine: 'one', label: 'x-ray & "friends"', input: 'height', present: 40, now: sizes, steps },
    { machine: 'two', label: 'metal detector', input: 'height', present: null, now: sizes, steps: [] },
  ],
  present: [present],
  spectra: {
    energiesKeV: [19.5, 29.5, 30.5, 59.5],
    curves: [
      { kind: 'food', label: 'kernels', muPerCm: [0.9, 0.5, 0.48, 0.2] },
      { kind: 'piece', label: 'quartz', muPerCm: [9, 3, 2.8, 0.6] },
    ],
    tubes: [
      {
        machine: 'one',
        label: 'x-ray & "friends"',
        kV: 60,
        sent: [0.2, 1, 0.9, 0],
        through: [0.1, 0.9, 1, 0],
        meanSentKeV: 30.2,
        meanThroughKeV: 33.4,
        passing: 0.0004,
      },
    ],
  },
  print: false,
}

const draw = (more: Partial<TradeOffsProps> = {}) => String(<TradeOffsPage {...props} {...more} />)
const text = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ')

describe('the Trade-offs page', () => {
  it('draws attenuation and the tube spectrum with their numbers, only where an x-ray machine is drawn', () => {
    const html = draw()
    expect(html).toContain('<h2 id="spectra">')
    expect(html).toContain('<title id="attenuation-curves-title">')
    expect(html).toContain('P, quartz: 2.8 per cm at 30 keV, 0.6 per cm at 60 keV.')
    expect(text(html)).toContain(
      '60 kV: of 1,000 photons fewer than 1 come through; mean energy 30 keV before',
    )
    const row = /<th scope="row" class="n">30<\/th>(.*?)<\/tr>/.exec(html)?.[1]
    expect(text(row ?? '').trim()).toBe('0.48 2.8 90 100')
    expect(draw({ spectra: null })).not.toContain('id="spectra"')
  })

  it('escapes whatever a person named', () => {
    const html = draw()
    expect(html).toContain('Kernels &lt;1 kg&gt;')
    expect(html).toContain('&lt;after&gt; packing')
    expect(html).toContain('uartz, &lt;sphere&gt;')
    expect(html).toContain('x-ray &amp; &quot;friends&quot;')
    expect(html).not.toMatch(/<1 kg>|<after>|<sphere>/)
  })

  it('asks by address in a plain form with what is drawn chosen', () => {
    const html = draw()
    expect(html).toMatch(/<form[^>]*method="get"[^>]*action="\/trade-offs"/)
    expect(html).toMatch(/value="height" checked/)
    expect(html).toMatch(/value="one" checked/)
    expect(html).toMatch(/<option value="1" selected/)
    expect(html).not.toMatch(/value="two" checked/)
  })

  it('says where an input does not enter, and why there is no size, in picture and table', () => {
    const words = text(draw())
    expect(words).toContain('metal detector: height of the food does not enter its sizes here')
    expect(words).toContain('food too high, food too wide')
    expect(words).toContain('not computed')
    expect(words).toContain('nothing')
    expect(words).toContain('every other point')
  })

  it('has a table under every picture, open on paper', () => {
    const screen = draw()
    expect(screen.match(/<svg[^>]*role="img"/g)!.length).toBe(6)
    expect(screen.match(/<details>/g)!.length).toBe(5)
    const paper = draw({ print: true })
    expect(paper).not.toContain('<form')
    expect(paper.match(/<details open/g)!.length).toBe(5)
    expect(text(paper)).toContain('<after> packing'.replace(/</, '&lt;').replace(/>/, '&gt;'))
  })

  it('says how the tube was set and what limited its current', () => {
    expect(text(draw())).toContain('60 kV, 10 mA; current limited by: power of the tube')
  })

  it('says so where no machine with a size stands', () => {
    const words = text(draw({ series: [], present: [] }))
    expect(words).toContain('No machine with a computed size stands at this point.')
    expect(words).not.toContain('Where the noise comes from')
  })

  it('has an address for what it shows', () => {
    expect(addressOf('abc', { ...props.asked, machines: ['a b', 'c'] })).toBe(
      '/trade-offs?b=abc&point=1&machines=a%20b&machines=c&contaminant=0&input=height',
    )
  })
})

describe('areas and gaps', () => {
  it('an area breaks where there is no size, skips what was not computed, is open where nothing is promised', () => {
    expect(bandsOf(steps)).toEqual([
      { open: true, lower: [20, 30, 40].map((x) => ({ x, y: 1.5 })), upper: [{ x: 20, y: 2.2 }] },
      { open: true, lower: [40, 50].map((x) => ({ x, y: 1.5 })), upper: [{ x: 50, y: 2.2 }] },
    ])
    const known = [step(1), step(2, { cautiousKnown: false, cautiousMm: null }), step(3)]
    expect(bandsOf(known)).toEqual([
      {
        open: false,
        lower: [1, 2, 3].map((x) => ({ x, y: 1.5 })),
        upper: [1, 3].map((x) => ({ x, y: 2.2 })),
      },
    ])
  })

  it('gaps side by side are said once, apart they are said each', () => {
    expect(gapsOf(steps)).toEqual([{ x: 70, words: 'food too high, food too wide' }])
    const apart = [step(1, { ...none, gap: 'above-limit' }), step(2), step(3, { ...none, gap: 'too-high' })]
    expect(gapsOf(apart).map(({ x }) => x)).toEqual([1, 3])
  })
})

describe('words', () => {
  it('say false rejects as people do, other values with their unit', () => {
    expect(inputValueWords('false-rejects', '', 0.001)).toBe('1 in 1,000')
    expect(inputValueWords('height', 'mm', 45)).toBe('45 mm')
    expect(inputValueWords('packing', '', 0.57)).toBe('0.57')
    expect(inputValueWords('conductivity', 'S/m', 0.44281)).toBe('0.443 S/m')
  })
})
