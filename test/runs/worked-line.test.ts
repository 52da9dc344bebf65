import { describe, expect, it } from 'vitest'
import { binomialAtMost, lowerBound } from '../../src/numerics/binomial.ts'
import { type Curve, deltaAt, fitCurve, profileEnd, xAt, Z_95 } from '../../src/runs/fit/size-bound.ts'
import { mcNemar } from '../../src/runs/judge/paired.ts'
import { cleanPlan } from '../../src/runs/plan/clean-plan.ts'
import { curvePower } from '../../src/runs/plan/curve-power.ts'
import { bracketingSizes, oneSizeRoutes } from '../../src/runs/plan/routes.ts'
import { chanceAt, truthOf } from '../../src/runs/plan/truth.ts'

/**
 * One line worked through outside this project with scipy and 20,000 simulated sets: stone at the weak end of a bag,
 * half found at 2.31 mm, nine in ten at 2.625 mm.
 */
const SIX = [1.9, 2.1, 2.3, 2.5, 2.7, 3.0]

describe('readings of the worked line', () => {
  it.each([
    [10, [0, 2, 5, 8, 9, 10], 0, 'ml', -14.472107, 17.288024, -20.791958, 2.3097, 2.622722, 2.830297],
    [10, [0, 2, 5, 8, 9, 10], 0, 'firth', -13.209481, 15.786472, -21.228442, 2.308873, 2.65367, 2.884175],
    [10, [0, 2, 5, 8, 9, 10], 0.02, 'ml', -14.795529, 17.602205, -20.946272, 2.317641, 2.625776, 2.834551],
    [10, [0, 2, 5, 8, 9, 10], 0.02, 'firth', -13.333531, 15.880536, -21.502659, 2.315475, 2.659064, 2.89317],
    [15, [1, 2, 7, 11, 14, 15], 0, 'ml', -13.729709, 16.293328, -32.804187, 2.322533, 2.657837, 2.829806],
    [15, [1, 2, 7, 11, 14, 15], 0, 'firth', -12.951297, 15.37378, -32.768296, 2.321997, 2.678744, 2.862672],
  ] as const)('%i each, %j, floor %d, %s', (each, found, floor, method, b0, b1, logL, a50, a90, bound) => {
    const rows = SIX.map((size, i) => ({ x: Math.log(size), runs: each, found: found[i]! }))
    const curve: Curve = { link: 'logit', method, floor: { kind: 'fixed', chance: floor } }
    const fitted = fitCurve(rows, curve)
    expect(Math.abs(fitted.b[0]! - b0)).toBeLessThan(2e-6)
    expect(Math.abs(fitted.b[1]! - b1)).toBeLessThan(2e-6)
    expect(fitted.logL).toBeCloseTo(logL, 6)
    expect(Math.exp(xAt(fitted, curve, 0.5))).toBeCloseTo(a50, 6)
    expect(Math.exp(xAt(fitted, curve, 0.9))).toBeCloseTo(a90, 6)
    expect(Math.exp(profileEnd(rows, curve, 0.9))).toBeCloseTo(bound, 6)
  })

  it.each([
    [[1.5, 2, 2.5, 3], 15, [0, 0, 11, 15], -17.748036, 20.401278, -10.500238, 2.386785, 2.658196, 2.877958],
    [[2, 3], 13, [0, 13], -14.564378, 16.257068, -2.651902, 2.44949, 2.803966, 3.18182],
  ] as const)('separated sizes %j', (sizes, each, found, b0, b1, logL, a50, a90, bound) => {
    const rows = sizes.map((size, i) => ({ x: Math.log(size), runs: each, found: found[i]! }))
    const curve: Curve = { link: 'logit', method: 'firth', floor: { kind: 'fixed', chance: 0 } }
    const fitted = fitCurve(rows, curve)
    expect(fitted.b[0]).toBeCloseTo(b0, 5)
    expect(fitted.b[1]).toBeCloseTo(b1, 5)
    expect(fitted.logL).toBeCloseTo(logL, 6)
    expect(Math.exp(xAt(fitted, curve, 0.5))).toBeCloseTo(a50, 6)
    expect(Math.exp(xAt(fitted, curve, 0.9))).toBeCloseTo(a90, 6)
    expect(Math.exp(profileEnd(rows, curve, 0.9))).toBeCloseTo(bound, 6)
  })

  it('delta method and exact counts beside the first reading', () => {
    const found = [0, 2, 5, 8, 9, 10]
    const rows = SIX.map((size, i) => ({ x: Math.log(size), runs: 10, found: found[i]! }))
    const curve: Curve = { link: 'logit', method: 'ml', floor: { kind: 'fixed', chance: 0 } }
    const { x, standardError } = deltaAt(fitCurve(rows, curve), curve, 0.9)!
    expect(Math.exp(x + Z_95 * standardError)).toBeCloseTo(2.787738, 6)
    expect(found.map((k) => Number(lowerBound(k, 10, 0.95).toFixed(4)))).toEqual([
      0, 0.0368, 0.2224, 0.4931, 0.6058, 0.7411,
    ])
    expect(lowerBound(13, 13, 0.95)).toBeCloseTo(0.794, 3)
  })

  it('two machines on 60 packs, 9 against 2: no difference shown', () => {
    expect(mcNemar(9, 2)).toBeCloseTo((2 * (1 + 11 + 55)) / 2048, 12)
    expect(mcNemar(5, 0)).toBeGreaterThan(0.05)
    expect(mcNemar(6, 0)).toBeLessThan(0.05)
  })
})

