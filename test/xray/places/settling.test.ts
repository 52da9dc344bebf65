import { describe, expect, it } from 'vitest'
import { canLieAt, settlesIn, settlingOf } from '../../../src/xray/places/settling.ts'
import { sampleContaminant, samplePoint } from '../../coil/sample-point.ts'

const soup = { structure: 'pieces-in-liquid', densityGPerCm3: 1.02, stiff: false } as const
const at = (material: string, product: Parameters<typeof samplePoint>[1] = soup, more = {}) =>
  settlingOf(samplePoint(more, product), sampleContaminant(material))

describe('what a piece does in the food', () => {
  it('sinks in a liquid where it is denser, and floats where it is lighter', () => {
    expect(at('ss316')).toBe('sinks')
    expect(at('glass_container')).toBe('sinks')
    expect(at('pp')).toBe('floats')
    expect(at('pp', { ...soup, structure: 'liquid' })).toBe('floats')
  })
  it('stays where it fell in stiff food, in solids and in grains', () => {
    expect(at('ss316', { ...soup, stiff: true })).toBe('stays')
    for (const structure of ['solid', 'granular', 'powder', 'inclusions', 'plates'] as const)
      expect(at('ss316', { ...soup, structure })).toBe('stays')
  })
  it('stays in a flow, where there is no rest, and on the pack', () => {
    expect(at('ss316', soup, { stage: 'pumped' })).toBe('stays')
    const outside = sampleContaminant('ss316', { placement: 'outside' })
    expect(settlingOf(samplePoint({}, soup), outside)).toBe('stays')
  })
  it('stays within 2 % of the density of the food', () => {
    const own = 7.9
    expect(at('ss316', { ...soup, densityGPerCm3: own })).toBe('stays')
    expect(at('ss316', { ...soup, densityGPerCm3: own / 1.05 })).toBe('sinks')
    expect(at('ss316', { ...soup, densityGPerCm3: own * 1.05 })).toBe('floats')
  })
})

describe('where a piece can lie', () => {
  const places = [{ level: 'middle' }, { level: 'bottom' }, { level: 'top' }, { level: 'beside' }] as const
  it('what sinks lies at the bottom alone, what floats at the top alone, what stays anywhere', () => {
    const lies = (settling: 'sinks' | 'floats' | 'stays') => places.map(canLieAt(places, settling))
    expect(lies('sinks')).toEqual([false, true, false, false])
    expect(lies('floats')).toEqual([false, false, true, false])
    expect(lies('stays')).toEqual([true, true, true, true])
  })
  it('a pack without a bottom told apart keeps it in the middle', () => {
    const flat = [{ level: 'middle' }, { level: 'beside' }] as const
    expect(flat.map(canLieAt(flat, 'sinks'))).toEqual([true, true])
    expect(settlesIn({ level: 'middle' }, 'sinks')).toBe(false)
  })
})
