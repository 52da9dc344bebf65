import { benchOf, xrayMachines } from '../../card/card-bench.ts'
import { type CardPicture, type DrawnSheet, drawnSheets, pngPictures } from '../../card/drawn-sheet.ts'
import { shownStretch } from '../../card/shown-stretch.ts'
import { taughtOn } from '../../card/taught-on.ts'
import type { Brief } from '../../contract/index.ts'
import type { CardRow, CardSheet } from '../../xray/image/card/card-layout.ts'
import { cardPacks, runCard } from '../../xray/image/card/test-card.ts'
import { type Random, randomStream } from '../../xray/image/food/random.ts'
import { halfExtents, type Piece } from '../../xray/image/pack/piece.ts'
import { readDepthMm, viewOf } from '../../xray/image/pack/view.ts'
import { PRACTICE } from '../../xray/observer/practice.ts'

export const ROUNDS = 10

/** How hard a round is: sizes over what the machine is expected to find, and how many pieces at least and at most. */
export const LEVELS = [
  { id: 'easy', words: 'Large pieces', sizes: [1.6, 2.6], pieces: [1, 3] },
  { id: 'limit', words: 'At the limit of the machine', sizes: [0.9, 1.5], pieces: [1, 3] },
  { id: 'hard', words: 'Below the limit too, and some packs are clean', sizes: [0.6, 1.2], pieces: [0, 3] },
] as const

export type Level = (typeof LEVELS)[number]

export interface SpotAsked {
  readonly point: number
  readonly machine: string
  readonly level: Level
  readonly seed: number
  /** 1 to ROUNDS. */
  readonly round: number
}

/** A pack with pieces somewhere, as one machine saw it and read it. */
export interface SpotRound {
  readonly sheet: DrawnSheet
  readonly pictures: readonly CardPicture[]
  readonly machineLabel: string
}

const EDGE_MM = 2
const APART_MM = 12
const TRIES = 60
const SMALLEST_MM = 0.3

/** Draws a round: the same for the same question, whoever asks. Null where the machine sees nothing of this pack. */
export function spotRound(brief: Brief, asked: SpotAsked): SpotRound | null {
  const point = brief.points[asked.point]!
  const [machine] = xrayMachines(brief, point, [asked.machine])
  const bench = benchOf(brief, asked.point, machine!)
  if (bench.leftOut !== '') return null
  const random = randomStream(asked.seed, `round ${asked.round} ${asked.level.id}`)
  const known = bench.expectedMm.flatMap((mm, contaminant) => (mm === null ? [] : [{ contaminant, mm }]))
  if (known.length === 0) return null
  const rows = known.map(({ contaminant }): CardRow => {
    const what = brief.contaminants[contaminant]!
    return { contaminant, what, placement: what.placement, sizesMm: [1] }
  })
  const { beam } = bench.exposed.build
  const shown = shownStretch(point)
  const pieces = scattered(brief, viewOf(shown, beam), known, asked.level, random)
  const sheet: CardSheet = { pieces, lineEnds: [] }
  const packs = { ...cardPacks(shown, beam, asked.seed * ROUNDS + asked.round, rows), sheets: [sheet] }
  const done = runCard(bench.exposed, packs, {
    reading: {
      gatheredWireMm: PRACTICE.gatheredWireMm,
      compositionResidual: PRACTICE.compositionResidual,
      falseRejectsPerPack: point.falseRejectsPerPack,
      taughtThreshold: taughtOn(bench.exposed),
      largestMm: Math.max(2, ...pieces.map(({ sizeMm }) => sizeMm)),
    },
    runs: 1,
    cleanPacks: 0,
    taughtPacks: 0,
  })
  const label = machine!.label ?? machine!.id
  return {
    sheet: drawnSheets(done.sheets, packs, done.threshold)[0]!,
    pictures: pngPictures(done.sheets, 'round', packs.seed, `${brief.title} by ${label}`),
    machineLabel: label,
  }
}

/** Pieces at places of their own, apart from one another, within what is read. */
function scattered(
  brief: Brief,
  view: ReturnType<typeof viewOf>,
  known: readonly { contaminant: number; mm: number }[],
  level: Level,
  random: Random,
): Piece[] {
  const [fewest, most] = level.pieces
  const wanted = fewest + Math.floor(random.uniform() * (most - fewest + 1))
  const pieces: Piece[] = []
  for (let i = 0; i < TRIES && pieces.length < wanted; i++) {
    const { contaminant, mm } = known[Math.floor(random.uniform() * known.length)]!
    const what = brief.contaminants[contaminant]!
    const factor = level.sizes[0] + random.uniform() * (level.sizes[1] - level.sizes[0])
    const shape = {
      shape: what.shape,
      sizeMm: Math.max(SMALLEST_MM, Math.round(10 * factor * mm) / 10),
      lengthMm: what.lengthMm ?? 0,
      faceMm2: what.faceMm2 ?? 0,
    }
    const reach = Math.max(...Object.values(halfExtents(shape)))
    const [u, v] = [random.uniform() * view.uMm, random.uniform() * view.vMm]
    if (readDepthMm(view, u, v) < reach + EDGE_MM) continue
    if (pieces.some((piece) => Math.hypot(piece.u - u, piece.v - v) < APART_MM + reach)) continue
    pieces.push({
      ...shape,
      contaminant,
      material: what.material,
      placement: what.placement,
      u,
      v,
      angle: what.shape === 'wire' ? Math.PI * random.uniform() : 0,
    })
  }
  return pieces
}
