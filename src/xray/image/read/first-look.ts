import type { ExposedPack } from '../pack/exposed-pack.ts'
import type { ReadArea } from './read-area.ts'

/** Pixels finer than this are taken two by two for a first look, mm (judgement: what stands out is larger). */
const FINE_MM = 0.5

/** The same machine and area for a first look that only has to find what stands out: fine pixels two by two. */
export function forFirstLook(exposed: ExposedPack, area: ReadArea): { exposed: ExposedPack; area: ReadArea } {
  if (area.pixels.pitchMm >= FINE_MM) return { exposed, area }
  const { build, objectPixelMm } = exposed
  return {
    exposed: {
      ...exposed,
      objectPixelMm: 2 * objectPixelMm,
      build: { ...build, blurPixels: build.blurPixels / 2 },
    },
    area: halved(area),
  }
}

/** Means of two by two pixels; read where all four are. An odd last row or column is left off. */
function halved({ pixels, mask, channels }: ReadArea): ReadArea {
  const columns = pixels.columns >> 1
  const rows = pixels.rows >> 1
  const half = new Uint8Array(columns * rows)
  const means = channels.map(() => new Float32Array(columns * rows))
  let readPixels = 0
  for (let row = 0, at = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, at++) {
      const a = 2 * row * pixels.columns + 2 * column
      const b = a + pixels.columns
      half[at] = mask[a]! & mask[a + 1]! & mask[b]! & mask[b + 1]!
      readPixels += half[at]!
      for (let c = 0; c < channels.length; c++) {
        const values = channels[c]!
        means[c]![at] = (values[a]! + values[a + 1]! + values[b]! + values[b + 1]!) / 4
      }
    }
  }
  const raster = { ...pixels, pitchMm: 2 * pixels.pitchMm, columns, rows }
  return { pixels: raster, mask: half, readPixels, channels: means }
}
