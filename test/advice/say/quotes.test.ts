import { describe, expect, it } from 'vitest'
import { factsOfQuote } from '../../../src/advice/answer/facts-quote.ts'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { explainAll } from '../../../src/advice/decide/rule-outcome.ts'
import { quotedIn } from '../../../src/advice/order/quoted.ts'
import { quoteWords } from '../../../src/advice/say/quotes.ts'
import type { Quote } from '../../../src/contract/index.ts'
import { finding, option } from '../order/options-by-hand.ts'
import { sampleBrief } from '../sample.ts'

const book = loadRulebook()

/** A quote held against best possible 1.0, expected 2.0, promised 2.8, size to find 3.0 mm. */
function judged(quote: Partial<Quote>, over = {}) {
  const given: Quote = { equipment: 'a', material: 'quartz', sizeMm: 2, obtained: 'in-product', ...quote }
  const brief = sampleBrief({ contaminants: [{ material: 'quartz', mustFindMm: 3 }], quotes: [given] })
  const [quoted] = quotedIn(brief, [{ options: [option('a', 1, [finding(0, over)])] }])
  const nowhere = { line: null, pointIndex: null, equipment: null, contaminant: null }
  const said = explainAll(book, 'quote', factsOfQuote(brief, 'brief', quoted!).facts)
    .filter(({ outcome }) => outcome === 'fired')
    .map((outcome) => ({ ...outcome, ...nowhere }))
  return { kind: quoted!.kind, ...quoteWords(quoted!, said) }
}

describe('a quoted size', () => {
  it.each([
    ['better-than-possible', 'below', { sizeMm: 0.8 }],
    ['better-than-possible', 'below', { sizeMm: 0.8, obtained: 'empty' }],
    ['inside', 'between', { sizeMm: 1 }],
    ['inside', 'between', { sizeMm: 2 }],
    ['inside', 'between', { sizeMm: 2.8 }],
    ['loose', 'loose', { sizeMm: 2.9 }],
    ['cannot-tell', 'elsewhere', { sizeMm: 2, obtained: 'empty' }],
    ['cannot-tell', 'elsewhere', { sizeMm: 2, obtained: 'unknown' }],
    ['cannot-tell', 'nothing-beside', { material: 'ss316' }],
    ['cannot-tell', 'nothing-beside', { shape: 'wire', lengthMm: 5 }],
    ['cannot-tell', 'nothing-beside', { equipment: 'b' }],
  ] as const)('is %s (%s) for %j', (judgement, kind, quote) => {
    expect(judged(quote)).toMatchObject({ judgement, kind })
  })
  it('of what the machine cannot find at all is better than possible', () => {
    const never = { bestMm: null, expectedMm: null, cautiousMm: null, meets: 'cannot' }
    expect(judged({}, never)).toMatchObject({ judgement: 'better-than-possible', kind: 'finds-none' })
  })
  it('is better than possible only below the lower end of the best possible size', () => {
    const range = { bestRangeMm: [0.7, 1.2] }
    expect(judged({ sizeMm: 0.69 }, range).kind).toBe('below')
    expect(judged({ sizeMm: 0.7 }, range)).toMatchObject({ kind: 'near', judgement: 'inside' })
    expect(judged({ sizeMm: 0.69 }, range).text).toBe(
      'Quoted 0.69 mm, obtained in the product; the best possible in this product is 1.0 mm. Even with less of the product in the beam it is not below 0.70 mm.',
    )
  })
  it('is judged in the words of rules, each with its link', () => {
    const { text, questions, grounds } = judged({ obtained: 'empty' })
    expect(text).toBe(
      'Quoted 2 mm, obtained with an empty machine: that says little of your product, where 1.0 mm is the best possible. 2.8 mm can be promised.',
    )
    expect(grounds.map((one) => one.text).sort()).toEqual(
      [
        ...questions,
        'Quoted 2 mm, obtained with an empty machine: that says little of your product, where 1.0 mm is the best possible.',
        '2.8 mm can be promised.',
      ].sort(),
    )
    expect(judged({}, { cautiousMm: null }).text).toMatch(/nothing can be promised here/)
  })
})

describe('the questions to ask', () => {
  const asked = (quote: Partial<Quote>) => judged(quote).questions.join(' ')
  it('are about what the quote leaves open, and about nothing it has answered', () => {
    expect(asked({ obtained: 'empty' })).toMatch(/show 2 mm in our product/)
    expect(asked({})).toMatch(/How many runs.*How many good packs.*Where in the pack/)
    const full = { position: 'centre', runs: 60, falseRejectsPerPack: 0.001 }
    expect(judged({ sizeMm: 2, ...full }).questions).toEqual([])
    expect(judged({ material: 'ss316' }).questions).toEqual([])
  })
  it('name the runs that show nine in ten', () => {
    expect(asked({ runs: 28 })).toContain('29 of 29')
    expect(asked({ runs: 29 })).not.toContain('29 of 29')
  })
  it('press a size that no machine reaches, and one that is larger than asked', () => {
    expect(asked({ sizeMm: 0.8 })).toContain('What differs')
    expect(asked({ sizeMm: 4 })).toContain('We must find 3 mm')
    expect(asked({ sizeMm: 3 })).not.toContain('We must find')
    expect(asked({ sizeMm: 4 })).toContain('acceptance clause')
  })
})
