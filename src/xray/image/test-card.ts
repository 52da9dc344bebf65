import type { Contaminant, Placement, Point, Shape } from '../../contract/index.ts'
import { type CardRow, type CardSheet, layCard } from './card-layout.ts'
import { letterRoomMm } from './card-picture.ts'
import { type DrawnPack, drawPack } from './drawn-pack.ts'
import type { ExposedPack } from './exposed-pack.ts'
import {
  type PictureKind,
  type ReadSheet,
  readSheet,
  type SheetPicture,
  sheetPictures,
} from './machine-card.ts'
import type { Piece } from './piece.ts'
import { randomStream } from './random.ts'
import type { ReadingOptions } from './reading.ts'
import { viewOf } from './view.ts'

/** One line of a table of test runs: a piece on one machine, or (material empty) packs without pieces. */
export interface CardRun {
  readonly equipment: string
  readonly piece: string
  readonly material: string
  readonly shape: Shape | ''
  readonly sizeMm: number | null
  readonly lengthMm: number | null
  readonly faceMm2: number | null
  readonly placement: Placement | ''
  readonly position: string
  readonly runs: number
  /** Pieces: runs in which it was found. Clean packs: packs rejected. */
  readonly found: number
  /** Mean over the runs of the strongest filter answer, standard deviations of the noise; null where not read. */
  readonly signal: number | null
  readonly threshold: number | null
  readonly note: string
}

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

interface Tally {
  readonly piece: Piece
  found: number
  signals: number[]
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

const rounded = (value: number, digits: number) => Number(value.toFixed(digits))

function runOf(
  equipment: string,
  sheet: number,
  index: number,
  { piece, found, signals }: Tally,
  runs: number,
  threshold: number,
  seed: number,
): CardRun {
  const mean = signals.length > 0 ? signals.reduce((sum, s) => sum + s, 0) / signals.length : null
  return {
    equipment,
    piece: `${sheet + 1}-${String(index + 1).padStart(2, '0')}`,
    material: piece.material,
    shape: piece.shape,
    sizeMm: piece.sizeMm,
    lengthMm: piece.shape === 'wire' ? piece.lengthMm : null,
    faceMm2: piece.shape === 'flake' ? piece.faceMm2 : null,
    placement: piece.placement,
    position: `${Math.round(piece.u)} mm along, ${Math.round(piece.v)} mm across`,
    runs,
    found,
    signal: mean === null ? null : rounded(mean, 2),
    threshold: rounded(threshold, 2),
    note: `simulated, seed ${seed}`,
  }
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
  return {
    equipment: exposed.machine.id,
    piece: 'clean packs',
    material: '',
    shape: '',
    sizeMm: null,
    lengthMm: null,
    faceMm2: null,
    placement: '',
    position: '',
    runs: task.cleanPacks,
    found: rejected,
    signal: null,
    threshold: rounded(threshold, 2),
    note: `simulated, seed ${packs.seed}`,
  }
}