describe('the plan of the worked line', () => {
  const aim = { a50: 2.31, a90: 2.625, sizeMm: 3, confidence: 0.95, power: 0.8, seed: 1, lies: 1 }

  it('brackets both sizes', () => {
    expect(bracketingSizes(aim)).toEqual(SIX)
    const chances = SIX.map((size) => Number(chanceAt(truthOf(2.31, 2.625), size).toFixed(4)))
    expect(chances).toEqual([0.0336, 0.1627, 0.4814, 0.7955, 0.9359, 0.9889])
  })

  it('one size: exact power, as predicted, 5 and 10 % worse', () => {
    const rounded = oneSizeRoutes(aim).map(({ pieces, misses, power }) => [
      pieces,
      misses,
      ...[power.asPredicted, power.fiveWorse, power.tenWorse].map((p) => Number(p.toFixed(3))),
    ])
    expect(rounded.slice(0, 3)).toEqual([
      [29, 0, 0.724, 0.476, 0.197],
      [46, 1, 0.908, 0.676, 0.278],
      [61, 2, 0.97, 0.8, 0.348],
    ])
  })

  /** Golden to ±0.003; ours has 1,500 sets: three standard errors are 0.04. */
  it.each([
    [10, 0.796, 0.458, 0.139],
    [15, 0.938, 0.648, 0.205],
  ])('curve with %i at each of six sizes', (perSize, ...golden) => {
    for (const [i, worseBy] of [0, 0.05, 0.1].entries()) {
      const design = { sizesMm: SIX, perSize }
      const power = curvePower(truthOf(2.31, 2.625, worseBy), design, 3, 0.95, { seed: 5, sets: 1500 })
      expect(Math.abs(power - golden[i]!)).toBeLessThan(0.04)
    }
  })

  it('clean run: 9,151 packs with at most 4, which 0.3 in 1,000 passes with 0.856', () => {
    const clean = cleanPlan(0.001, 0.95, 0.8, 80)
    expect([clean.packs, clean.allowed]).toEqual([9151, 4])
    expect(clean.power).toBeCloseTo(0.856, 3)
    expect(Math.round(clean.minutes!)).toBe(114)
    const hopedForHalf = cleanPlan(0.001, 0.95, 0.8, null, 0.0005)
    expect([hopedForHalf.packs, hopedForHalf.allowed]).toEqual([19439, 12])
    expect(binomialAtMost(0, 2995, 0.0005)).toBeCloseTo(0.22, 2)
  })
})
