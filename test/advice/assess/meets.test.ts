import { describe, expect, it } from 'vitest'
import {
  isAnyMet,
  meetsAll,
  meetsOf,
  meetsOver,
  placesNotMet,
  verdictOf,
} from '../../../src/advice/assess/meets.ts'
import type { Meets, Zone } from '../../../src/contract/index.ts'

const sizes = (cautiousMm: number | null): Zone['sizes'] => ({ bestMm: 1, expectedMm: 1.5, cautiousMm })
const zone = (over: Partial<Zone>): Zone => ({
  name: 'heel',
  state: 'findable',
  share: 0.1,
  pathMm: 5,
  sizes: sizes(2),
  canLieThere: true,
  settlesThere: false,
  why: '',
  ...over,
})

describe('how a size stands to the size asked', () => {
  it('is met exactly at the size asked', () => {
    expect(meetsOf(1, 2, 3, 3)).toBe('yes')
    expect(meetsOf(1, 2, 3, 2.999)).toBe('maybe')
    expect(meetsOf(1, 2, 3, 2)).toBe('maybe')
    expect(meetsOf(1, 2, 3, 1.999)).toBe('no')
  })
  it('is maybe without a size to promise, no without one expected, cannot without a best, open without one asked', () => {
    expect(meetsOf(1, 2, null, 3)).toBe('maybe')
    expect(meetsOf(1, null, null, 3)).toBe('no')
    expect(meetsOf(null, null, null, 3)).toBe('cannot')
    expect(meetsOf(null, null, null, null)).toBe('cannot')
    expect(meetsOf(1, 2, 3, null)).toBe('open')
  })
})

describe('over the places where the piece can lie', () => {
  it('is partly met where another place does not promise it', () => {
    expect(meetsOver(sizes(2), [zone({}), zone({ sizes: sizes(2.101) })], 2)).toBe('partly')
    expect(meetsOver(sizes(2), [zone({}), zone({ sizes: sizes(null) })], 2)).toBe('partly')
    expect(meetsOver(sizes(2), [zone({}), zone({})], 2)).toBe('yes')
    expect(meetsOver(sizes(2), [zone({}), zone({ sizes: sizes(2.1) })], 2)).toBe('yes')
  })
  it('does not read a place where the piece cannot lie', () => {
    expect(meetsOver(sizes(2), [zone({ canLieThere: false, sizes: sizes(null) })], 2)).toBe('yes')
  })
  it('stays maybe, no or cannot where the middle is no better', () => {
    const weak = [zone({ sizes: sizes(null) })]
    expect(meetsOver(sizes(2.1), weak, 2)).toBe('maybe')
    expect(meetsOver(sizes(2), weak, 1)).toBe('no')
    expect(meetsOver({ bestMm: null, expectedMm: null, cautiousMm: null }, weak, 2)).toBe('cannot')
  })
  it('takes what a trial showed for the places computed to be as good, and judges the others by themselves', () => {
    const [asGood, worse] = [zone({ sizes: sizes(3) }), zone({ name: 'rim', sizes: sizes(4) })]
    expect(meetsOver(sizes(3), [asGood], 2.5, sizes(2.2))).toBe('yes')
    expect(meetsOver(sizes(3), [asGood, worse], 2.5, sizes(2.2))).toBe('partly')
    expect(placesNotMet(sizes(3), [asGood, worse], 2.5).map(({ name }) => name)).toEqual(['rim'])
    expect(meetsOver(sizes(2), [zone({})], 2.5, sizes(2.8))).toBe('maybe')
  })
  it('is decided by the place where the piece settles alone', () => {
    const settled = [zone({ canLieThere: false, sizes: sizes(null) }), zone({ settlesThere: true })]
    expect(meetsOver(sizes(2), settled, 2)).toBe('yes')
    expect(meetsOver(sizes(3), settled, 2)).toBe('maybe')
  })
})

describe('verdicts', () => {
  const met = (...all: Meets[]) => all.map((meets) => ({ meets, mustFindMm: 2 }))
  const unasked = (...all: Meets[]) => all.map((meets) => ({ meets, mustFindMm: null }))
  it('count partly as met', () => {
    expect(meetsAll(met('yes', 'partly'))).toBe(true)
    expect(meetsAll(met('yes', 'maybe'))).toBe(false)
    expect(isAnyMet(met('partly', 'no'))).toBe(true)
  })
  it('need nothing worse than maybe for a test, something met for a condition', () => {
    expect(verdictOf(met('partly', 'maybe'), false)).toBe('worth-a-test')
    expect(verdictOf(met('partly', 'no'), false)).toBe('conditional')
    expect(verdictOf(met('no', 'cannot'), false)).toBe('not-suitable')
    expect(verdictOf(met('yes'), true)).toBe('not-suitable')
  })
  it('look at what is asked alone: what nobody asked for is neither met nor missed', () => {
    expect(meetsAll([...met('yes'), ...unasked('cannot', 'open')])).toBe(true)
    expect(verdictOf([...met('maybe'), ...unasked('cannot', 'open')], false)).toBe('worth-a-test')
    expect(meetsAll(unasked('open'))).toBe(false)
    expect(isAnyMet(unasked('open'))).toBe(false)
  })
  it('stay open where no size is asked of anything it can find', () => {
    expect(verdictOf(unasked('open', 'cannot'), false)).toBe('conditional')
    expect(verdictOf(unasked('cannot'), false)).toBe('not-suitable')
    expect(verdictOf(met('open', 'cannot'), false)).toBe('conditional')
  })
})
