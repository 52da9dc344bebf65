import { describe, expect, it } from 'vitest'
import {
  type Curve,
  deltaAt,
  fitCurve,
  profileEnd,
  type SizeRow,
  xAt,
} from '../../src/runs/fit/size-bound.ts'
import rComputed from './fixtures/hit-miss.json' with { type: 'json' }

const NO_FLOOR = { kind: 'fixed', chance: 0 } as const
const TWO_SIDED_95 = 3.841458820694124
const rowsOf = (x: readonly number[], runs: readonly number[], found: readonly number[]): SizeRow[] =>
  x.map((value, i) => ({ x: value, runs: runs[i]!, found: found[i]! }))

/** Deviance: twice the log-likelihood lost against the sets' own shares. */
function deviance(rows: readonly SizeRow[], logL: number): number {
  const term = (k: number, n: number) => (k === 0 ? 0 : k * Math.log(k / n))
  const full = rows.reduce((sum, { runs, found }) => sum + term(found, runs) + term(runs - found, runs), 0)
  return 2 * (full - logL)
}

/**
 * Flour beetles and carbon disulphide, log10 dose: Bliss 1935, Ann. Appl. Biol. 22:134. Fits as printed in Dobson,
 * An Introduction to Generalized Linear Models (−60.72, 34.27, deviance 11.23; −34.94, 19.73, 10.12: from memory);
 * further digits and the limits computed outside this project.
 */
describe('Bliss beetles', () => {
  const rows = rowsOf(
    [1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.861, 1.8839],
    [59, 60, 62, 56, 63, 59, 62, 60],
    [6, 13, 18, 28, 52, 53, 61, 60],
  )
  const curve = (link: Curve['link']): Curve => ({ link, method: 'ml', floor: NO_FLOOR })

  it.each([
    ['logit', -60.717455, 5.180711, 34.270326, 2.91214, -15.082151, 11.232231, -186.235403],
    ['probit', -34.935259, 2.647918, 19.727934, 1.487235, -3.936544, 10.119758, -185.679167],
  ] as const)(
    '%s: constants, standard errors, covariance, deviance',
    (link, b0, se0, b1, se1, cov, dev, logL) => {
      const fitted = fitCurve(rows, curve(link))
      expect(fitted.b[0]).toBeCloseTo(b0, 5)
      expect(fitted.b[1]).toBeCloseTo(b1, 5)
      expect(Math.sqrt(fitted.covariance![0]![0]!)).toBeCloseTo(se0, 5)
      expect(Math.sqrt(fitted.covariance![1]![1]!)).toBeCloseTo(se1, 5)
      expect(fitted.covariance![0]![1]!).toBeCloseTo(cov, 5)
      expect(deviance(rows, fitted.logL)).toBeCloseTo(dev, 5)
      expect(fitted.logL).toBeCloseTo(logL, 5)
    },
  )

  it.each([
    ['logit', 0.5, 1.771721, 0.0038581, 1.763982, 1.779187],
    ['logit', 0.9, 1.8358355, 0.0061925, 1.824562, 1.84906],
    ['probit', 0.9, 1.8358136, 0.005647, 1.825324, 1.848032],
  ] as const)('%s: the dose at %s with its limits', (link, chance, x, se, low, high) => {
    const at = deltaAt(fitCurve(rows, curve(link)), curve(link), chance)!
    expect(at.x).toBeCloseTo(x, 6)
    expect(at.standardError).toBeCloseTo(se, 6)
    expect(profileEnd(rows, curve(link), chance, 'lower', TWO_SIDED_95)).toBeCloseTo(low, 5)
    expect(profileEnd(rows, curve(link), chance, 'upper', TWO_SIDED_95)).toBeCloseTo(high, 5)
  })

  it('one-sided 95 % above the dose at 0.90: the profile lies above the delta method', () => {
    expect(profileEnd(rows, curve('logit'), 0.9)).toBeCloseTo(1.846771, 5)
    expect(profileEnd(rows, curve('probit'), 0.9)).toBeCloseTo(1.845924, 5)
    const { x, standardError } = deltaAt(fitCurve(rows, curve('logit')), curve('logit'), 0.9)!
    expect(x + 1.6448536 * standardError).toBeCloseTo(1.846021, 5)
  })
})

/**
 * Natural response: SAS/STAT User's Guide, the PROBIT procedure, "Getting Started": dose 0 is the control, x is
 * log10 dose; printed MU 0.66506312 and SIGMA 0.16049411.
 */
describe('a floor fitted jointly with its control', () => {
  const doses = [0, 1.1, 1.3, 2.0, 2.2, 2.8, 3.7, 3.9, 4.4, 4.8, 5.9, 6.8]
  const found = [3, 4, 4, 3, 5, 4, 5, 9, 8, 11, 12, 13]
  const rows = doses.map((dose, i) => ({
    x: dose === 0 ? null : Math.log10(dose),
    runs: 15,
    found: found[i]!,
  }))
  const fitted = fitCurve(rows, { link: 'probit', method: 'ml', floor: { kind: 'estimated' } })

  it('has the printed location and scale', () => {
    expect(-fitted.b[0]! / fitted.b[1]!).toBeCloseTo(0.66506312, 7)
    expect(1 / fitted.b[1]!).toBeCloseTo(0.16049411, 7)
  })

  it('has the floor and errors computed outside this project', () => {
    expect(fitted.floor).toBeCloseTo(0.240883, 6)
    expect(fitted.logL).toBeCloseTo(-104.394578, 6)
    const errors = fitted.covariance!.map((row, i) => Math.sqrt(row[i]!))
    expect(errors[0]).toBeCloseTo(1.3705, 3)
    expect(errors[1]).toBeCloseTo(1.9357, 3)
    expect(errors[2]).toBeCloseTo(0.053, 3)
  })
})

