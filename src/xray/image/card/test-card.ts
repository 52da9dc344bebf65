import type { Contaminant, Point } from '../../../contract/index.ts'
import { letterRoomMm } from '../draw/card-picture.ts'
import { randomStream } from '../food/random.ts'
import { type DrawnPack, drawPack } from '../pack/drawn-pack.ts'
import type { ExposedPack } from '../pack/exposed-pack.ts'
import { viewOf } from '../pack/view.ts'
import type { ReadingOptions } from '../read/reading.ts'
import { type CardRow, type CardSheet, layCard } from './card-layout.ts'
import { type CardRun, cleanRunOf, runOf, type Tally } from './card-run.ts'
import {
  type PictureKind,
  type ReadSheet,
  readSheet,
  type SheetPicture,
  sheetPictures,
} from './machine-card.ts'

/** The packs of one view with the card laid on them; machines of the same view share them. */
export interface CardPacks {
  readonly point: Point
  readonly beam: 'down' | 'side'
  readonly seed: number
  readonly contaminants: readonly Contaminant[]
  readonly rows: readonly CardRow[]
  readonly sheets: readonly CardSheet[]
  /** Pieces for which the packs have no room. */
  readonly leftOff: number
  /** mm of the picture plane per dot of the pictures. */
  readonly dotMm: number
  readonly kept: Map<number, DrawnPack>
}

/** Dots along the longer side of a picture, at least. */
const PICTURE_DOTS = 600
/** Repeats and sheets have packs of their own; primes keep them apart from the next seeds. */
const NEXT_SHEET = 7919
const NEXT_REPEAT = 104_729
const CLEAN = 15_485_863

/** Lays a card over the packs of a view. finestPixelMm: smallest object-plane pixel of the machines compared. */
export function cardPacks(
  point: Point,
  beam: 'down' | 'side',
  seed: number,
  rows: readonly CardRow[],
  finestPixelMm: number,
): CardPacks {
  const view = viewOf(point, beam)
  const dotMm = Math.min(finestPixelMm, Math.max(view.uMm, view.vMm) / PICTURE_DOTS)
  const { sheets, leftOff } = layCard(view, rows, letterRoomMm(dotMm), randomStream(seed, `card ${beam}`))
  const contaminants = rows.map((row) => ({ ...row.what, placement: row.placement }))
  return { point, beam, seed, contaminants, rows, sheets, leftOff, dotMm, kept: new Map() }
}

/** The pack of a seed; those of the first run are kept for the next machine. */
function packOf(packs: CardPacks, seed: number, keep: boolean): DrawnPack {
  const pack = packs.kept.get(seed) ?? drawPack(packs.point, packs.beam, seed)
  if (keep) packs.kept.set(seed, pack)
  return pack
}

export interface CardTask {
  readonly reading: ReadingOptions & { readonly compositionResidual: number }
  readonly runs: number
  readonly cleanPacks: number
  readonly marks: boolean
  /** Words under a picture: its sheet, its kind and what was read. */
  readonly linesFor: (sheet: number, kind: PictureKind, read: ReadSheet) => readonly string[]
}

/** What one machine made of the card. */
export interface MachineCard {
  readonly threshold: number
  readonly filters: number
  /** Of the first run: pieces found and detections that belong to none. */
  readonly found: number
  readonly falseAlarms: number
  readonly pieces: number
  readonly pictures: readonly (SheetPicture & { readonly sheet: number })[]
  readonly runs: readonly CardRun[]
}

/** Runs the card through a machine. Throws RangeError where the pack leaves nothing to read. */
export function runCard(exposed: ExposedPack, packs: CardPacks, task: CardTask): MachineCard {
  const pictures: (SheetPicture & { sheet: number })[] = []
  const runs: CardRun[] = []
  let [threshold, filters, found, falseAlarms, pieces] = [0, 0, 0, 0, 0]
  packs.sheets.forEach((sheet, s) => {
    const tallies = sheet.pieces.map((piece): Tally => ({ piece, found: 0, signals: [] }))
    for (let run = 0; run < task.runs; run++) {
      const pack = packOf(packs, packs.seed + s * NEXT_SHEET + run * NEXT_REPEAT, run === 0)
      const read = readSheet(exposed, pack, sheet, packs.contaminants, task.reading)
      read.score.results.forEach((result, i) => {
        tallies[i]!.found += result.found ? 1 : 0
        if (result.signal !== null) tallies[i]!.signals.push(result.signal)
      })
      if (run > 0) continue
      threshold = read.reading.threshold
      filters = read.reading.filters.length
      found += read.score.results.filter((r) => r.found).length
      falseAlarms += read.score.falseAlarms.length
      pieces += sheet.pieces.length
      const words = {
        dotMm: packs.dotMm,
        marks: task.marks,
        linesFor: (kind: PictureKind) => task.linesFor(s, kind, read),
      }
      pictures.push(
        ...sheetPictures(exposed, sheet, read, words).map((picture) => ({ ...picture, sheet: s })),
      )
    }
    runs.push(
      ...tallies.map((tally, i) => runOf(exposed.machine.id, s, i, tally, task.runs, threshold, packs.seed)),
    )
  })
  if (task.cleanPacks > 0) runs.push(cleanRun(exposed, packs, task))
  return { threshold, filters, found, falseAlarms, pieces, pictures, runs }
}

/** Packs without pieces: how many were rejected. */
function cleanRun(exposed: ExposedPack, packs: CardPacks, task: CardTask): CardRun {
  const empty: CardSheet = { pieces: [], captions: [] }
  let rejected = 0
  let threshold = 0
  for (let k = 0; k < task.cleanPacks; k++) {
    const pack = packOf(packs, packs.seed + CLEAN + k * NEXT_REPEAT, false)
    const { reading } = readSheet(exposed, pack, empty, packs.contaminants, task.reading)
    threshold = reading.threshold
    if (reading.detections.length > 0) rejected++
  }
  return cleanRunOf(exposed.machine.id, task.cleanPacks, rejected, threshold, packs.seed)
}
