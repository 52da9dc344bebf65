import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ANSWER_WORDS, type Answered, classify, QUESTION_IDS } from '../../src/register/class/classify.ts'
import { likelihoodOf, significanceOf } from '../../src/register/class/look-up.ts'

/** A control that is last, alone, validated, seen in time and acted on. */
const whole: Answered = {
  q1: 'yes',
  q2: 'no',
  q3: 'yes',
  q4: 'no',
  q5: 'ccp',
  q6: 'shown',
  q7: 'yes',
  q8: 'yes',
}
const anyAnswers = fc.record(
  Object.fromEntries(QUESTION_IDS.map((q) => [q, fc.constantFrom(...ANSWER_WORDS[q])])),
) as unknown as fc.Arbitrary<Answered>

describe('class of a control (pairs of the worked line, invented)', () => {
  it.each([
    ['stone at the x-ray', {}, 'CCP'],
    ['steel at the x-ray, slivers only partly', { q3: 'partly' }, 'CCP'],
    ['steel at the coil, the x-ray behind it', { q4: 'yes', q5: 'oprp' }, 'OPRP'],
    ['wood at the x-ray, which is blind to it', { q3: 'no' }, 'not-controlled-here'],
    ['a hazard of no significance', { q1: 'no' }, 'PRP'],
    ['programmes alone keep it, with evidence', { q2: 'yes' }, 'PRP'],
    ['only observable', { q6: 'observable' }, 'OPRP'],
    ['a failure seen too late', { q7: 'no' }, 'undecided'],
    ['nobody holds the action', { q8: 'no' }, 'undecided'],
    ['two of the last four unknown', { q7: 'unknown', q8: 'unknown' }, 'undecided'],
  ] as const)('%s', (_what, answers, wanted) => {
    expect(classify({ ...whole, ...answers }).class).toBe(wanted)
  })

  it('a class that rests on prediction owes its validation', () => {
    expect(classify({ ...whole, q6: 'predicted' })).toEqual({ class: 'CCP', by: 'q8', owed: ['validation'] })
    expect(classify(whole).owed).toEqual([])
  })

  it('is a CCP only where every question allows it', () => {
    fc.assert(
      fc.property(anyAnswers, (a) => {
        if (classify(a).class !== 'CCP') return
        expect(a.q1).not.toBe('no')
        expect(a.q2).not.toBe('yes')
        expect(['yes', 'partly']).toContain(a.q3)
        expect(a.q4).not.toBe('yes')
        expect(a.q5).not.toBe('oprp')
        expect([a.q7, a.q8]).not.toContain('no')
        expect([a.q5, a.q6, a.q7, a.q8].filter((x) => x === 'unknown').length).toBeLessThan(2)
      }),
    )
  })
})

describe('severity and likelihood are looked up', () => {
  it('the worked line: 11.9 stones and 4.3 pieces of steel a year of severity 4 are significant', () => {
    expect(likelihoodOf(11.9)).toBe(3)
    expect(likelihoodOf(4.3)).toBe(3)
    expect(significanceOf(4, 3)).toBe('significant')
  })

  it('never falls when severity or likelihood rises', () => {
    const rank = (s: number, l: number) => ['low', 'moderate', 'significant'].indexOf(significanceOf(s, l))
    for (let s = 1; s <= 5; s++)
      for (let l = 1; l <= 5; l++) {
        if (s < 5) expect(rank(s + 1, l)).toBeGreaterThanOrEqual(rank(s, l))
        if (l < 5) expect(rank(s, l + 1)).toBeGreaterThanOrEqual(rank(s, l))
      }
  })

  it('is no product: 3 × 3 only asks for attention, though 2 × 5 is significant; outside the scale is an error', () => {
    expect(significanceOf(1, 5)).toBe('moderate')
    expect(significanceOf(5, 1)).toBe('moderate')
    expect(significanceOf(3, 3)).toBe('moderate')
    expect(significanceOf(2, 5)).toBe('significant')
    expect(() => significanceOf(0, 3)).toThrow(/1 to 5/)
  })
})
