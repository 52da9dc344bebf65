import { fastLength, fft2d } from '../../../numerics/fft.ts'
import type { Random } from './random.ts'
import { columnMm, type Raster, rasterOver, rowMm } from './raster.ts'

/** Spacing at which random surfaces are drawn, mm: their spectrum is spent well before its Nyquist frequency. */
export const FIELD_PITCH_MM = 0.4
/** Room added so that opposite edges of the (cyclic) field do not resemble each other, mm. */
const APART_MM = 16

/** A drawn random surface on its own coarse grid. */
export interface RandomField {
  readonly raster: Raster
  readonly values: Float64Array
}

/**
 * Two independent Gaussian surfaces with a given noise power (unit of the surface squared × mm², of the
 * frequency in 1/mm) over the area of a grid, which they may only be read on: white noise weighted with the root of the power, transformed; the real and the imaginary part are the two surfaces.
 * stretch: the pattern is so many times as long (u) as wide (v), its variance kept.
 */
export function randomFields(
  area: Raster,
  power: (perMm: number) => number,
  random: Random,
  stretch = 1,
): readonly [RandomField, RandomField] {
  const pitch = FIELD_PITCH_MM
  const columns = fastLength((area.columns * area.pitchMm + APART_MM) / pitch)
  const rows = fastLength((area.rows * area.pitchMm + APART_MM) / pitch)
  const raster = rasterOver(
    area.leftMm - APART_MM / 2,
    area.topMm - APART_MM / 2,
    columns * pitch,
    rows * pitch,
    pitch,
  )
  const re = new Float64Array(columns * rows)
  const im = new Float64Array(columns * rows)
  const cell = 1 / (columns * rows * pitch * pitch)
  const amplitude = tabulated((f) => Math.sqrt(power(f) * cell), Math.SQRT1_2 / pitch)
  for (let row = 0; row < rows; row++) {
    const fy = Math.min(row, rows - row) / (rows * pitch)
    for (let column = 0; column < columns; column++) {
      const fx = Math.min(column, columns - column) / (columns * pitch)
      const root = amplitude(Math.sqrt(fx * fx * stretch + (fy * fy) / stretch))
      re[row * columns + column] = root * random.normal()
      im[row * columns + column] = root * random.normal()
    }
  }
  re[0] = 0
  im[0] = 0
  fft2d(re, im, columns, rows, true)
  return [
    { raster, values: re },
    { raster, values: im },
  ]
}

/** A function of frequency read from a table of equal steps (fine against every scale in use). */
function tabulated(value: (f: number) => number, end: number): (f: number) => number {
  const steps = 8192
  const table = Float64Array.from({ length: steps + 2 }, (_, i) => value((i / steps) * end))
  return (f) => {
    const at = Math.min(steps, (f / end) * steps)
    const low = Math.floor(at)
    return table[low]! + (at - low) * (table[low + 1]! - table[low]!)
  }
}

/** Adds factor × a surface, read between its points by cubic pieces (Catmull & Rom 1974), to a finer grid. */
export function addField(into: Float32Array, raster: Raster, field: RandomField, factor: number): void {
  const across = cubicWeights(raster.columns, (i) => columnMm(raster, i), field.raster.leftMm, field.raster)
  const down = cubicWeights(raster.rows, (j) => rowMm(raster, j), field.raster.topMm, field.raster)
  const wide = field.raster.columns
  const line = new Float64Array(wide)
  for (let row = 0; row < raster.rows; row++) {
    const [y0, y1, y2, y3] = down.weights.subarray(row * 4, row * 4 + 4) as unknown as [
      number,
      number,
      number,
      number,
    ]
    const top = down.first[row]! * wide
    for (let i = 0; i < wide; i++) {
      const at = top + i
      const f = field.values
      line[i] = factor * (y0 * f[at]! + y1 * f[at + wide]! + y2 * f[at + 2 * wide]! + y3 * f[at + 3 * wide]!)
    }
    for (let column = 0; column < raster.columns; column++) {
      const at = across.first[column]!
      const w = column * 4
      into[row * raster.columns + column]! +=
        across.weights[w]! * line[at]! +
        across.weights[w + 1]! * line[at + 1]! +
        across.weights[w + 2]! * line[at + 2]! +
        across.weights[w + 3]! * line[at + 3]!
    }
  }
}

function cubicWeights(count: number, place: (i: number) => number, start: number, coarse: Raster) {
  const first = new Int32Array(count)
  const weights = new Float64Array(count * 4)
  for (let i = 0; i < count; i++) {
    const position = (place(i) - start) / coarse.pitchMm - 0.5
    const whole = Math.floor(position)
    const t = position - whole
    first[i] = whole - 1
    weights[i * 4] = ((-t + 2) * t - 1) * t * 0.5
    weights[i * 4 + 1] = ((3 * t - 5) * t * t + 2) * 0.5
    weights[i * 4 + 2] = ((-3 * t + 4) * t + 1) * t * 0.5
    weights[i * 4 + 3] = (t - 1) * t * t * 0.5
  }
  return { first, weights }
}
