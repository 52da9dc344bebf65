import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pieceWords } from '../../views/words/contaminant.ts'
import { falseRejectWords } from '../../views/words/false-rejects.ts'
import { askedWords, pathWords, unitOf } from '../../views/words/path.ts'
import { chanceWords, sizeWords, valueWords } from '../../views/words/size.ts'
import { advice, names } from './fixture.ts'

describe('sizes in words', () => {
  it('are rounded up, never down, and by less than one step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 25, noNaN: true }), (mm) => {
        const said = Number(sizeWords(mm))
        expect(said).toBeGreaterThanOrEqual(mm - 1e-9)
        expect(said - mm).toBeLessThan(mm < 1 ? 0.01 : 0.1)
      }),
    )
  })

  it.each([
    [2.5, '2.5'],
    [2.51, '2.6'],
    [0.853, '0.86'],
    [0.3, '0.30'],
    [12, '12.0'],
    [null, '–'],
  ])('%s mm is said as %s', (mm, words) => {
    expect(sizeWords(mm)).toBe(words)
  })
})

describe('other numbers in words', () => {
  it.each([
    [0.00000345, '3.45 × 10⁻⁶'],
    [552940, '552900'],
    [1234567, '1.235 × 10⁶'],
    [-0.09761, '−0.09761'],
    [0, '0'],
    [true, 'yes'],
    ['granular', 'granular'],
    [null, 'none'],
  ])('%s is said as %s', (value, words) => {
    expect(valueWords(value)).toBe(words)
  })

  it('claim no certainty the model cannot have', () => {
    expect(chanceWords(1)).toBe('over 99.9 %')
    expect(chanceWords(0)).toBe('under 0.1 %')
    expect(chanceWords(0.9951)).toBe('99.5 %')
    expect(chanceWords(0.5)).toBe('50 %')
    expect(chanceWords(null)).toBe('–')
  })

  it('turn a false-reject rate into packs a day', () => {
    expect(falseRejectWords(0.001, 80, 16)).toBe('1 in 1,000: about 77 packs a day')
    expect(falseRejectWords(0.00001, 20, 8)).toBe('1 in 100,000: about 0.096 packs a day')
    expect(falseRejectWords(0.0005, null, 16)).toBe('1 in 2,000')
  })
})

describe('pieces and fields in words', () => {
  const piece = { material: 'ss304', shape: 'wire', lengthMm: 10, faceMm2: null, placement: 'inside' }

  it('name material, shape and place', () => {
    expect(pieceWords(piece, names)).toBe('stainless steel 304, wire 10 mm long')
    expect(pieceWords({ ...piece, shape: 'flake', lengthMm: null, faceMm2: 30 }, names)).toBe(
      'stainless steel 304, flake of 30 mm²',
    )
    expect(pieceWords({ ...piece, material: 'slate', shape: 'sphere', placement: 'outside' }, names)).toBe(
      'slate, sphere, test card on the pack',
    )
  })

  it('say where a field holds', () => {
    expect(pathWords('points.1.heightMm', advice)).toBe('height of the food at “after packing”')
    expect(pathWords('contaminants.0.mustFindMm', advice)).toBe('size you must find of contaminant 1')
    expect(pathWords('product.grainMm', advice)).toBe('grain size')
    expect(pathWords('product.stiff', advice)).toBe('stiff food')
    expect(askedWords('product.stiff', advice)).toBe('stiff food, yes or no')
    expect(unitOf('points.1.speedMPerMin')).toBe('m/min')
  })
})
