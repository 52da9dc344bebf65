import { describe, expect, it } from 'vitest'
import { besselJ0 } from '../../src/numerics/bessel.ts'
import { gaussLegendre } from '../../src/numerics/gauss-legendre.ts'
import { chordTransforms, DEGREE } from '../../src/xray/observer/chord-basis.ts'

/** The integrals as they stand, by a quadrature fine enough for k up to 100. */
function asWritten(kind: 'sphere' | 'wire', j: number, k: number): number {
  const rule = gaussLegendre(128)
  let sum = 0
  for (let i = 0; i < rule.nodes.length; i++) {
    const theta = ((rule.nodes[i]! + 1) * Math.PI) / 4
    const [s, c] = [Math.sin(theta), Math.cos(theta)]
    const wave = kind === 'sphere' ? 2 * Math.PI * besselJ0(k * s) * s : 2 * Math.cos(k * s)
    sum += rule.weights[i]! * (Math.PI / 4) * c ** (j + 1) * wave
  }
  return sum
}

describe('transforms of round objects (Sonine’s and Poisson’s integrals)', () => {
  it.each(['sphere', 'wire'] as const)(
    '%s: equal to their integrals on both sides of the change-over',
    (kind) => {
      for (const k of [0, 0.3, 2, 7.9, 8, 8.1, 15, 33.3, 60, 96]) {
        const all = chordTransforms(kind, k)
        for (let j = 1; j <= DEGREE; j++)
          expect(Math.abs(all[j - 1]! - asWritten(kind, j, k)), `j ${j}, k ${k}`).toBeLessThan(3e-7)
      }
    },
  )
})
