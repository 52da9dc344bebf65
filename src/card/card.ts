import type { Brief, Placement } from '../contract/index.ts'
import { fileNames } from '../intake/file-name.ts'
import { type CardRow, rowWords } from '../xray/image/card/card-layout.ts'
import type { CardRun } from '../xray/image/card/card-run.ts'
import { cardSizes } from '../xray/image/card/card-sizes.ts'
import { type CardPacks, cardPacks, FEWEST_TAUGHT, runCard } from '../xray/image/card/test-card.ts'
import { NOISE_WINDOW } from '../xray/image/draw/grey-window.ts'
import { PRACTICE } from '../xray/observer/practice.ts'
import { type Bench, benchOf, CardError, xrayMachines } from './card-bench.ts'
import { boundPixels, pixelsOf } from './card-pixels.ts'
import { type CardPicture, type DrawnSheet, drawnSheets, pngPictures } from './drawn-sheet.ts'
import { shownStretch } from './shown-stretch.ts'
import { taughtOn } from './taught-on.ts'

export { CardError, type CardPicture, type CardRun, type DrawnSheet, FEWEST_TAUGHT }

export interface CardOptions {
  /** Whole number; the same seed gives the same bytes. 1 unless given. */
  readonly seed?: number
  /** Index of the inspection point; the first unless given. */
  readonly point?: number
  /** X-ray machines by id; every one of the point unless given. */
  readonly equipment?: readonly string[]
  /** Sizes per contaminant, mm; null or missing: the usual card. */
  readonly sizesMm?: readonly (readonly number[] | null)[]
  /** Where the pieces lie; as each contaminant of the brief says unless given. */
  readonly placement?: Placement
  /** Tube voltage by machine id, kV; chosen as for the advice unless given. The current follows from it. */
  readonly kV?: Readonly<Record<string, number>>
  /** Packs the card is run on; pictures and counts show the first. 1 unless given. */
  readonly runs?: number
  /** Packs without pieces, run as well. 0 unless given. */
  readonly cleanPacks?: number
  /** Clean packs each machine is taught on first (at least 10). 0 unless given: the threshold is computed. */
  readonly taughtPacks?: number
}

export interface CardMachine {
  readonly equipment: string
  readonly label: string
  /** Why the machine was left out; empty when it was run. */
  readonly leftOut: string
  readonly kV: number | null
  readonly mA: number | null
  readonly objectPixelMm: number | null
  /** Standard deviations of the noise an answer must exceed, on the last sheet. */
  readonly threshold: number | null
  readonly filters: number
  readonly pieces: number
  readonly found: number
  readonly falseAlarms: number
  /** Where its beam comes from; null where it was left out. */
  readonly seenFrom: 'above' | 'the side' | null
  /** The grey scale of the plain pictures, mm of solid food: white and black. */
  readonly scaleMm: { readonly white: number; readonly black: number } | null
  /** With the food taken off, how far the middle one of the pieces stands out over how far it does before; null with one energy. */
  readonly foodTakenOffGain: number | null
  readonly sheets: readonly DrawnSheet[]
  readonly pictures: readonly CardPicture[]
  readonly runs: readonly CardRun[]
}

export interface Card {
  readonly simulated: true
  readonly title: string
  readonly seed: number
  readonly point: { readonly index: number; readonly name: string }
  readonly rows: readonly { readonly words: string; readonly sizesMm: readonly number[] }[]
  /** Grey scale of the pictures with the food taken off, widths of each picture's own noise. */
  readonly noiseScale: { readonly white: number; readonly black: number }
  readonly machines: readonly CardMachine[]
  readonly notes: readonly string[]
}

const NOTES: readonly string[] = [
  'Simulated: drawn and read by calculation. Nothing was x-rayed; a test on the real product decides.',
  'Found and missed are counted from the picture: filters in the noise measured on the picture itself.',
  'Plain pictures of machines that look the same way share one grey scale: millimetres of solid food that let through as much.',
  'Not drawn: scatter, folds, seams and clips, charge sharing, belt joins, operator error.',
  'A card on the pack flatters light plastics: inside, a piece no denser than the food looks like a void.',
]
const COMPUTED =
  'The threshold is computed, not taught pack by pack: that of normal noise, or in a bed of grains that of pieces of food that lie on one another, whichever is larger. Flat pieces of food can give more false alarms than it allows; a machine would be set blunter until they stop.'
const taughtNote = (packs: number) =>
  `The threshold is the computed one, or what ${packs} clean packs teach (a tail fitted to the strongest answer in each, at the false rejects asked for), whichever is larger.`

/** The brief as a card asks it, where it is asked and which machines stand there. Throws CardError where that cannot be. */
function askedOf(brief: Brief, options: CardOptions) {
  const index = options.point ?? 0
  const point = brief.points[index]
  if (!point)
    throw new CardError(`point ${index} was asked for; this brief has points 0 to ${brief.points.length - 1}`)
  const asked: Brief = options.placement
    ? { ...brief, contaminants: brief.contaminants.map((c) => ({ ...c, placement: options.placement! })) }
    : brief
  return { asked, index, point, machines: xrayMachines(asked, point, options.equipment) }
}

/** Ids of the machines a card is asked of, in their order. Throws CardError where that cannot be. */
export const cardMachines = (brief: Brief, options: CardOptions): string[] =>
  askedOf(brief, options).machines.map(({ id }) => id)

/** What has to be known of each machine before any of them is drawn. */
export interface BeforeCard {
  readonly equipment: string
  /** Pixels it reads; null where it is left out. */
  readonly pixels: number | null
  readonly expectedMm: readonly (number | null)[]
}

function benchesOf(brief: Brief, options: CardOptions): Bench[] {
  const { asked, index, machines } = askedOf(brief, options)
  return machines.map((machine) => benchOf(asked, index, machine, options.kV?.[machine.id]))
}

