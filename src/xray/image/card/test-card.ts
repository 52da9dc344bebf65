import type { Contaminant, Point } from '../../../contract/index.ts'
import { gumbelUpper } from '../../../numerics/gumbel.ts'
import { foodWindow, type GreyWindow } from '../draw/grey-window.ts'
import { foodPathMm } from '../food/food-path.ts'
import { type Bed, CARD_BED } from '../food/grain-tile.ts'
import { randomStream } from '../food/random.ts'
import { rasterOver } from '../food/raster.ts'
import { type DrawnPack, drawPack } from '../pack/drawn-pack.ts'
import type { ExposedPack } from '../pack/exposed-pack.ts'
import { viewOf } from '../pack/view.ts'
import type { ReadingOptions } from '../read/reading.ts'
import { type CardRow, type CardSheet, layCard } from './card-layout.ts'
import { type CardRun, cleanRunOf, runOf, type Tally } from './card-run.ts'
import { type FoodTakenOff, foodTakenOff } from './food-taken-off.ts'
import { marksOf, readSheet, type SheetMarks, type SheetPicture, sheetPictures } from './machine-card.ts'

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
  /** The one grey scale of their plain pictures, mm of solid food. */
  readonly window: GreyWindow
  readonly kept: Map<number, DrawnPack>
  /** The bed its grains are cut from. */
  readonly bed: Bed
}

/** Repeats and sheets have packs of their own; primes keep them apart from the next seeds. */
const NEXT_SHEET = 7919
const NEXT_REPEAT = 104_729
const CLEAN = 15_485_863

/** Lays a card over the packs of a view. */
export function cardPacks(
  point: Point,
  beam: 'down' | 'side',
  seed: number,
  rows: readonly CardRow[],
  bed: Bed = CARD_BED,
): CardPacks {
  const view = viewOf(point, beam)
  const { sheets, leftOff } = layCard(view, rows, randomStream(seed, `card ${beam}`))
  const contaminants = rows.map((row) => ({ ...row.what, placement: row.placement }))
  const pack = drawPack(point, beam, seed, bed)
  const window = foodWindow(foodPathMm(pack.food, rasterOver(0, 0, view.uMm, view.vMm, 1)))
  return {
    point,
    beam,
    seed,
    contaminants,
    rows,
    sheets,
    leftOff,
    window,
    kept: new Map([[seed, pack]]),
    bed,
  }
}

/** The pack of a seed; those of the first run are kept for the next machine. */
function packOf(packs: CardPacks, seed: number, keep: boolean): DrawnPack {
  const pack = packs.kept.get(seed) ?? drawPack(packs.point, packs.beam, seed, packs.bed)
  if (keep) packs.kept.set(seed, pack)
  return pack
}

export interface CardTask {
  readonly reading: ReadingOptions & { readonly compositionResidual: number }
  readonly runs: number
  readonly cleanPacks: number
  /** Clean packs the machine is taught on before it reads; 0 or at least {@link FEWEST_TAUGHT}. */
  readonly taughtPacks: number
}

/** A sheet of the first run as a machine saw it. */
export interface DoneSheet extends SheetMarks {
  readonly pictures: readonly SheetPicture[]
  readonly foodTakenOff: FoodTakenOff | null
}

/** What one machine made of the card. */
export interface MachineCard {
  readonly threshold: number
  readonly filters: number
  /** Of the first run. */
  readonly sheets: readonly DoneSheet[]
  readonly runs: readonly CardRun[]
}

/** Fewer clean packs than this show no tail. */
export const FEWEST_TAUGHT = 10
const TAUGHT = 32_452_843

/**
 * The threshold that clean packs teach a machine: the largest answer in each, and of these a fitted tail (Gumbel) at the
 * false rejects asked for.
 */
export function taughtByPacks(exposed: ExposedPack, packs: CardPacks, task: CardTask): number {
  const empty: CardSheet = { pieces: [], lineEnds: [] }
  const largest: number[] = []
  for (let k = 0; k < task.taughtPacks; k++) {
    const pack = packOf(packs, packs.seed + TAUGHT + k * NEXT_REPEAT, false)
    const { scores } = readSheet(exposed, pack, empty, packs.contaminants, task.reading).reading.scores
    largest.push(scores.reduce((most, score) => Math.max(most, score), 0))
  }
  return gumbelUpper(largest, Math.min(0.5, task.reading.falseRejectsPerPack / exposed.build.views))
}

/** Runs the card through a machine. Throws RangeError where the pack leaves nothing to read. */
export function runCard(exposed: ExposedPack, packs: CardPacks, asked: CardTask): MachineCard {
  const task = asked.taughtPacks === 0 ? asked : taught(exposed, packs, asked)
  const sheets: DoneSheet[] = []
  const runs: CardRun[] = []
  let [threshold, filters] = [0, 0]
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
      sheets.push({
        ...marksOf(sheet, read),
        pictures: sheetPictures(exposed, read, packs.window),
        foodTakenOff: foodTakenOff(read, sheet.pieces),
      })
    }
    runs.push(
      ...tallies.map((tally, i) => runOf(exposed.machine.id, s, i, tally, task.runs, threshold, packs.seed)),
    )
  })
  if (task.cleanPacks > 0) runs.push(cleanRun(exposed, packs, task))
  return { threshold, filters, sheets, runs }
}

/** The task of a machine that stands where clean packs or the computed tail of its food put it, whichever is higher. */
function taught(exposed: ExposedPack, packs: CardPacks, task: CardTask): CardTask {
  const { reading } = task
  const threshold = Math.max(reading.taughtThreshold ?? 0, taughtByPacks(exposed, packs, task))
  return { ...task, reading: { ...reading, taughtThreshold: threshold } }
}

/** Packs without pieces: how many were rejected. */
function cleanRun(exposed: ExposedPack, packs: CardPacks, task: CardTask): CardRun {
  const empty: CardSheet = { pieces: [], lineEnds: [] }
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
