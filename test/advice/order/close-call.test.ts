import { describe, expect, it } from 'vitest'
import { factsOfClose } from '../../../src/advice/answer/facts-two.ts'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { explainAll } from '../../../src/advice/decide/rule-outcome.ts'
import { closeCallOf } from '../../../src/advice/order/close-call.ts'
import { standing } from '../../../src/advice/order/order.ts'
import { closeCallWords } from '../../../src/advice/say/close-call.ts'
import { adviceSchema, type Option } from '../../../src/contract/index.ts'
import { sampleBrief } from '../sample.ts'
import { finding, option } from './options-by-hand.ts'

const brief = sampleBrief({
  contaminants: [
    { material: 'quartz', mustFindMm: 3 },
    { material: 'ss316', mustFindMm: 3 },
  ],
})

const book = loadRulebook()

/** The close call among options of an advice, in the words of the book. */
const closeCall = (options: Option[]) => {
  const close = closeCallOf(brief, options.map(standing))
  if (!close) return null
  const said = explainAll(book, 'close', factsOfClose(brief, 0, close).facts)
    .filter(({ outcome }) => outcome === 'fired')
    .map((one) => ({
      ...one,
      line: null,
      pointIndex: 0,
      equipment: close.second.equipment,
      contaminant: null,
    }))
  return closeCallWords(close, said)
}

describe('a close call', () => {
  it('is where a lighter machine is expected to meet what it cannot promise', () => {
    const sure = option('sure', 1, [finding(0), finding(1)], { burden: 4, verdict: 'best-fit' })
    const light = option('light', 2, [finding(0), finding(1, { cautiousMm: 3.4 })], { burden: 2 })
    const close = closeCall([sure, light])
    expect(close).toMatchObject({ first: 'sure', second: 'light', contaminants: [1] })
    expect(close?.because).toContain('stainless steel 316 of 3.0 mm')
    expect(close?.test).toMatch(/29 of 29 found .* 95 % confidence/)
    expect(
      adviceSchema.shape.points.element.shape.closeCall.safeParse(close).success,
      'shape of the contract',
    ).toBe(true)
  })
  it('is none where the lighter one is not even expected to meet it', () => {
    const sure = option('sure', 1, [finding(0)], { burden: 4 })
    const light = option('light', 2, [finding(0, { expectedMm: 3.2, cautiousMm: 3.4 })], { burden: 2 })
    expect(closeCall([sure, light])).toBeNull()
  })
  it('is none where the first is lighter too', () => {
    const sure = option('sure', 1, [finding(0)], { burden: 2 })
    const heavy = option('heavy', 2, [finding(0, { cautiousMm: 3.4 })], { burden: 4 })
    expect(closeCall([sure, heavy])).toBeNull()
  })
  it('is one where both miss sizes and the worst ratios cross on the way to the expected values', () => {
    const narrow = option('narrow', 1, [finding(0, { expectedMm: 3.1, cautiousMm: 3.3 })])
    const wide = option('wide', 2, [finding(0, { expectedMm: 2.2, cautiousMm: 4.4 })])
    const close = closeCall([narrow, wide])
    expect(close).toMatchObject({ first: 'narrow', second: 'wide' })
    expect(close?.test).toMatch(/^Test both on your product/)
    expect(close?.grounds.map(({ rule }) => rule)).toEqual([
      'a-test-of-both-machines',
      'close-by-the-sizes-alone',
    ])
  })
  it('never names an excluded machine or one that is not ranked', () => {
    const sure = option('sure', 1, [finding(0)], { burden: 4 })
    const maybe = [finding(0, { cautiousMm: 3.4 })]
    const reason = { type: 'excludes', contaminant: null } as never
    const out = option('out', 2, maybe, { burden: 1, reasons: [reason] })
    const ideal = option('ideal', null, maybe, { burden: 1 })
    expect(closeCall([sure, out, ideal])).toBeNull()
  })
})