const beforeOf = (benches: readonly Bench[]): BeforeCard[] =>
  benches.map((bench) => ({
    equipment: bench.machine.id,
    pixels: bench.leftOut === '' ? pixelsOf(bench) : null,
    expectedMm: bench.expectedMm,
  }))

/** The machines of a card set up, with what they are expected to find. */
export const beforeCard = (brief: Brief, options: CardOptions): BeforeCard[] =>
  beforeOf(benchesOf(brief, options))

/** Sizes of every row of a card, mm: those asked for, or the usual ones around what its machines are expected to find. */
export function rowSizes(
  { contaminants }: Brief,
  { sizesMm }: CardOptions,
  before: readonly BeforeCard[],
): number[][] {
  const running = before.filter(({ pixels }) => pixels !== null)
  return contaminants.map((what, c) => {
    const own = sizesMm?.[c]
    const expected = running.map(({ expectedMm }) => expectedMm[c] ?? null)
    return own ? [...own].sort((a, b) => a - b) : cardSizes(what, expected)
  })
}

/** Refuses a card before it is drawn where its pictures would be too large. Throws CardError with the figures. */
export const boundCard = (before: readonly BeforeCard[]): void =>
  boundPixels(before.flatMap(({ pixels }) => (pixels === null ? [] : [pixels])))

/** Names of the pictures' files, one a machine. */
export const cardFileNames = (ids: readonly string[]): string[] => fileNames(ids, 'machine')

/** Simulated test cards of a brief: the same packs and pieces before every x-ray machine of one point. */
export function cardOf(brief: Brief, options: CardOptions = {}): Card {
  const { asked, index, point } = askedOf(brief, options)
  const seed = options.seed ?? 1
  const benches = benchesOf(brief, options)
  const before = beforeOf(benches)
  boundCard(before)
  const sizes = rowSizes(asked, options, before)
  const rows = asked.contaminants.map(
    (what, c): CardRow => ({ contaminant: c, what, placement: what.placement, sizesMm: sizes[c]! }),
  )
  const packs = new Map<string, CardPacks>()
  for (const { exposed, leftOut } of benches) {
    const { beam } = exposed.build
    if (leftOut === '' && !packs.has(beam)) packs.set(beam, cardPacks(shownStretch(point), beam, seed, rows))
  }
  const names = cardFileNames(benches.map(({ machine }) => machine.id))
  return {
    simulated: true,
    title: brief.title,
    seed,
    point: { index, name: point.name },
    rows: rows.map((row) => ({ words: rowWords(row), sizesMm: row.sizesMm })),
    noiseScale: NOISE_WINDOW,
    machines: benches.map((bench, m) =>
      machineCard(asked, bench, names[m]!, packs.get(bench.exposed.build.beam), options),
    ),
    notes: [
      ...NOTES,
      options.taughtPacks ? taughtNote(options.taughtPacks) : COMPUTED,
      ...[...packs.values()].flatMap(leftOffNote),
    ],
  }
}

function leftOffNote({ leftOff, beam }: CardPacks): string[] {
  const side = beam === 'down' ? 'from above' : 'from the side'
  return leftOff > 0 ? [`${leftOff} pieces found no room on the packs seen ${side} and were left off.`] : []
}

function machineCard(
  brief: Brief,
  bench: Bench,
  fileNamed: string,
  packs: CardPacks | undefined,
  options: CardOptions,
): CardMachine {
  const { machine, exposed } = bench
  const label = machine.label ?? machine.id
  const setting = bench.leftOut === '' ? exposed.setting : null
  const base = {
    equipment: machine.id,
    label,
    kV: setting?.kV ?? null,
    mA: setting?.mA ?? null,
    objectPixelMm: setting ? exposed.objectPixelMm : null,
  }
  const none = {
    threshold: null,
    filters: 0,
    pieces: 0,
    found: 0,
    falseAlarms: 0,
    seenFrom: null,
    scaleMm: null,
    foodTakenOffGain: null,
    sheets: [],
    pictures: [],
    runs: [],
  }
  if (bench.leftOut !== '' || !packs) return { ...base, ...none, leftOut: bench.leftOut }
  if (packs.sheets.length === 0)
    return { ...base, ...none, leftOut: 'no piece fits the part of this pack that is read' }
  const done = runCard(exposed, packs, {
    reading: {
      gatheredWireMm: PRACTICE.gatheredWireMm,
      compositionResidual: PRACTICE.compositionResidual,
      falseRejectsPerPack: packs.point.falseRejectsPerPack,
      taughtThreshold: taughtOn(exposed),
      largestMm: Math.max(...packs.rows.flatMap(({ sizesMm }) => sizesMm)),
    },
    runs: options.runs ?? 1,
    cleanPacks: options.cleanPacks ?? 0,
    taughtPacks: options.taughtPacks ?? 0,
  })
  const all = done.sheets.flatMap(({ pieces }) => pieces)
  return {
    ...base,
    leftOut: '',
    threshold: done.threshold,
    filters: done.filters,
    pieces: all.length,
    found: all.filter(({ found }) => found).length,
    falseAlarms: done.sheets.reduce((sum, { falseAlarms }) => sum + falseAlarms.length, 0),
    seenFrom: packs.beam === 'down' ? 'above' : 'the side',
    scaleMm: packs.window,
    foodTakenOffGain: done.sheets.find((sheet) => sheet.foodTakenOff)?.foodTakenOff?.gain ?? null,
    sheets: drawnSheets(done.sheets, packs, done.threshold),
    pictures: pngPictures(done.sheets, fileNamed, packs.seed, `${brief.title} by ${label}`),
    runs: done.runs,
  }
}
