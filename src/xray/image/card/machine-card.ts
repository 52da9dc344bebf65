import type { Contaminant } from '../../../contract/index.ts'
import { foodEquivalentMm } from '../draw/food-equivalent.ts'
import { type GreyPicture, greyPicture } from '../draw/grey-picture.ts'
import { type GreyWindow, NOISE_WINDOW, noiseWidth, smoothed } from '../draw/grey-window.ts'
import type { Raster } from '../food/raster.ts'
import type { DrawnPack } from '../pack/drawn-pack.ts'
import type { ExposedPack } from '../pack/exposed-pack.ts'
import { halfExtents, type Piece } from '../pack/piece.ts'
import { type Radiograph, takeRadiograph } from '../pack/radiograph.ts'
import { foodCurve, withoutFood } from '../read/cancel-food.ts'
import { withoutMould } from '../read/read-area.ts'
import { type Reading, type ReadingOptions, readRadiograph } from '../read/reading.ts'
import { type Score, scoreReading } from '../read/scoring.ts'
import type { CardSheet } from './card-layout.ts'

export type PictureKind = 'plain' | 'food cancelled' | 'background flattened'

/** One picture of a sheet. */
export interface SheetPicture {
  readonly kind: PictureKind
  readonly grey: GreyPicture
}

/** A sheet as one machine saw and read it. */
export interface ReadSheet {
  readonly picture: Radiograph
  readonly reading: Reading
  readonly score: Score
}

/** Takes the radiograph of a sheet on a pack and reads it. Throws RangeError where nothing can be read. */
export function readSheet(
  exposed: ExposedPack,
  pack: DrawnPack,
  sheet: CardSheet,
  contaminants: readonly Contaminant[],
  options: ReadingOptions & { readonly compositionResidual: number },
): ReadSheet {
  const picture = takeRadiograph(exposed, pack, sheet.pieces, options.compositionResidual)
  const reading = readRadiograph(exposed, pack.view, picture, contaminants, options)
  return { picture, reading, score: scoreReading(reading, sheet.pieces) }
}

/** A rectangle of the picture plane, mm. */
export interface Frame {
  readonly leftMm: number
  readonly topMm: number
  readonly widthMm: number
  readonly heightMm: number
}

/** A piece as it lies in the picture and what the machine made of it. */
export interface PlacedPiece {
  readonly piece: Piece
  readonly halfU: number
  readonly halfV: number
  readonly found: boolean
  /** Filter answer, standard deviations of the noise; null where it is not read. */
  readonly signal: number | null
}

/** What a machine made of a sheet, for whoever draws it. */
export interface SheetMarks {
  readonly frame: Frame
  readonly pieces: readonly PlacedPiece[]
  readonly lineEnds: readonly number[]
  readonly falseAlarms: readonly { readonly u: number; readonly v: number; readonly halfMm: number }[]
}

function frameOf({ leftMm, topMm, pitchMm, columns, rows }: Raster): Frame {
  return { leftMm, topMm, widthMm: columns * pitchMm, heightMm: rows * pitchMm }
}

/** Where pieces and false alarms lie. */
export function marksOf(sheet: CardSheet, { picture, score }: ReadSheet): SheetMarks {
  return {
    frame: frameOf(picture.pixels),
    lineEnds: sheet.lineEnds,
    pieces: score.results.map(({ piece, found, signal }) => {
      const { alongMm, acrossMm } = halfExtents(piece)
      return { piece, halfU: alongMm, halfV: acrossMm, found, signal }
    }),
    falseAlarms: score.falseAlarms.map((d) => ({
      u: (d.fromU + d.toU) / 2,
      v: (d.fromV + d.toV) / 2,
      halfMm: Math.max(d.toU - d.fromU, d.toV - d.fromV) / 2,
    })),
  }
}

/** The two pictures of a sheet: plain, and the food cancelled (two energies) or the background flattened. */
export function sheetPictures(exposed: ExposedPack, read: ReadSheet, window: GreyWindow): SheetPicture[] {
  const { picture, reading } = read
  const { pixels, channels } = picture
  const inFood = channels[0]!.map(foodEquivalentMm(exposed, 2 * window.black))
  const plain: SheetPicture = { kind: 'plain', grey: greyPicture(pixels, inFood, window) }
  const mask = onWhole(picture, reading, reading.area.mask)
  const off =
    channels.length > 1
      ? smoothed(withoutFood(foodCurve(exposed), withoutMould(picture), 0), pixels.columns, pixels.rows)
      : onWhole(picture, reading, reading.area.channels[0]!)
  const width = noiseWidth(off, mask) || 1
  const kind = channels.length > 1 ? 'food cancelled' : 'background flattened'
  return [
    plain,
    {
      kind,
      grey: greyPicture(
        pixels,
        off.map((value) => value / width),
        NOISE_WINDOW,
      ),
    },
  ]
}

/** Values of the read area laid back into the whole picture; 0 around them. */
function onWhole<T extends Uint8Array | Float32Array>(picture: Radiograph, reading: Reading, values: T): T {
  const whole = picture.pixels
  const area = reading.area.pixels
  const left = Math.round((area.leftMm - whole.leftMm) / whole.pitchMm)
  const top = Math.round((area.topMm - whole.topMm) / whole.pitchMm)
  const result = new (values.constructor as new (length: number) => T)(whole.columns * whole.rows)
  for (let row = 0; row < area.rows; row++) {
    const line = values.subarray(row * area.columns, (row + 1) * area.columns) as never
    result.set(line, (top + row) * whole.columns + left)
  }
  return result
}
