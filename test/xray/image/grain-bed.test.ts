import { describe, expect, it } from 'vitest'
import { fft2d } from '../../../src/numerics/fft.ts'
import { grainBody } from '../../../src/xray/image/food/grain-body.ts'
import { addGrain } from '../../../src/xray/image/food/grain-chords.ts'
import { fallenAxes, lyingGrain, plateSphereMm } from '../../../src/xray/image/food/grain-lie.ts'
import { type GrainShape, grainShape } from '../../../src/xray/image/food/grain-shapes.ts'
import { CARD_BED } from '../../../src/xray/image/food/grain-tile.ts'
import { randomStream } from '../../../src/xray/image/food/random.ts'
import { addField, randomFields } from '../../../src/xray/image/food/random-field.ts'
import { type Raster, rasterOver } from '../../../src/xray/image/food/raster.ts'
import { relaxedTile, type Tile } from '../../../src/xray/image/food/relaxed-tile.ts'
import { grainNoiseShape, unevennessNoisePower } from '../../../src/xray/noise/texture.ts'

const SIDE_MM = 150
const DEPTH_MM = 60
const GRAIN_MM = 10
const raster = rasterOver(0, 0, SIDE_MM, SIDE_MM, 0.5)

/** Noise power (unit² mm²) of a patch of a picture between two frequencies, Hann window, mean taken off. */
function powerBetween(values: Float32Array, grid: Raster, side: number, fromPerMm: number, toPerMm: number) {
  const start = (grid.columns - side) >> 1
  const at = (x: number, y: number) => values[(start + y) * grid.columns + start + x]!
  let mean = 0
  for (let y = 0; y < side; y++) for (let x = 0; x < side; x++) mean += at(x, y) / side ** 2
  const re = new Float64Array(side * side)
  const im = new Float64Array(side * side)
  let weight = 0
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const w = (Math.sin((Math.PI * (x + 0.5)) / side) * Math.sin((Math.PI * (y + 0.5)) / side)) ** 2
      re[y * side + x] = w * (at(x, y) - mean)
      weight += w * w
    }
  }
  fft2d(re, im, side, side)
  let sum = 0
  let count = 0
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const f = Math.hypot(Math.min(x, side - x), Math.min(y, side - y)) / (side * grid.pitchMm)
      if (f < fromPerMm || f > toPerMm) continue
      sum += re[y * side + x]! ** 2 + im[y * side + x]! ** 2
      count++
    }
  }
  return (sum / count / weight) * grid.pitchMm ** 2
}

/** Path through a tile in every cell of a grid that covers it once. */
function pathThrough(shape: GrainShape, tile: Tile, grid: Raster): Float32Array {
  const path = new Float32Array(grid.columns * grid.rows)
  const { sideMm } = tile
  for (const { body, u, v, axes } of tile.grains)
    for (const du of [-sideMm, 0, sideMm])
      for (const dv of [-sideMm, 0, sideMm])
        addGrain(path, grid, lyingGrain(shape.kind, body, u + du, v + dv, axes))
  return path
}

const ball: GrainShape = { kind: 'ellipsoid', axesMm: [1, 1, 1], spread: 0, tilt: 1 }
function pathOfSpheres(packing: number, seed: number): Float32Array {
  const random = randomStream(seed, 'test')
  return pathThrough(
    ball,
    relaxedTile(ball, packing, GRAIN_MM, SIDE_MM, DEPTH_MM, 'down', random, CARD_BED.mostSweeps),
    raster,
  )
}

describe('a relaxed bed', () => {
  it.each([
    ['almond', 'granular', 0.55, 12, 20],
    ['beans_frozen', 'granular', 0.53, 9, 30],
    ['cereal_flakes', 'plates', 0.2, 1.2, 50],
  ] as const)(
    'of %s is nowhere thicker than deep, and as full as stated',
    (food, structure, packing, grainMm, depthMm) => {
      const shape = grainShape(food, structure)
      const sphereMm = structure === 'plates' ? plateSphereMm(shape, grainMm) : grainMm
      const tile = relaxedTile(
        shape,
        packing,
        sphereMm,
        100,
        depthMm,
        'down',
        randomStream(3, food),
        CARD_BED.mostSweeps,
      )
      const grid = rasterOver(0, 0, 100, 100, 0.4)
      const path = pathThrough(shape, tile, grid)
      const mean = path.reduce((sum, mm) => sum + mm, 0) / path.length
      expect(mean / (packing * depthMm)).toBeCloseTo(1, 2)
      // What is left of overlaps is cut off when a pack is drawn: one place in two thousand at most.
      expect(path.filter((mm) => mm > depthMm).length / path.length).toBeLessThan(0.0005)
      expect(tile.worstOverlapMm).toBeLessThan(0.05 * sphereMm)
    },
  )
})

