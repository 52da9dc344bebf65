import type { Contaminant } from '../../../contract/index.ts'
import type { Canvas } from '../draw/canvas.ts'
import { drawPicture, type PlacedMark } from '../draw/card-picture.ts'
import { differenceWindow, type GreyWindow, packWindow, smoothed } from '../draw/grey-window.ts'
import type { DrawnPack } from '../pack/drawn-pack.ts'
import type { ExposedPack } from '../pack/exposed-pack.ts'
import { halfExtents } from '../pack/piece.ts'
import { type Radiograph, takeRadiograph } from '../pack/radiograph.ts'
import { foodCurve, withoutFood } from '../read/cancel-food.ts'
import { type Reading, type ReadingOptions, readRadiograph } from '../read/reading.ts'
import { type Score, scoreReading } from '../read/scoring.ts'
import type { CardSheet } from './card-layout.ts'

export type PictureKind = 'plain' | 'food cancelled' | 'background flattened'

/** One picture of a sheet. */
export interface SheetPicture {
  readonly kind: PictureKind
  readonly canvas: Canvas
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

/** Room between a mark and what it surrounds, mm. */
export const MARK_ROOM_MM = 2

/** Boxes around what was found, rings around what was missed, triangles on false alarms. */
export function marksOf({ reading, score }: ReadSheet): PlacedMark[] {
  const half = reading.area.pixels.pitchMm / 2
  const marks: PlacedMark[] = score.results.map(({ piece, found }) => {
    const { alongMm, acrossMm } = halfExtents(piece)
    return {
      mark: found ? 'found' : 'missed',
      u: piece.u,
      v: piece.v,
      halfU: Math.max(alongMm + MARK_ROOM_MM, half),
      halfV: Math.max(acrossMm + MARK_ROOM_MM, half),
    }
  })
  for (const d of score.falseAlarms) {
    const size = Math.max(d.toU - d.fromU, d.toV - d.fromV) / 2 + MARK_ROOM_MM / 2
    marks.push({
      mark: 'false alarm',
      u: (d.fromU + d.toU) / 2,
      v: (d.fromV + d.toV) / 2,
      halfU: size,
      halfV: size,
    })
  }
  return marks
}

export interface SheetWords {
  readonly dotMm: number
  readonly marks: boolean
  readonly linesFor: (kind: PictureKind) => readonly string[]
}

/** The two pictures of a sheet: plain, and the food cancelled (two energies) or the background flattened. */
export function sheetPictures(
  exposed: ExposedPack,
  sheet: CardSheet,
  read: ReadSheet,
  words: SheetWords,
): SheetPicture[] {
  const { picture, reading } = read
  const whole = onWhole(picture, reading, Uint8Array.from(reading.area.mask))
  const marks = words.marks ? marksOf(read) : []
  const draw = (kind: PictureKind, values: Float32Array, window: GreyWindow): SheetPicture => ({
    kind,
    canvas: drawPicture({
      pixels: picture.pixels,
      values,
      window,
      dotMm: words.dotMm,
      pieces: sheet.pieces,
      captions: sheet.captions,
      marks,
      lines: words.linesFor(kind),
    }),
  })
  const plain = picture.channels[0]!
  const { columns, rows } = picture.pixels
  const pictures = [draw('plain', plain, packWindow(plain, whole))]
  if (picture.channels.length > 1) {
    const difference = smoothed(withoutFood(foodCurve(exposed), picture.channels, 0), columns, rows)
    pictures.push(draw('food cancelled', difference, differenceWindow(difference, whole)))
  } else {
    const flat = onWhole(picture, reading, reading.area.channels[0]!)
    pictures.push(draw('background flattened', flat, differenceWindow(flat, whole)))
  }
  return pictures
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