/**
 * Rubber rings of 23 flights, Dalal, Fowlkes & Hoadley 1989, J. Am. Stat. Assoc. 84:945: 15.0429 − 0.2322·°F.
 * Size is −°F here; limits computed outside this project.
 */
describe('O-rings: one found or missed a piece, x in plain degrees', () => {
  const flights: readonly (readonly [fahrenheit: number, failed: number])[] = [
    [66, 0],
    [70, 1],
    [69, 0],
    [68, 0],
    [67, 0],
    [72, 0],
    [73, 0],
    [70, 0],
    [57, 1],
    [63, 1],
    [70, 1],
    [78, 0],
    [67, 0],
    [53, 1],
    [67, 0],
    [75, 0],
    [70, 0],
    [81, 0],
    [76, 0],
    [79, 0],
    [75, 1],
    [76, 0],
    [58, 1],
  ]
  const rows = flights.map(([f, found]) => ({ x: -f, runs: 1, found }))
  const curve: Curve = { link: 'logit', method: 'ml', floor: NO_FLOOR }
  const fitted = fitCurve(rows, curve)

  it('constants, errors and chance at 31 °F', () => {
    expect(fitted.b[0]).toBeCloseTo(15.042902, 5)
    expect(fitted.b[1]).toBeCloseTo(0.232163, 5)
    expect(Math.sqrt(fitted.covariance![0]![0]!)).toBeCloseTo(7.378636, 4)
    expect(Math.sqrt(fitted.covariance![1]![1]!)).toBeCloseTo(0.108237, 5)
    expect(deviance(rows, fitted.logL)).toBeCloseTo(20.315193, 5)
    expect(1 / (1 + Math.exp(-(fitted.b[0]! - 31 * fitted.b[1]!)))).toBeCloseTo(0.999609, 5)
  })

  it('limits that the delta method makes even and the profile does not', () => {
    expect(-xAt(fitted, curve, 0.5)).toBeCloseTo(64.79464, 4)
    const { x, standardError } = deltaAt(fitted, curve, 0.9)!
    expect(-x).toBeCloseTo(55.33048, 4)
    expect(-x - 1.959964 * standardError).toBeCloseTo(42.863, 2)
    expect(-profileEnd(rows, curve, 0.9, 'upper', TWO_SIDED_95)).toBeCloseTo(18.36, 2)
    expect(-profileEnd(rows, curve, 0.9, 'lower', TWO_SIDED_95)).toBeCloseTo(63.088, 2)
  })
})

/** Sizes wholly separated: computed outside this project; the point of it is the bound, 13.2 on a card to 2.5. */
describe('all missed below, all found above', () => {
  const sizes = [0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5]
  const rows = rowsOf(sizes.map(Math.log), new Array(8).fill(1), [0, 0, 0, 0, 1, 1, 1, 1])
  const curve: Curve = { link: 'logit', method: 'firth', floor: NO_FLOOR }

  it('has finite constants and a bound far beyond the card', () => {
    const fitted = fitCurve(rows, curve)
    expect(fitted.b[0]).toBeCloseTo(-1.459509, 5)
    expect(fitted.b[1]).toBeCloseTo(5.177276, 5)
    expect(fitted.logL).toBeCloseTo(-2.899275, 6)
    expect(Math.exp(xAt(fitted, curve, 0.5))).toBeCloseTo(1.325655, 5)
    expect(Math.exp(xAt(fitted, curve, 0.9))).toBeCloseTo(2.026489, 5)
    expect(Math.exp(profileEnd(rows, curve, 0.9))).toBeCloseTo(13.2015, 4)
  })

  it('and the same on plain sizes', () => {
    const fitted = fitCurve(rowsOf(sizes, new Array(8).fill(1), [0, 0, 0, 0, 1, 1, 1, 1]), curve)
    expect(fitted.b[0]).toBeCloseTo(-5.531277, 5)
    expect(fitted.b[1]).toBeCloseTo(4.020785, 5)
    expect(xAt(fitted, curve, 0.9)).toBeCloseTo(1.922138, 5)
  })
})

/** R beside ours: fixtures/make-hit-miss-fixture.R made the file; R is not needed to run this. */
describe('twenty sets that R fitted', () => {
  it.each(rComputed.sets.map((set, i) => [i + 1, set] as const))('set %i', (_, set) => {
    const rows = rowsOf(set.sizesMm.map(Math.log), set.runs, set.found)
    for (const r of set.fits) {
      const curve = { link: r.link, method: r.method, floor: NO_FLOOR } as Curve
      const fitted = fitCurve(rows, curve)
      const precise = r.method === 'ml' ? 1e-7 : 1e-5
      expect(Math.abs(fitted.b[0]! / r.b0 - 1)).toBeLessThan(precise)
      expect(Math.abs(fitted.b[1]! / r.b1 - 1)).toBeLessThan(precise)
      expect(Math.abs(fitted.logL - r.logL)).toBeLessThan(1e-7)
      expect(Math.exp(xAt(fitted, curve, 0.9))).toBeCloseTo(r.a90, 5)
      if (r.profile !== null) expect(Math.exp(profileEnd(rows, curve, 0.9))).toBeCloseTo(r.profile, 5)
      if (r.delta !== null) {
        const { x, standardError } = deltaAt(fitted, curve, 0.9)!
        expect(Math.exp(x + 1.6448536269514722 * standardError)).toBeCloseTo(r.delta, 5)
      }
    }
  })
})
