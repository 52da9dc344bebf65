import { describe, expect, it } from 'vitest'
import type { Advice } from '../../src/contract/advice.ts'
import { linksTo } from '../../views/advice/links.ts'
import { type DoseLaw, TubeAndDose } from '../../views/advice/sizes/tube-and-dose.tsx'
import { doseWords, timesBelow } from '../../views/words/dose.ts'
import { advice } from './fixture.ts'

const law: DoseLaw = {
  ceiling: { gray: 0.5, rule: 'Directive 1999/2/EC, Article 1(2)(a)', source: 'The directive.' },
  usualMicroGy: 10,
  usualSource: 'The authority.',
}
const calculation = (id: string, value: number, formula = '') => ({
  id,
  label: id,
  symbol: '',
  value,
  unit: 'µGy',
  formula,
  inputs: [],
  sources: [],
})

/** The hand-written advice with a dose for its x-ray machine at the second point. */
const dosed: Advice = {
  ...advice,
  trace: {
    ...advice.trace,
    calculations: [
      ...advice.trace.calculations,
      calculation('p1.xray-dual.dose', 27.3),
      calculation('p1.xray-dual.mA', 10, 'limited by: current'),
    ],
  },
}
const draw = (of: Advice, more: Partial<DoseLaw> = {}) =>
  String(
    <TubeAndDose advice={of} links={linksTo('abc', of)} law={{ ...law, ...more }} print={false} />,
  ).replace(/\s+/g, ' ')

describe('tube and dose on the advice page', () => {
  it('sets the dose beside the ceiling, in words that do not irradiate', () => {
    const html = draw(dosed)
    expect(html).toContain('X-raying is not irradiating.')
    expect(html).toContain('about 27 µGy in the food')
    expect(html).toContain('18,000 times less than the 0.5 Gy named in Directive 1999/2/EC')
    expect(html).toContain('highest current of the tube')
    expect(html).toContain('/advice/trail?b=abc&amp;id=p1.xray-dual.dose')
  })

  it('says openly that it is above what an authority calls typical', () => {
    expect(draw(dosed)).toContain('all of the figures above are higher')
    expect(draw(dosed, { usualMicroGy: 50 })).toContain('as computed here')
  })

  it('claims no ceiling for a market it does not know', () => {
    const html = draw(dosed, { ceiling: null })
    expect(html).toContain('the bound in your law has to be looked up')
    expect(html).not.toContain('bound of')
  })

  it('is left out where no x-ray machine has a dose', () => {
    expect(draw(advice)).not.toContain('irradiating')
  })
})

describe('words of dose', () => {
  it('have two digits and a fitting unit; the margin is rounded down', () => {
    expect(doseWords(27.34)).toBe('27 µGy')
    expect(doseWords(3.56)).toBe('3.6 µGy')
    expect(doseWords(163)).toBe('0.16 mGy')
    expect(timesBelow(27.3, 0.5)).toBe('18,000 times less')
    expect(timesBelow(162, 10)).toBe('61,000 times less')
    expect(timesBelow(6e5, 0.5)).toBe('more')
  })
})
