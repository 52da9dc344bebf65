import { describe, expect, test } from 'vitest'
import { offCentreFactor, sensedLengthM } from '../../src/coil/food/product-block.ts'
import { couplingPeak, couplingPerM2, loopFieldPerM } from '../../src/coil/opening/coil-field.ts'
import { geometryFactor, NEAR_WALL_GAIN } from '../../src/coil/opening/geometry-factor.ts'
import { metalFreeZoneMm, packGapMm } from '../../src/coil/opening/surroundings.ts'

type Vector = readonly [x: number, y: number, z: number]

/** Field of a loop (x along w, y along h, z its axis) at a point, by adding up its current elements. */
function summedField(w: number, h: number, x: number, y: number, z: number): Vector {
  const n = 2000
  const sum = [0, 0, 0]
  const side = (x0: number, y0: number, x1: number, y1: number) => {
    const dx = (x1 - x0) / n
    const dy = (y1 - y0) / n
    for (let k = 0; k < n; k++) {
      const rx = x - (x0 + (k + 0.5) * dx)
      const ry = y - (y0 + (k + 0.5) * dy)
      const cube = (rx * rx + ry * ry + z * z) ** 1.5
      sum[0]! += (dy * z) / cube
      sum[1]! -= (dx * z) / cube
      sum[2]! += (dx * ry - dy * rx) / cube
    }
  }
  side(-w / 2, -h / 2, w / 2, -h / 2)
  side(w / 2, -h / 2, w / 2, h / 2)
  side(w / 2, h / 2, -w / 2, h / 2)
  side(-w / 2, h / 2, -w / 2, -h / 2)
  return [sum[0]! / (4 * Math.PI), sum[1]! / (4 * Math.PI), sum[2]! / (4 * Math.PI)]
}

describe('field of the rectangular loop (Biot–Savart, textbook limits, mark M)', () => {
  test('centre of a square of side b: 2√2/(πb)', () => {
    expect(loopFieldPerM(0.2, 0.2, 0)).toBeCloseTo((2 * Math.SQRT2) / (Math.PI * 0.2), 12)
  })

  test('very wide loop: two long wires, 2/(πh)', () => {
    expect(loopFieldPerM(100, 0.2, 0) / (2 / (Math.PI * 0.2))).toBeCloseTo(1, 5)
  })

  test('far away: the dipole, w·h/(2πz³)', () => {
    expect(loopFieldPerM(0.2, 0.1, 20) / ((0.2 * 0.1) / (2 * Math.PI * 20 ** 3))).toBeCloseTo(1, 3)
  })

  test('on the axis: the sum over current elements', () => {
    for (const z of [0, 0.05, 0.13, 0.4]) {
      expect(loopFieldPerM(0.35, 0.175, z) / summedField(0.35, 0.175, 0, 0, z)[2]).toBeCloseTo(1, 6)
    }
  })
})

describe('three loops', () => {
  test('the signal is odd along the travel and best at a spacing near 0.4 h (mark C)', () => {
    expect(couplingPerM2(2, 1, 0.4, 0.2)).toBeCloseTo(-couplingPerM2(2, 1, 0.4, -0.2), 12)
    const at = (spacing: number) => couplingPeak(2, spacing).peak
    expect(at(0.4)).toBeGreaterThan(at(0.2))
    expect(at(0.4)).toBeGreaterThan(at(0.8))
  })

  test('the lobe counted to its end is 0.3 to 1.6 % longer than to 1.5 h (mark C)', () => {
    for (const ratio of [1, 1.5, 2, 3]) {
      const longer = couplingPeak(ratio, 0.4, 20, 40_000).lobeLength / couplingPeak(ratio, 0.4).lobeLength
      expect(longer).toBeGreaterThan(1.002)
      expect(longer).toBeLessThan(1.017)
    }
  })

  test('away from the centre the coupling of a ball rises: 1.11, 1.20, 1.34 at 0.2, 0.25, 0.3 h (w/h = 2, all components, mark C)', () => {
    const peak = (y: number) => {
      let most = 0
      for (let z = 0.25; z <= 0.5; z += 0.01) {
        const sent = summedField(2, 1, 0, y, z)
        const near = summedField(2, 1, 0, y, z - 0.4)
        const far = summedField(2, 1, 0, y, z + 0.4)
        most = Math.max(
          most,
          sent.reduce((sum, part, k) => sum + part * (near[k]! - far[k]!), 0),
        )
      }
      return most
    }
    const centre = peak(0)
    expect(peak(0.2) / centre).toBeCloseTo(1.11, 2)
    expect(peak(0.25) / centre).toBeCloseTo(1.2, 2)
    expect(Math.abs(peak(0.3) / centre - NEAR_WALL_GAIN)).toBeLessThan(0.01)
  })

  test('width costs at most a factor 1.9 between square and very wide; beyond 3 it costs nothing more', () => {
    expect(geometryFactor(10) / geometryFactor(1)).toBeLessThan(1.9)
    expect(geometryFactor(10)).toBe(geometryFactor(3))
    expect(geometryFactor(2)).toBe(1)
  })

  test('sensed length and rise off the centre (mark C)', () => {
    expect(sensedLengthM(10, 0.175)).toBeCloseTo(0.105, 6)
    expect(sensedLengthM(0.001, 0.175)).toBeCloseTo(0.001, 6)
    expect(offCentreFactor(0.3, 0.2)).toBe(1.8)
  })
})

test('metal-free zone: 1.5 h fixed, 2 h moving (Oklahoma State University FAPC-105, mark V)', () => {
  expect(metalFreeZoneMm(200)).toEqual({ fixedMm: 300, movingMm: 400 })
  expect(packGapMm(200)).toBeCloseTo(240, 9)
})
