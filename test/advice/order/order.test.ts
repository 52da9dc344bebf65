import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isAsked, isExpected, isPromised, meetsAll, meetsOf } from '../../../src/advice/assess/meets.ts'
import { closeCallOf } from '../../../src/advice/order/close-call.ts'
import { combine } from '../../../src/advice/order/combine.ts'
import { type Orderable, orderAmong, sizeRatio, WITHOUT_PROMISE } from '../../../src/advice/order/order.ts'
import { rowsOf } from '../../../src/advice/order/rows.ts'
import type { Standing } from '../../../src/advice/stages.ts'
import type { Finding } from '../../../src/contract/index.ts'
import { sampleBrief } from '../sample.ts'
import { finding } from './options-by-hand.ts'

const PIECES = 3
const brief = sampleBrief({
  contaminants: [
    { material: 'quartz', mustFindMm: 3, severity: 5 },
    { material: 'ss316', mustFindMm: 3, severity: 3 },
    { material: 'wood', mustFindMm: 3, severity: 3 },
  ],
})

const ASKED = 3

/** A finding of a contaminant with sizes anywhere about the size asked, or none. */
const findingOf = (contaminant: number, isWanted = true) =>
  fc
    .record({
      expectedMm: fc.option(fc.integer({ min: 10, max: 60 }).map((n) => n / 10)),
      grows: fc.option(fc.constantFrom(1, 1.2, 1.6, 2.5)),
      gaps: fc.boolean(),
    })
    .map(({ expectedMm, grows, gaps }): Finding => {
      const cautiousMm = expectedMm === null || grows === null ? null : expectedMm * grows
      const mustFindMm = isWanted ? ASKED : null
      const meets = meetsOf(expectedMm, expectedMm, cautiousMm, mustFindMm)
      return finding(contaminant, {
        bestMm: expectedMm,
        expectedMm,
        cautiousMm,
        mustFindMm,
        meets: meets === 'yes' && gaps ? 'partly' : meets,
      })
    })

const optionWith = (
  name: string,
  findings: readonly Finding[],
  burden: number,
  excluded: boolean,
): Standing => {
  const asked = findings.filter(isAsked)
  const some = asked.some(({ meets }) => isExpected(meets))
  const all = asked.length > 0 && asked.every(({ meets }) => isExpected(meets))
  return {
    equipment: name,
    label: name,
    family: 'xray',
    rank: 1,
    burden,
    excluded,
    askFor: null,
    findings,
    verdict: excluded || !some ? 'not-suitable' : all ? 'worth-a-test' : 'conditional',
  }
}

/** Options of one point, in the order of the house. */
const points = (most = 4) =>
  fc
    .array(
      fc.record({
        findings: fc.tuple(findingOf(0), findingOf(1), findingOf(2)),
        burden: fc.integer({ min: 1, max: 5 }),
        excluded: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
      }),
      { minLength: 1, maxLength: most },
    )
    .map((all) => all.map((one, i) => optionWith(`m${i}`, one.findings, one.burden, one.excluded)))

const ranked = (options: readonly Standing[]): Standing[] =>
  [...options]
    .sort(orderAmong(brief.contaminants, options).compare)
    .map((option, at) => ({ ...option, rank: at + 1 }))

const PLACE = ['worth-a-test', 'conditional', 'no-build', 'not-suitable']
const placeOf = ({ excluded, verdict, findings }: Orderable) =>
  excluded ? 9 : meetsAll(findings) ? -1 : PLACE.indexOf(verdict)

