import { describe, expect, it } from 'vitest'
import { columnMm, type Raster, rowMm } from '../../../src/xray/image/food/raster.ts'
import { drawPack, gridsFor, pathMaps } from '../../../src/xray/image/pack/drawn-pack.ts'
import type { ExposedPack } from '../../../src/xray/image/pack/exposed-pack.ts'
import type { Piece } from '../../../src/xray/image/pack/piece.ts'
import { type Radiograph, takeRadiograph } from '../../../src/xray/image/pack/radiograph.ts'
import { isRead, type View } from '../../../src/xray/image/pack/view.ts'
import { foodCurve } from '../../../src/xray/image/read/cancel-food.ts'
import { measureNoise } from '../../../src/xray/image/read/measured-noise.ts'
import { readArea } from '../../../src/xray/image/read/read-area.ts'
import { materialAttenuation } from '../../../src/xray/places/pack-in-beam.ts'
import { exposedFor, sampleBrief } from './sample.ts'

function meanOverRead(values: Float32Array, raster: Raster, view: View): number {
  let sum = 0
  let count = 0
  for (let row = 0; row < raster.rows; row++) {
    for (let column = 0; column < raster.columns; column++) {
      if (!isRead(view, columnMm(raster, column), rowMm(raster, row))) continue
      sum += values[row * raster.columns + column]!
      count++
    }
  }
  return sum / count
}

/** −ln of the share of the open beam that the chain computes behind the middle of the pack, per channel. */
function computedAttenuation({ channels, open, build }: ExposedPack): number[] {
  return build.channels.map((response, c) => {
    const openSignal = open.reduce((sum, n, i) => sum + n * response.absorbed[i]! * response.recorded[i]!, 0)
    return -Math.log(channels.signal[c]! / openSignal)
  })
}

describe('the simulated pack lets through what the chain computes', () => {
  it.each([
    ['cheddar', 'xray-dual', 90, 0.002],
    ['chicken_breast', 'xray-single', 60, 0.004],
    ['flour', 'xray-single', 60, 0.004],
    ['hazelnut', 'xray-dual', 90, 0.012],
    ['almond', 'xray-single', 60, 0.012],
  ] as const)('%s by %s', (food, machine, kV, tolerance) => {
    const exposed = exposedFor(sampleBrief(food), machine, kV)
    const expected = computedAttenuation(exposed)
    const totals = expected.map(() => 0)
    const seeds = [1, 2, 3]
    for (const seed of seeds) {
      const pack = drawPack(exposed.point, 'down', seed)
      const picture = takeRadiograph(exposed, pack, [])
      picture.channels.forEach((channel, c) => {
        totals[c]! += meanOverRead(channel, picture.pixels, pack.view) / seeds.length
      })
    }
    totals.forEach((mean, c) => {
      expect(Math.abs(mean / expected[c]! - 1), `channel ${c}: ${mean} against ${expected[c]}`).toBeLessThan(
        tolerance,
      )
    })
  })

  it('holds packing × height of solid food over what is read', () => {
    const exposed = exposedFor(sampleBrief('almond'), 'xray-dual', 90)
    const pack = drawPack(exposed.point, 'down', 4)
    const { cells } = gridsFor(pack, exposed.objectPixelMm)
    const mean = meanOverRead(pathMaps(pack, cells).foodMm, cells, pack.view)
    const { packing } = exposed.point.product
    expect(mean / (packing * exposed.point.heightMm)).toBeCloseTo(1, 2)
  })
})