describe('a drawn bed of round grains', () => {
  it.each([0.45, 0.57, 0.6])('shows the grain pattern of the hard-sphere table at packing %f', (packing) => {
    const seeds = [1, 2, 3]
    const paths = seeds.map((seed) => pathOfSpheres(packing, seed))
    for (const [from, to] of [
      [0.3, 0.8],
      [0.8, 1.25],
    ] as const) {
      const drawn =
        paths.reduce(
          (sum, path) => sum + powerBetween(path, raster, 256, from / GRAIN_MM, to / GRAIN_MM),
          0,
        ) / seeds.length
      let weighted = 0
      let weight = 0
      for (let x = from; x <= to; x += 0.01) {
        weighted += x * grainNoiseShape(x, packing)
        weight += x
      }
      const table = packing * (1 - packing) * DEPTH_MM * GRAIN_MM ** 3 * (weighted / weight)
      expect(drawn / table, `fD ${from} to ${to}`).toBeGreaterThan(0.75)
      expect(drawn / table, `fD ${from} to ${to}`).toBeLessThan(1.3)
    }
  })

  it('holds the solid volume that packing and extent say', () => {
    const path = pathOfSpheres(0.57, 9)
    const volume = path.reduce((sum, mm) => sum + mm, 0) * raster.pitchMm ** 2
    expect(volume / (0.57 * SIDE_MM ** 2 * DEPTH_MM)).toBeCloseTo(1, 1)
  })
})

describe('a grain', () => {
  const fine = rasterOver(0, 0, 60, 60, 0.1)
  const volumeOf = (food: string, structure: string, seed: number) => {
    const path = new Float32Array(fine.columns * fine.rows)
    const shape = grainShape(food, structure)
    const axes = fallenAxes(shape, 'down', randomStream(seed, 'lie'))
    const grain = lyingGrain(shape.kind, grainBody(shape, 5), 30, 30, axes, shape)
    addGrain(path, fine, grain)
    return path.reduce((sum, mm) => sum + mm, 0) * fine.pitchMm ** 2
  }

  it.each([
    ['rice', 'granular'],
    ['fries_frozen', 'granular'],
    ['biscuit', 'plates'],
    ['anything', 'granular'],
    ['strawberry_frozen', 'granular'],
    ['hazelnut', 'granular'],
    ['almond', 'granular'],
  ])('of %s keeps the volume of its sphere however it lies', (food, structure) => {
    for (const seed of [1, 2, 3])
      expect(volumeOf(food, structure, seed) / ((4 / 3) * Math.PI * 125)).toBeCloseTo(1, 1)
  })

  it('of a pod that stands up shows the round end of its length, and no more', () => {
    const path = new Float32Array(fine.columns * fine.rows)
    const [u, v, radius, length] = [30, 30, 3, 20]
    addGrain(path, fine, { kind: 'bar', u, v, radius, length, direction: [0, 0, 1], roundEnds: true })
    const at = (x: number) => path[300 * fine.columns + Math.round(10 * x)]!
    expect(at(30)).toBeCloseTo(length, 1)
    expect(at(32) / (length - 2 * radius + 2 * Math.sqrt(5))).toBeCloseTo(1, 1)
    expect(at(33.2)).toBe(0)
  })

  it('of a strawberry has seeds in its skin, of a hazelnut a hollow core', () => {
    const middle = (food: string) => {
      const path = new Float32Array(fine.columns * fine.rows)
      const shape = grainShape(food, 'granular')
      const lie = [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ] as const
      addGrain(path, fine, lyingGrain(shape.kind, grainBody(shape, 10), 30, 30, lie, shape))
      return (x: number) => path[300 * fine.columns + Math.round(10 * x)]!
    }
    const nut = middle('hazelnut')
    expect(nut(30)).toBeLessThan(0.8 * nut(35))
    const berry = middle('strawberry_frozen')
    const along = Array.from({ length: 121 }, (_, i) => berry(24 + i / 10))
    const turns = along.filter((mm, i) => i > 0 && i < 120 && mm > along[i - 1]! && mm >= along[i + 1]!)
    expect(turns.length).toBeGreaterThanOrEqual(2)
  })

  it('of plates has the thickness given', () => {
    const shape = grainShape('biscuit', 'plates')
    const sphereMm = plateSphereMm(shape, 7)
    const axes = fallenAxes(shape, 'down', randomStream(1, 'lie'))
    const grain = lyingGrain(shape.kind, grainBody(shape, sphereMm / 2), 0, 0, axes)
    expect(grain.kind === 'bar' && grain.length).toBeCloseTo(7, 6)
  })
})

describe('a random surface', () => {
  it('has the noise power it was drawn with', () => {
    const area = rasterOver(0, 0, 180, 180, 1)
    const power = (f: number) => unevennessNoisePower(f, 1)
    const grid = rasterOver(0, 0, 180, 180, 0.5)
    const surfaces = [1, 2, 3].flatMap((seed) => [
      ...randomFields(area, power, randomStream(seed, 'surface')),
    ])
    for (const [from, to] of [
      [0.06, 0.12],
      [0.12, 0.25],
      [0.25, 0.5],
    ] as const) {
      let drawn = 0
      for (const surface of surfaces) {
        const values = new Float32Array(grid.columns * grid.rows)
        addField(values, grid, surface, 1)
        drawn += powerBetween(values, grid, 324, from, to) / surfaces.length
      }
      let weighted = 0
      let weight = 0
      for (let f = from; f <= to; f += 0.001) {
        weighted += f * power(f)
        weight += f
      }
      expect(drawn / (weighted / weight), `${from} to ${to} per mm`).toBeGreaterThan(0.85)
      expect(drawn / (weighted / weight), `${from} to ${to} per mm`).toBeLessThan(1.15)
    }
  })
})