describe('the one order', () => {
  it('says of two the opposite when they are turned round, and of three what follows from two and two', () => {
    fc.assert(
      fc.property(points(3), (options) => {
        const { compare } = orderAmong(brief.contaminants, options)
        for (const a of options)
          for (const b of options) {
            expect(Math.sign(compare(a, b))).toBe(-Math.sign(compare(b, a)) || 0)
            for (const c of options)
              if (compare(a, b) <= 0 && compare(b, c) <= 0) expect(compare(a, c)).toBeLessThanOrEqual(0)
          }
      }),
    )
  })
  it('never puts a worse verdict before a better one', () => {
    fc.assert(
      fc.property(points(), (options) => {
        const places = ranked(options).map(placeOf)
        expect(places).toEqual([...places].sort((a, b) => a - b))
      }),
    )
  })
  it('never puts the dearer one of equals first', () => {
    fc.assert(
      fc.property(points(), (options) => {
        const twins = options.map((one) => ({
          ...one,
          equipment: `dear ${one.equipment}`,
          burden: one.burden + 1,
        }))
        const order = ranked([...twins, ...options]).map(({ equipment }) => equipment)
        for (const { equipment } of options)
          expect(order.indexOf(equipment)).toBeLessThan(order.indexOf(`dear ${equipment}`))
      }),
    )
  })
  it('is not moved by the sizes of what no machine finds, nor by what nobody asked for', () => {
    const idle = fc.array(fc.tuple(findingOf(2, false), findingOf(2)), { minLength: 4, maxLength: 4 })
    fc.assert(
      fc.property(points(), idle, (options, other) => {
        const withThird = (pick: (at: number) => Finding) =>
          ranked(
            options.map(({ equipment, findings, burden }, at) =>
              optionWith(equipment, [...findings.slice(0, 2), pick(at)], burden, false),
            ),
          ).map(({ equipment }) => equipment)
        const bare = ranked(
          options.map(({ equipment, findings, burden }) =>
            optionWith(equipment, findings.slice(0, 2), burden, false),
          ),
        )
        const found = bare.some(({ findings }) => findings.some(({ meets }) => isExpected(meets)))
        fc.pre(found)
        expect(withThird((at) => other[at]![0])).toEqual(bare.map(({ equipment }) => equipment))
        const lost = (at: number): Finding => ({
          ...other[at]![1],
          meets: other[at]![1].expectedMm === null ? 'cannot' : 'no',
          expectedMm: other[at]![1].expectedMm === null ? null : 9 + at,
          cautiousMm: null,
        })
        expect(withThird(lost)).toEqual(bare.map(({ equipment }) => equipment))
      }),
    )
  })
  it('takes a size without a promise as half as large again as expected, and infinite where there is none', () => {
    expect(WITHOUT_PROMISE).toBe(1.5)
    expect(sizeRatio(finding(0, { expectedMm: 4, cautiousMm: null, mustFindMm: 3 }))).toBeCloseTo(2, 12)
    expect(sizeRatio(finding(0, { expectedMm: 4, cautiousMm: 6, mustFindMm: 3 }))).toBe(2)
    expect(sizeRatio(finding(0, { expectedMm: null, cautiousMm: null, meets: 'no' }))).toBe(Infinity)
    expect(sizeRatio(finding(0, { mustFindMm: null }))).toBeNull()
  })
  it('puts a size without a promise behind a promise 1.4 times, before one 1.6 times as large as expected', () => {
    const ratioOf = (cautiousMm: number | null) =>
      orderAmong(brief.contaminants, []).worstRatio({ findings: [] }) +
      sizeRatio(finding(0, { expectedMm: 4, cautiousMm }))!
    expect(ratioOf(null)).toBeGreaterThan(ratioOf(4 * 1.4))
    expect(ratioOf(null)).toBeLessThan(ratioOf(4 * 1.6))
  })
})

describe('what is read from the order', () => {
  const line = { name: '', points: [0] }
  it('recommends no machine where a better-placed one does the same for no more', () => {
    fc.assert(
      fc.property(points(), (options) => {
        const order = ranked(options)
        for (const { option, contaminants } of combine(brief, line, [order]).uses) {
          const asGood = order.filter(
            (other) =>
              !other.excluded &&
              other.burden <= option.burden &&
              other.rank! < option.rank! &&
              contaminants.every(
                (c) => isPromised(other.findings[c]!.meets) && other.findings[c]!.meets === 'yes',
              ),
          )
          expect(asGood.map(({ equipment }) => equipment)).toEqual([])
        }
      }),
    )
  })
  it('leaves no contaminant without a row, and no size that a machine achieves unsaid', () => {
    fc.assert(
      fc.property(points(), (options) => {
        const order = ranked(options)
        const rows = rowsOf(brief, line, combine(brief, line, [order]), [order])
        expect(rows.map(({ contaminant }) => contaminant)).toEqual([...Array(PIECES).keys()])
        for (const { contaminant, by, meets } of rows) {
          const usable = order.filter(({ excluded }) => !excluded).map((o) => o.findings[contaminant]!)
          expect(by === 'use').toBe(usable.some((f) => isExpected(f.meets)))
          expect(by === 'none').toBe(usable.every((f) => f.expectedMm === null))
          if (usable.some((f) => isPromised(f.meets))) expect(isPromised(meets)).toBe(true)
        }
      }),
    )
  })
  it('calls it close only between machines that could be put into use', () => {
    fc.assert(
      fc.property(points(), (options) => {
        const order = ranked(options)
        const close = closeCallOf(brief, order)
        if (!close) return
        expect(close.first.rank).toBeLessThan(close.second.rank!)
        for (const { excluded, verdict } of [close.first, close.second])
          expect([excluded, verdict]).toEqual([false, expect.not.stringMatching('not-suitable')])
        expect(close.contaminants.length).toBeGreaterThan(0)
      }),
    )
  })
})
