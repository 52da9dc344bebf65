import { describe, expect, it } from 'vitest'
import { type DialInput, dialAt, dialValues } from '../../src/exercises/dial/dial.ts'
import { sampleBrief } from '../xray/image/sample.ts'

const brief = sampleBrief('cheddar')
const asked = (input: DialInput) => ({ point: 0, machine: 'xray-dual', contaminant: 0, input })
const at = (input: DialInput, stop: number) => dialAt(brief, { ...asked(input), stop })!

describe('one live control', () => {
  it('has the brief’s own value among its places, and there the size the advice expects', () => {
    const values = dialValues(brief, asked('speed'))!
    expect(values.values[values.present]).toBe(brief.points[0]!.speedMPerMin)
    const shown = at('speed', values.present)
    expect(shown.expectedMm).toBeCloseTo(shown.pieceMm, 6)
    expect(shown.chance).toBeCloseTo(0.9, 1)
  })

  it('moves picture, curve and hills together: deeper and faster, a piece is found less often', () => {
    for (const input of ['height', 'speed'] as const) {
      const [low, high] = [at(input, 0), at(input, 5)]
      expect(high.chance).toBeLessThan(low.chance)
      const found = (one: typeof low) => one.sheet.pieces.filter((piece) => piece.found).length
      expect(found(high)).toBeLessThanOrEqual(found(low))
      expect(Math.max(...high.curve.map(([, chance]) => chance))).toBeLessThanOrEqual(1)
    }
  })

  it('keeps the pieces in their places, whatever is moved', () => {
    const places = (stop: number) => at('kV', stop).sheet.pieces.map(({ u, v, sizeMm }) => [u, v, sizeMm])
    expect(places(6)).toEqual(places(0))
  })

  it('lowers the threshold where more false rejects are accepted', () => {
    expect(at('false-rejects', 8).hills.threshold).toBeLessThan(at('false-rejects', 0).hills.threshold)
  })

  it('has no grain to move in a block', () => {
    expect(dialValues(brief, asked('grain'))).toBeNull()
  })
})
