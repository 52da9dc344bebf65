import { describe, expect, it } from 'vitest'
import { judgeQuotes } from '../../../src/advice/say/quotes.ts'
import type { Quote } from '../../../src/contract/index.ts'
import { finding, option } from '../order/options-by-hand.ts'
import { sampleBrief } from '../sample.ts'

/** A quote held against best possible 1.0, expected 2.0, promised 2.8, size to find 3.0 mm. */
function judged(quote: Partial<Quote>, over = {}) {
  const given: Quote = { equipment: 'a', material: 'quartz', sizeMm: 2, obtained: 'in-product', ...quote }
  const brief = sampleBrief({ contaminants: [{ material: 'quartz', mustFindMm: 3 }], quotes: [given] })
  const [answer] = judgeQuotes(brief, [{ options: [option('a', 1, [finding(0, over)])] }])
  return answer!
}

describe('a quoted size', () => {
  it.each([
    ['better-than-possible', { sizeMm: 0.8 }],
    ['better-than-possible', { sizeMm: 0.8, obtained: 'empty' }],
    ['inside', { sizeMm: 2 }],
    ['loose', { sizeMm: 2.9 }],
    ['cannot-tell', { sizeMm: 2, obtained: 'empty' }],
    ['cannot-tell', { sizeMm: 2, obtained: 'unknown' }],
    ['cannot-tell', { material: 'ss316' }],
    ['cannot-tell', { equipment: 'b' }],
  ] as const)('is %s for %j', (judgement, quote) => {
    expect(judged(quote).judgement).toBe(judgement)
  })
  it('of what the machine cannot find at all is better than possible', () => {
    expect(judged({}, { bestMm: null, expectedMm: null, cautiousMm: null, meets: 'cannot' }).judgement).toBe(
      'better-than-possible',
    )
  })
})

describe('the questions to ask', () => {
  const asked = (quote: Partial<Quote>) => judged(quote).questions.join(' ')
  it('are about what the quote leaves open, and about nothing it has answered', () => {
    expect(asked({ obtained: 'empty' })).toMatch(/show 2 mm in our product/)
    expect(asked({})).toMatch(/Where in the pack.*How many runs.*How many good packs/)
    const full = { position: 'centre', runs: 60, falseRejectsPerPack: 0.001 }
    expect(judged({ sizeMm: 2, ...full }).questions).toEqual([])
  })
  it('name the runs that show nine in ten', () => {
    expect(asked({ runs: 3 })).toContain('29 of 29')
  })
  it('press a size that no machine reaches, and one that is larger than asked', () => {
    expect(asked({ sizeMm: 0.8 })).toContain('What differs')
    expect(asked({ sizeMm: 4 })).toContain('We must find 3 mm')
    expect(asked({ sizeMm: 4 })).toContain('acceptance clause')
  })
})
