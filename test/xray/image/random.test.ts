import { describe, expect, it } from 'vitest'
import { randomStream } from '../../../src/xray/image/food/random.ts'

const take = (n: number, draw: () => number) => Array.from({ length: n }, draw)

describe('random streams', () => {
  it('repeat under the same seed and name, and differ under another', () => {
    const numbers = (seed: number, name: string) => {
      const random = randomStream(seed, name)
      return take(20, () => random.bits())
    }
    expect(numbers(5, 'grains')).toEqual(numbers(5, 'grains'))
    expect(numbers(5, 'grains')).not.toEqual(numbers(6, 'grains'))
    expect(numbers(5, 'grains')).not.toEqual(numbers(5, 'noise'))
  })

  it('give normal deviates: moments 0, 1, 0, 3 and tails in proportion', () => {
    const random = randomStream(1, 'normal')
    const x = take(400_000, () => random.normal())
    const moment = (k: number) => x.reduce((sum, v) => sum + v ** k, 0) / x.length
    expect(moment(1)).toBeCloseTo(0, 2)
    expect(moment(2)).toBeCloseTo(1, 2)
    expect(Math.abs(moment(3))).toBeLessThan(0.02)
    expect(Math.abs(moment(4) - 3)).toBeLessThan(0.06)
    // P(|Z| > 3) = 0.0027, P(|Z| > 3.6) = 3.18e-4 (normal table): 1080 and 127 expected.
    expect(Math.abs(x.filter((v) => Math.abs(v) > 3).length - 1080)).toBeLessThan(120)
    expect(Math.abs(x.filter((v) => Math.abs(v) > 3.6).length - 127)).toBeLessThan(45)
  })

  it('give Poisson counts: variance equal to the mean', () => {
    const random = randomStream(2, 'poisson')
    for (const mean of [0.5, 4, 30]) {
      const x = take(60_000, () => random.poisson(mean))
      const average = x.reduce((a, b) => a + b, 0) / x.length
      const variance = x.reduce((a, b) => a + (b - average) ** 2, 0) / x.length
      expect(average / mean).toBeCloseTo(1, 1)
      expect(variance / mean).toBeCloseTo(1, 1)
    }
  })
})
