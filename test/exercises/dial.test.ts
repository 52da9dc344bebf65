import { describe, expect, it } from 'vitest'
import { practiceCard } from '../../src/card/practice-card.ts'
import type { XrayMachine } from '../../src/contract/index.ts'
import { type DialInput, dialAt, dialValues, isSlow } from '../../src/exercises/dial/dial.ts'
import { type MetalInput, metalAt, metalStops } from '../../src/exercises/dial/metal-dial.ts'
import { practiceDial } from '../../src/exercises/dial/practice-dial.ts'
import { briefOf } from '../../src/exercises/practice.ts'
import { sizesAt } from '../../src/trade-offs/sizes-at.ts'
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

  it('chooses voltage and sizes at every place as the trade-offs do, which work out more', () => {
    const values = dialValues(brief, asked('height'))!
    for (const stop of [0, 4, 8]) {
      const changed = values.input.at(values.setup, values.values[stop]!, values.now)
      const machine = changed.machine as XrayMachine
      const sizes = sizesAt({ ...changed, machine }, brief.contaminants, 0, false)
      expect([at('height', stop).kV, at('height', stop).expectedMm]).toEqual([sizes.kV, sizes.expectedMm])
    }
  })

  it('draws a draft of the same numbers, and calls nothing found or missed in it', () => {
    const nuts = sampleBrief('hazelnut')
    const place = { ...asked('height'), stop: 5 }
    const [draft, whole] = [dialAt(nuts, place, true)!, dialAt(nuts, place)!]
    for (const key of ['kV', 'expectedMm', 'pieceMm', 'chance', 'curve', 'hills', 'sizesMm'] as const)
      expect(draft[key], key).toEqual(whole[key])
    expect([draft.draft, whole.draft]).toEqual([true, false])
    expect(draft.sheet.pieces).toEqual([])
    expect(draft.sheet.frame).toEqual(whole.sheet.frame)
    expect(whole.sheet.pieces).toHaveLength(whole.sizesMm.length)
    expect(isSlow(nuts.points[0]!)).toBe(true)
    expect(isSlow(brief.points[0]!)).toBe(false)
  })

  it('is practised on a pack that has such places', () => {
    const { brief: small } = practiceCard()
    const practised = { point: 0, machine: 'xray-single', contaminant: 1, input: 'height' as const }
    expect(() => practiceDial()).not.toThrow()
    for (const stop of [3, 4, 5]) expect(dialAt(small, { ...practised, stop })).not.toBeNull()
  })

  it('has no grain to move in a block', () => {
    expect(dialValues(brief, asked('grain'))).toBeNull()
  })
})

describe('the same control before a metal detector', () => {
  const detected = briefOf({
    product: { food: 'cheddar' },
    point: { heightMm: 80 },
    contaminants: [{ material: 'ss304' }],
  })
  const metal = (input: MetalInput, stop: number) =>
    metalAt(detected, { point: 0, machine: 'coil-single', contaminant: 0, input, stop })!

  it('finds nine in ten of the size the advice expects, where the brief has its own value', () => {
    const asked = { point: 0, machine: 'coil-single', contaminant: 0, input: 'frequency' as const }
    const { present } = metalStops(detected, asked)!
    for (const shown of [metal('frequency', present), metal('place', 0)]) {
      expect(shown.expectedMm).toBeCloseTo(shown.pieceMm, 6)
      expect(shown.chance).toBeCloseTo(0.9, 2)
    }
  })

  it('hears a piece better the nearer it passes to the wall, and not more often than always', () => {
    const chances = [0, 4, 8].map((stop) => metal('place', stop).chance)
    expect(chances).toEqual([...chances].sort((a, b) => a - b))
    expect(chances[2]).toBeLessThanOrEqual(1)
  })

  it('turns a wire in the place of a ball: of stainless steel it is heard least along the travel', () => {
    const [along, across] = [metal('angle', 0), metal('angle', 6)]
    expect(along.asWireMm).toBe(10)
    expect([along.angleDeg, across.angleDeg]).toEqual([0, 90])
    expect(along.chance).toBeCloseTo(0.9, 2)
    expect(across.chance).toBeGreaterThan(along.chance)
  })

  it('draws hills whose part beyond the threshold is the chance of the curve', () => {
    const { hills, chance } = metal('place', 4)
    const step = hills.piece[1]![0] - hills.piece[0]![0]
    const below = hills.piece.reduce((sum, [x, y]) => sum + (x < hills.threshold ? y * step : 0), 0)
    expect(1 - below).toBeCloseTo(chance, 1)
  })
})