describe('noise of a flat block', () => {
  const flat = sampleBrief('cheddar', {}, { unevennessMm: 0 })

  it.each([
    ['xray-single', 60],
    ['xray-dual', 90],
    ['xray-dual-fine', 90],
  ] as const)('%s has the noise density the chain computes, alike at every frequency', (machine, kV) => {
    const exposed = exposedFor(flat, machine, kV)
    const n = exposed.channels.count
    const uncancelled = {
      coefficients: exposed.channels.weights.slice(0, -1).map(() => [0, 0, 0, 0] as const),
      centre: 0,
    }
    const noises = [11, 12, 13, 14].map((seed) => {
      const pack = drawPack(exposed.point, 'down', seed)
      const area = readArea(pack.view, takeRadiograph(exposed, pack, []), uncancelled)
      return measureNoise(area, area.mask, false)
    })
    for (let c = 0; c < n; c++) {
      const computed = exposed.channels.photonNoise[c]! + exposed.channels.readNoise[c]!
      for (const [from, to] of [
        [0.2, 0.5],
        [0.5, 0.8],
      ] as const) {
        let sum = 0
        let count = 0
        for (const noise of noises) {
          for (let ring = 1; ring < noise.rings; ring++) {
            const share = ring * noise.stepPerMm * 2 * exposed.objectPixelMm
            if (share < from || share > to) continue
            sum += ring * noise.covariance[(ring * n + c) * n + c]!
            count += ring
          }
        }
        // 19 000 independent numbers in the lower band of the coarse machines: 1 % standard error.
        expect(Math.abs(sum / count / computed - 1), `channel ${c}, ${from} to ${to}`).toBeLessThan(0.035)
      }
    }
  })
})

describe('a piece in the beam', () => {
  const at = { contaminant: 0, lengthMm: 0, faceMm2: 0, angle: 0, u: 75, v: 55 } as const

  function signalLost(exposed: ExposedPack, piece: Piece): number {
    const pack = drawPack(exposed.point, 'down', 21)
    const without = takeRadiograph(exposed, pack, [])
    const withPiece = takeRadiograph(exposed, pack, [piece])
    return lost(without, withPiece)
  }

  /** ∬ of the relative signal drop, mm², from two pictures with the same noise. */
  function lost(without: Radiograph, withPiece: Radiograph): number {
    const { pitchMm } = without.pixels
    let sum = 0
    without.channels[0]!.forEach((g, i) => {
      sum += 1 - Math.exp(g - withPiece.channels[0]![i]!)
    })
    return sum * pitchMm * pitchMm
  }

  it('takes away the signal its volume integral says (sphere, thin)', () => {
    const exposed = exposedFor(sampleBrief('cheddar', {}, { unevennessMm: 0 }), 'xray-single', 60)
    const piece: Piece = {
      ...at,
      material: 'glass_container',
      shape: 'sphere',
      sizeMm: 2,
      placement: 'outside',
    }
    const { weights, bins } = exposed.channels
    const glassMu = materialAttenuation('glass_container')
    let expected = 0
    const steps = 400
    for (let s = 0; s < steps; s++) {
      const rho = ((s + 0.5) / steps) * 1
      const chord = 2 * Math.sqrt(1 - rho * rho)
      let drop = 0
      for (let i = 0; i < bins; i++) drop += weights[0]![i]! * (1 - Math.exp(-glassMu[i]! * chord))
      expected += 2 * Math.PI * rho * drop * (1 / steps)
    }
    expect(Math.abs(signalLost(exposed, piece) / expected - 1)).toBeLessThan(0.02)
  })

  it('inside a food of the same material changes nothing', () => {
    const exposed = exposedFor(sampleBrief('water', {}, { unevennessMm: 0 }), 'xray-single', 60)
    const piece: Piece = { ...at, material: 'water', shape: 'sphere', sizeMm: 6, placement: 'inside' }
    expect(Math.abs(signalLost(exposed, piece))).toBeLessThan(1e-3)
  })
})

describe('two energies', () => {
  it('cancel the pattern of the food that one energy shows', () => {
    const exposed = exposedFor(sampleBrief('almond'), 'xray-dual', 90)
    const pack = drawPack(exposed.point, 'down', 5)
    const picture = takeRadiograph(exposed, pack, [])
    const area = readArea(pack.view, picture, foodCurve(exposed))
    const noise = measureNoise(area, area.mask, false)
    const grainRing = Math.round(1 / exposed.point.product.grainMm / noise.stepPerMm)
    const cancelled = noise.covariance[grainRing * 4]!
    const plain = noise.covariance[grainRing * 4 + 3]!
    expect(plain / cancelled).toBeGreaterThan(20)
  })
})
