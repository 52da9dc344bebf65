import { describe, expect, it } from 'vitest'
import { aboutCalculation } from '../../views/trail/about.ts'
import { RulesPart } from '../../views/trail/rules-page.tsx'
import { TrailPage } from '../../views/trail/trail-page.tsx'
import { type Step, sourcesOf, unfold } from '../../views/trail/unfold.ts'
import { advice, names } from './fixture.ts'

const text = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ')
const trail = unfold(advice.trace, 'size') as Extract<Step, { kind: 'calculation' }>
const page = (print = false) =>
  String(
    <TrailPage
      trail={trail}
      about={aboutCalculation(advice, 'size', names)}
      sources={advice.trace.sources}
      packed="PACKED"
      print={print}
    />,
  )

describe('a calculation trail', () => {
  it('is walked to its end: every input, theirs, and entered values', () => {
    const words = text(page())
    expect(words).toContain('d₉₀ = 2.41 mm')
    expect(words).toContain('POD(d) = 0.90')
    expect(words).toMatch(/C = 0\.01235 contrast of the sphere 1 − exp\(−Δμ·l\)/)
    expect(words).toMatch(/μ = 0\.0689 1\/mm attenuation of quartz at 40 keV \[ source 1 \]/)
    expect(words).toContain('height of the food = 45 mm (entered)')
    expect(words).toContain('Table of attenuation coefficients (read in the source)')
  })

  it('writes a value used twice out once and points to it after that', () => {
    expect(page().match(/id="step-mu"/g)).toHaveLength(1)
    expect(page()).toContain('<a href="#step-mu">written out above</a>')
  })

  it('ends even where a calculation feeds on itself', () => {
    const [first] = advice.trace.calculations
    const looped = unfold({ ...advice.trace, calculations: [{ ...first!, inputs: ['size'] }] }, 'size')
    expect(looped).toMatchObject({ inputs: [{ kind: 'again' }] })
  })

  it('says what the number is about', () => {
    expect(text(page())).toContain('quartz, flint or chert, sphere:')
  })

  it('opens every step on paper', () => {
    expect(page(true)).not.toMatch(/<details(?![^>]* open)/)
  })

  it('knows no calculation of another name', () => {
    expect(unfold(advice.trace, 'nothing')).toBeNull()
    expect(sourcesOf(trail)).toEqual(['s1'])
  })
})

describe('the rules tried', () => {
  const words = text(
    String(<RulesPart rules={advice.trace.rules} packed="PACKED" pieces={['quartz, sphere']} />),
  )

  it('show value, unit, comparison, threshold, margin and where the value is from', () => {
    expect(words).toContain(
      'holds: grain size is above 5 mm; here 13 mm (assumed, margin 8 mm (160 %)) settles it',
    )
  })

  it('are sorted by what came of them', () => {
    expect(words).toMatch(
      /Applies \(1\) Grain hides stones grain-limits-one-energy .* Does not concern it \(1\) Foil closes the coil/,
    )
  })
})
