import { describe, expect, it } from 'vitest'
import { clearPlace } from '../../src/charts/clear-place.ts'

const level = 0.5
const place = (...curves: { along: number; up: number }[][]) => clearPlace(curves, level, 0.3, 0.1)
const straight = (from: number, to: number) => [
  { along: 0, up: from },
  { along: 1, up: to },
]

describe('the words of a level', () => {
  it('stand at its start, above it, where nothing is drawn', () => {
    expect(place()).toEqual({ along: 0, anchor: 'start', above: true })
  })

  it('go below it where a curve runs just above all along', () => {
    expect(place(straight(0.55, 0.55)).above).toBe(false)
  })

  it('go to the end that a rising curve has left', () => {
    const rising = place(straight(0.45, 0.95))
    expect(rising).toEqual({ along: 1, anchor: 'end', above: false })
  })

  it('are not pushed out of the picture', () => {
    expect(clearPlace([straight(0.9, 0.9)], 0.97, 0.3, 0.1).above).toBe(false)
  })
})
