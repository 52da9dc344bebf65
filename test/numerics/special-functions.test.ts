import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { besselJ0, besselJ1, tabledJ0 } from '../../src/numerics/bessel.ts'
import { discreteGauss } from '../../src/numerics/discrete-gauss.ts'
import { gaussLegendre } from '../../src/numerics/gauss-legendre.ts'
import { radicalInverse } from '../../src/numerics/halton.ts'
import { normalUpperQuantile, normalUpperTail } from '../../src/numerics/normal.ts'

/** J_n(x) = (1/π)∫₀^π cos(nθ − x sin θ) dθ (Bessel's integral). */
function besselByIntegral(n: number, x: number): number {
  const steps = 2000
  let sum = 0
  for (let i = 0; i < steps; i++) {
    const theta = (Math.PI * (i + 0.5)) / steps
    sum += Math.cos(n * theta - x * Math.sin(theta))
  }
  return sum / steps
}

describe('Bessel functions', () => {
  it("agree with Bessel's integral to 2e-7", () => {
    for (let x = 0; x < 60; x += 0.37) {
      expect(Math.abs(besselJ0(x) - besselByIntegral(0, x))).toBeLessThan(2e-7)
      expect(Math.abs(besselJ1(x) - besselByIntegral(1, x))).toBeLessThan(2e-7)
    }
  })

  it('the table of J0 reads as the function itself to 5e-7, at its end and beyond as well', () => {
    const places = Float64Array.from({ length: 20_000 }, (_, i) => i * 0.00685)
    const values = new Float64Array(places.length)
    tabledJ0(values, places, 2)
    const worst = Math.max(...values.map((value, i) => Math.abs(value - besselJ0(2 * places[i]!))))
    expect(worst).toBeLessThan(5e-7)
  })
})

describe('normal distribution', () => {
  // Abramowitz & Stegun 1964, table 26.2 (from memory).
  it.each([
    [1, 0.15865525393145707],
    [2, 0.022750131948179209],
    [3, 0.0013498980316300933],
    [5, 2.866515718791939e-7],
    [6, 9.865876450376946e-10],
  ])('upper tail at %f', (z, tail) => {
    expect(Math.abs(normalUpperTail(z) / tail - 1)).toBeLessThan(1e-10)
  })

  it('quantile undoes the tail', () => {
    fc.assert(
      fc.property(fc.double({ min: -7, max: 7, noNaN: true }), (z) => {
        expect(Math.abs(normalUpperQuantile(normalUpperTail(z)) - z)).toBeLessThan(z < -5 ? 1e-3 : 1e-8)
      }),
    )
  })
})

describe('quadrature', () => {
  it('Gauss–Legendre is exact for polynomials up to degree 2n − 1', () => {
    for (const n of [2, 5, 12]) {
      const { nodes, weights } = gaussLegendre(n)
      for (let power = 0; power < 2 * n; power++) {
        const sum = nodes.reduce((total, x, i) => total + weights[i]! * x ** power, 0)
        expect(sum).toBeCloseTo(power % 2 === 0 ? 2 / (power + 1) : 0, 12)
      }
    }
  })

  it('a discrete measure keeps its first moments', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.double({ min: -1, max: 3, noNaN: true }),
            fc.double({ min: 0.01, max: 1, noNaN: true }),
          ),
          {
            minLength: 12,
            maxLength: 90,
          },
        ),
        (pairs) => {
          const total = pairs.reduce((sum, [, w]) => sum + w, 0)
          const points = Float64Array.from(pairs, ([x]) => x)
          const measure = Float64Array.from(pairs, ([, w]) => w / total)
          const rule = discreteGauss(points, measure, pairs.length, 4)
          for (let power = 0; power < 8; power++) {
            const whole = points.reduce((sum, x, i) => sum + measure[i]! * x ** power, 0)
            const few = rule.nodes.reduce((sum, x, i) => sum + rule.weights[i]! * x ** power, 0)
            expect(Math.abs(few - whole)).toBeLessThan(1e-7 * 3 ** power)
          }
        },
      ),
    )
  })

  it('radical inverse in base 2 and 3', () => {
    expect([1, 2, 3, 4].map((n) => radicalInverse(n, 2))).toEqual([0.5, 0.25, 0.75, 0.125])
    expect(radicalInverse(5, 3)).toBeCloseTo(2 / 3 + 1 / 9, 15)
  })
})
