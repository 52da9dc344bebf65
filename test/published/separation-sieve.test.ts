import { describe, expect, it } from 'vitest'
import { passage, uprightShare } from '../../src/separation/sieve/sieve-passage.ts'

describe('chance of passing an opening', () => {
  // Society of Powder Technology, Japan, online dictionary, "probability of particles passage":
  // (1 − x/a)², the share of the opening in which the centre of the sphere may lie. Counted on a grid here.
  it.each([0.1, 0.3, 0.5, 0.8])('is the share of centres that clear the edges at x/a = %f', (ratio) => {
    const grid = 1000
    const clear = Array.from({ length: grid }, (_, i) => (i + 0.5) / grid).filter(
      (u) => u >= ratio / 2 && u <= 1 - ratio / 2,
    ).length
    expect(Math.abs(passage(ratio, 1) - (clear / grid) ** 2)).toBeLessThan(2e-3)
  })
})

describe('chance of a wire standing upright enough', () => {
  // Archimedes' hat-box theorem: directions within an angle θ of the vertical are the share 1 − cos θ of a
  // half sphere. Counted over directions spread evenly on the half sphere.
  it.each([
    [0.5, 10, 4],
    [1, 30, 6],
  ])('wire %f × %f mm at an opening of %f mm', (diameter, length, mesh) => {
    const count = 100000
    let upright = 0
    for (let i = 0; i < count; i++) {
      const cosine = (i + 0.5) / count
      if (length * Math.sqrt(1 - cosine ** 2) <= mesh - diameter) upright++
    }
    expect(Math.abs(uprightShare(diameter, length, mesh) - upright / count)).toBeLessThan(1e-4)
  })
})
