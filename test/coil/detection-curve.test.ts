import { describe, expect, test } from 'vitest'
import { quickNormalChance } from '../../src/coil/decide/chance-table.ts'
import { DetectionCurve } from '../../src/coil/decide/detection-curve.ts'
import { lastCrossingMm, missedAgain } from '../../src/coil/decide/last-crossing.ts'
import { decisionStatistic } from '../../src/coil/food/clutter.ts'
import { COIL_PARAMETERS } from '../../src/coil/parameters.ts'
import { type ResponseTable, responseTable } from '../../src/coil/piece/response-table.ts'
import { positionOf, SIZE_COUNT, sizeAtMm } from '../../src/coil/piece/size-grid.ts'
import { spherePolarizability } from '../../src/coil/piece/sphere.ts'
import { hearing, type Scene } from '../../src/coil/scene.ts'
import { normalChance } from '../../src/numerics/normal.ts'

const STEEL = { conductivitySPerM: 6e6, relativePermeability: 100, ferromagnetic: true }

const scene: Scene = {
  opening: { widthM: 0.35, heightM: 0.175 },
  block: {
    widthM: 0.1,
    heightM: 0.04,
    lengthM: 0.15,
    conductivitySPerM: 0.5,
    relativePermittivity: 80,
    susceptibility: 0,
    sideBySide: 1,
  },
  pack: { widthM: 0.1, heightM: 0.04, sensedLengthM: 0.1, openingHeightM: 0.175 },
  layers: [],
  conductance: 'central',
  flow: 'block',
  read: null,
  wetness: 1,
}

function steelCurve(frequenciesHz: number[], threshold: number, spread: number) {
  const heard = hearing(scene, frequenciesHz, COIL_PARAMETERS)
  const along = frequenciesHz.map((f) => responseTable({ kind: 'sphere' }, 'along', STEEL, f))
  const target = { along, across: along, alongShare: 1, layer: null, gain: 1 }
  return { heard, curve: new DetectionCurve(heard.whitening, target, threshold, spread) }
}

/** A made-up answer: D equals `rise(size)` through a unit whitening. */
function madeUp(rise: (mm: number) => number, threshold: number, spread = 0): DetectionCurve {
  const re = Float64Array.from({ length: SIZE_COUNT }, (_, k) => rise(sizeAtMm(k)))
  const table: ResponseTable = { re, im: new Float64Array(SIZE_COUNT) }
  const whitening = { size: 2, rows: Float64Array.of(1, 0, 0, 1) }
  const target = { along: [table], across: [table], alongShare: 1, layer: null, gain: 1 }
  return new DetectionCurve(whitening, target, threshold, spread)
}

describe('chance of finding', () => {
  test('the quick normal distribution agrees with the slow one to 1e-11', () => {
    for (let x = -10; x <= 10; x += 0.0137) {
      expect(Math.abs(quickNormalChance(x) - normalChance(x))).toBeLessThan(1e-11)
    }
  })

  test.each([
    [[300_000], 0.15],
    [[50_000, 850_000], 0.1],
    [[300_000], 0.07],
  ])('at %j Hz with spread %d it is the 41-step mean written out', (frequenciesHz, spread) => {
    const threshold = 3.9
    const { heard, curve } = steelCurve(frequenciesHz, threshold, spread)
    const direct = (mm: number) => {
      let sum = 0
      let weights = 0
      for (let n = 0; n <= 40; n++) {
        const u = -4 + 0.2 * n
        const weight = Math.exp((-u * u) / 2)
        const signal = Float64Array.from(
          frequenciesHz.flatMap((f) => {
            const alpha = spherePolarizability((mm * Math.exp(-spread * u)) / 2000, STEEL, f)
            return [alpha.re, alpha.im]
          }),
        )
        sum += weight * normalChance(decisionStatistic(heard.whitening, signal) - threshold)
        weights += weight
      }
      return sum / weights
    }
    for (const mm of [0.7, 1.1, 1.6, 1.9, 2.6, 4.4]) {
      expect(Math.abs(curve.chanceOf(mm) - direct(mm))).toBeLessThan(3e-4)
    }
  })

  test('two-dimensional statistic: the covariance written out and inverted by hand', () => {
    const { heard, curve } = steelCurve([300_000], 0, 0)
    const p = heard.product![0]!
    const size2 = p.re ** 2 + p.im ** 2
    const { amplitude, phaseRad, remainder } = COIL_PARAMETERS.block
    const n0 = COIL_PARAMETERS.noiseM3
    const re = 2 * n0 ** 2 + amplitude ** 2 * p.re ** 2 + phaseRad ** 2 * p.im ** 2 + remainder ** 2 * size2
    const im = n0 ** 2 + amplitude ** 2 * p.im ** 2 + phaseRad ** 2 * p.re ** 2 + remainder ** 2 * size2
    const cross = (amplitude ** 2 - phaseRad ** 2) * p.re * p.im
    const mm = sizeAtMm(500)
    const s = spherePolarizability(mm / 2000, STEEL, 300_000)
    const d2 = (im * s.re ** 2 - 2 * cross * s.re * s.im + re * s.im ** 2) / (re * im - cross ** 2)
    expect(Math.abs(curve.statistic(500) / Math.sqrt(d2) - 1)).toBeLessThan(1e-9)
  })
})

describe('size from a curve', () => {
  test('is where the chance last rises through the level', () => {
    const curve = madeUp((mm) => 10 * mm, 3)
    // Φ(10·d − 3) = 0.90 at d = 0.428155
    expect(lastCrossingMm(curve, 0.9, 12)).toBeCloseTo(0.428155, 3)
    expect(missedAgain(curve, 0.9, 12)).toEqual([])
  })

  test('a dip counts: the size lies above it, and the dip is told', () => {
    const dip = (mm: number) => (mm > 2 && mm < 3 ? 1 : 10 * mm)
    const curve = madeUp(dip, 3)
    expect(lastCrossingMm(curve, 0.9, 12)).toBeCloseTo(3, 1)
    const windows = missedAgain(curve, 0.9, 12)
    expect(windows).toHaveLength(1)
    expect(windows[0]!.fromMm).toBeCloseTo(2, 1)
    expect(windows[0]!.toMm).toBeCloseTo(3, 1)
  })

  test('missed at the largest size that counts: no size, and the window stays open', () => {
    const curve = madeUp((mm) => (mm > 5 ? 1 : 10 * mm), 3)
    expect(lastCrossingMm(curve, 0.9, 12)).toBeNull()
    expect(missedAgain(curve, 0.9, 12)[0]!.toMm).toBeNull()
    expect(lastCrossingMm(curve, 0.9, 4)).toBeCloseTo(0.428, 2)
  })

  test('a spread of 0.15 moves the size by about 1.28 × 0.15 where the curve alone is steep', () => {
    const steep = (mm: number) => 100 * mm
    const sharp = lastCrossingMm(madeUp(steep, 100, 0), 0.9, 12)!
    const spread = lastCrossingMm(madeUp(steep, 100, 0.15), 0.9, 12)!
    expect(Math.log(spread / sharp)).toBeGreaterThan(0.17)
    expect(Math.log(spread / sharp)).toBeLessThan(0.2)
  })

  test('position and size are inverse', () => {
    for (const mm of [0.01, 0.3, 1, 12, 50]) expect(sizeAtMm(positionOf(mm))).toBeCloseTo(mm, 10)
  })
})
