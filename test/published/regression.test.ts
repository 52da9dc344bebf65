import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Asked, fitModel } from '../../src/runs/fit/fit.ts'
import type { Row } from '../../src/runs/fit/likelihood.ts'
import { linkInverse } from '../../src/runs/fit/link.ts'

const NO_FLOOR = { kind: 'fixed', chance: 0 } as const

/**
 * Tobacco budworm moths: Venables & Ripley, Modern Applied Statistics with S, dose.p of MASS (its reference output
 * tests/Examples/MASS-Ex.Rout.save). x is log2 dose; 20 of each; sex + dose without a constant.
 */
describe('budworm: two sexes, one slope', () => {
  const killed = { f: [0, 2, 6, 10, 12, 16], m: [1, 4, 9, 13, 18, 20] }
  const rows: Row[] = [
    ...killed.f.map((found, x) => ({ columns: [1, 0, x], runs: 20, found })),
    ...killed.m.map((found, x) => ({ columns: [0, 1, x], runs: 20, found })),
  ]

  it.each([
    ['logit', -3.473155, -2.372412, 1.064214],
    ['probit', -2.06033, -1.406685, 0.632449],
  ] as const)('%s constants', (link, female, male, slope) => {
    const { b } = fitModel(rows, { link, method: 'ml', floor: NO_FLOOR })
    expect(b[0]).toBeCloseTo(female, 5)
    expect(b[1]).toBeCloseTo(male, 5)
    expect(b[2]).toBeCloseTo(slope, 5)
  })

  /** R stops its steps at 1e-8: what it prints is good to 1e-5. */
  it.each([
    ['logit', 0.25, 2.231265, 0.2499089],
    ['logit', 0.5, 3.263587, 0.2297539],
    ['logit', 0.75, 4.29591, 0.2746874],
    ['probit', 0.25, 2.191229, 0.2384478],
    ['probit', 0.5, 3.257703, 0.2240685],
    ['probit', 0.75, 4.324177, 0.2668745],
  ] as const)('%s: dose of females at %s as printed', (link, chance, dose, error) => {
    const { b, covariance: v } = fitModel(rows, { link, method: 'ml', floor: NO_FLOOR })
    const x = (linkInverse(link, chance) - b[0]!) / b[2]!
    const variance = (v![0]![0]! + 2 * x * v![0]![2]! + x * x * v![2]![2]!) / b[2]! ** 2
    expect(Math.abs(x - dose)).toBeLessThan(1e-5)
    expect(Math.abs(Math.sqrt(variance) - error)).toBeLessThan(1e-5)
  })
})

/**
 * Endometrial cancer grades, 79 women: Heinze & Schemper 2002, Stat. Med. 21:2409. One covariate separates, so that
 * maximum likelihood has no value; the penalised values and profile limits are those of logistf for R, as kept in
 * the tests of a public package under the MIT licence, from which the data file comes too.
 */
describe('Firth: endometrial', () => {
  const rows: Row[] = readFileSync(new URL('./fixtures/endometrial.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(',').map(Number))
    .map(([nv, pi, eh, hg]) => ({ columns: [1, nv!, pi!, eh!], runs: 1, found: hg! }))
  const asked: Asked = { link: 'logit', method: 'firth', floor: NO_FLOOR }
  const best = fitModel(rows, asked)

  it('reads 79 rows', () => expect(rows).toHaveLength(79))

  it.each([
    [0, 3.77455951, 1.48869],
    [1, 2.9292733, 1.55076],
    [2, -0.03475175, 0.03958],
    [3, -2.60416387, 0.77602],
  ])('constant %i', (j, value, error) => {
    expect(best.b[j]).toBeCloseTo(value, 6)
    expect(Math.sqrt(best.covariance![j]![j]!)).toBeCloseTo(error, 4)
  })

  /** Twice the penalised log-likelihood lost when one constant is held at a published limit is χ² at 95 %. */
  it.each([
    [0, 1.0825371, 7.2092805],
    [1, 0.6097244, 7.8546317],
    [2, -0.1244587, 0.0404555],
    [3, -4.3651832, -1.2327211],
  ])('profile limits of constant %i', (j, low, high) => {
    for (const limit of [low, high]) {
      const start = { b: best.b.map((v, k) => (k === j ? limit : v)), floor: 0 }
      const held = fitModel(rows, { ...asked, held: new Map([[j, limit]]), start })
      expect(Math.abs(2 * (best.logL - held.logL) - 3.8414588)).toBeLessThan(1e-4)
    }
  })
})
