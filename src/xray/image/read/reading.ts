import type { Contaminant } from '../../../contract/index.ts'
import { normalUpperQuantile } from '../../../numerics/normal.ts'
import { columnMm, rowMm } from '../food/raster.ts'
import type { ExposedPack } from '../pack/exposed-pack.ts'
import type { Radiograph } from '../pack/radiograph.ts'
import type { View } from '../pack/view.ts'
import { foodCurve } from './cancel-food.ts'
import { type BestScores, bestScores, type Detection, detectionsAbove, patchesAbove } from './detections.ts'
import { chooseFilters, STANDS_IN, STANDS_IN_ROUGHLY } from './filter-bank.ts'
import { forFirstLook } from './first-look.ts'
import { measureNoise } from './measured-noise.ts'
import { inverseOfMeasured } from './noise-inverse.ts'
import { transformPicture } from './picture-transform.ts'
import { type ReadArea, readArea } from './read-area.ts'
import { scoreMaps } from './score-map.ts'
import { kindsOf, type Template } from './template.ts'

/** What a machine makes of one radiograph, without knowing what lies in it. */
export interface Reading {
  readonly area: ReadArea
  /** Answers above this count, in standard deviations of the noise. */
  readonly threshold: number
  /** Independent places read: area over the square of two pixels. */
  readonly positions: number
  readonly filters: readonly Template[]
  readonly scores: BestScores
  readonly detections: readonly Detection[]
}

export interface ReadingOptions {
  /** Length of a wire an image filter gathers, mm. */
  readonly gatheredWireMm: number
  readonly falseRejectsPerPack: number
  /** Threshold the machine was taught on clean packs; normal noise may ask for more. */
  readonly taughtThreshold?: number
  /** Largest piece looked for, mm. */
  readonly largestMm?: number
}

/** Answers that are left out of the noise on the second look, and the room around them, mm. */
const STANDS_OUT = 4.5
const ROOM_MM = 2.5

/**
 * Reads a radiograph the way a machine does: food cancelled and slow changes taken away; noise measured from
 * the picture (first by lower quartiles, then again without what stood out); a filter K⁻¹S per kind of thing; every
 * answer above the threshold that the false-reject rate, the places and the filters ask for, or that it was taught.
 */
export function readRadiograph(
  exposed: ExposedPack,
  view: View,
  picture: Radiograph,
  contaminants: readonly Contaminant[],
  options: ReadingOptions,
): Reading {
  const curve = foodCurve(exposed)
  const area = readArea(view, picture, curve)
  const kinds = kindsOf(exposed, contaminants, options.gatheredWireMm)
  const positions = Math.max(1, area.readPixels / 4)
  const thresholdFor = (filters: number) =>
    normalUpperQuantile(
      Math.min(0.5, options.falseRejectsPerPack / exposed.build.views / positions / Math.max(1, filters)),
    )
  const look = (by: ExposedPack, at: ReadArea, usable: Uint8Array, first: boolean) => {
    const inverse = inverseOfMeasured(measureNoise(at, usable, first), at.pixels.pitchMm)
    const standsIn = first ? STANDS_IN_ROUGHLY : STANDS_IN
    const filters = chooseFilters(by, curve, kinds, inverse, thresholdFor(1), standsIn, options.largestMm)
    const maps = scoreMaps(at, usable, transformPicture(by, at), filters, inverse)
    return { filters, scores: bestScores(maps, at.mask.length) }
  }
  const coarse = forFirstLook(exposed, area)
  const first = look(coarse.exposed, coarse.area, coarse.area.mask, true)
  const outstanding = patchesAbove(coarse.area, first.scores, STANDS_OUT)
  const { filters, scores } = look(exposed, area, without(area, outstanding), false)
  const threshold = Math.max(options.taughtThreshold ?? 0, thresholdFor(filters.length))
  return { area, threshold, positions, filters, scores, detections: detectionsAbove(area, scores, threshold) }
}

/** The mask without patches and the room around them. */
function without(area: ReadArea, patches: readonly Detection[]): Uint8Array {
  const usable = Uint8Array.from(area.mask)
  const { pixels } = area
  for (const patch of patches) {
    for (let row = 0; row < pixels.rows; row++) {
      const v = rowMm(pixels, row)
      if (v < patch.fromV - ROOM_MM || v > patch.toV + ROOM_MM) continue
      for (let column = 0; column < pixels.columns; column++) {
        const u = columnMm(pixels, column)
        if (u >= patch.fromU - ROOM_MM && u <= patch.toU + ROOM_MM) usable[row * pixels.columns + column] = 0
      }
    }
  }
  return usable
}
