import { describe, expect, it } from 'vitest'
import type { CardRun } from '../../src/card/card.ts'
import { fisherLess, inversionsIn } from './inversions.ts'

describe('larger pieces found less often than smaller ones', () => {
  it('are told from chance by the exact test of Fisher', () => {
    // The lady who tasted tea (Fisher 1935): all four right of four is 1 in 70; three or four right 17 in 70.
    expect(fisherLess(0, 4, 4)).toBeCloseTo(1 / 70, 10)
    expect(fisherLess(1, 3, 4)).toBeCloseTo(17 / 70, 10)
    expect(fisherLess(10, 10, 10)).toBe(1)
  })

  const run = (sizeMm: number, found: number, material = 'steel'): CardRun => ({
    equipment: 'one',
    piece: '',
    material,
    shape: 'sphere',
    sizeMm,
    lengthMm: null,
    faceMm2: null,
    placement: 'inside',
    position: '',
    runs: 10,
    found,
    signal: null,
    threshold: null,
    note: '',
  })

  it('are looked for within a kind only, and named', () => {
    const { pairs, inverted } = inversionsIn([run(1, 9), run(2, 2), run(3, 10), run(2, 0, 'glass')])
    expect(pairs).toBe(3)
    expect(inverted.map(({ smaller, larger }) => [smaller.sizeMm, larger.sizeMm])).toEqual([[1, 2]])
  })
})
