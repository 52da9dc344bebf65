import { remembered } from '../../advice/assess/remembered.ts'
import { xrayMachines } from '../../card/card-bench.ts'
import { type CardPicture, type DrawnSheet, drawnSheets, pngPictures } from '../../card/drawn-sheet.ts'
import { taughtOn } from '../../card/taught-on.ts'
import type { Brief, Point, XrayMachine } from '../../contract/index.ts'
import type { InputId } from '../../trade-offs/input.ts'
import { knownInput } from '../../trade-offs/inputs.ts'
import { isSized, sizesAt } from '../../trade-offs/sizes-at.ts'
import { buildOf } from '../../xray/beam/exposure.ts'
import type { CardRow, CardSheet } from '../../xray/image/card/card-layout.ts'
import { cardPacks, runCard } from '../../xray/image/card/test-card.ts'
import { DRAFT_BED, HAND_BED } from '../../xray/image/food/grain-tile.ts'
import { type ExposedPack, exposePack } from '../../xray/image/pack/exposed-pack.ts'
import { halfExtents } from '../../xray/image/pack/piece.ts'
import { READ_MARGIN_MM, viewOf } from '../../xray/image/pack/view.ts'
import { detectability } from '../../xray/observer/detectability.ts'
import { PRACTICE } from '../../xray/observer/practice.ts'
import { chanceOf, objectIn, positionsOf, setScene } from '../../xray/observer/scene.ts'
import { materialAttenuation, packInBeam } from '../../xray/places/pack-in-beam.ts'
import { type Settling, settlingOf } from '../../xray/places/settling.ts'
import { expectedSizes } from '../../xray/quick-sizes.ts'
import { cleanDensity, pieceDensity } from '../proof/threshold-hills.ts'
import { draftPicture } from './draft-picture.ts'
import { stopsOf } from './stops.ts'

/** What the control may move: inputs of the trade-offs that an x-ray picture shows. */
export const DIAL_INPUTS = [
  'height',
  'speed',
  'grain',
  'kV',
  'false-rejects',
] as const satisfies readonly InputId[]
export type DialInput = (typeof DIAL_INPUTS)[number]

/** Part of the pack that is drawn, mm: small enough to be drawn while one waits. */
const PATCH_MM = { lengthMm: 116, widthMm: 56 } as const
const PIECES = 6
const GAP_MM = 9
const CURVE_POINTS = 25
/** Where nothing is findable there is still a piece to look for, mm. */
const USUAL_PIECE_MM = 3

export interface DialAsked {
  readonly point: number
  readonly machine: string
  readonly contaminant: number
  readonly input: DialInput
  /** 0 to STOPS − 1. */
  readonly stop: number
}

type Curve = readonly (readonly [x: number, y: number])[]

/** One place of the control: the picture, the curve and the hills that belong together. */
export interface DialShown {
  readonly kind: 'x-ray'
  /** The picture is a draft and not read; all numbers, the curve and the hills are those of the whole answer. */
  readonly draft: boolean
  readonly sizesMm: readonly number[]
  readonly values: readonly number[]
  readonly unit: string
  readonly present: number
  readonly kV: number
  readonly sheet: DrawnSheet
  readonly pictures: readonly CardPicture[]
  /** Chance of finding against size, mm. */
  readonly curve: Curve
  /** Where the piece decides: at the level it settles to, else in the middle. */
  readonly expectedMm: number | null
  /** Chance, curve, hills and picture are those of the middle, wherever it settles. */
  readonly settles: Settling
  /** The piece whose hill is drawn, mm, and its chance of being found. */
  readonly pieceMm: number
  readonly chance: number
  readonly hills: {
    readonly clean: Curve
    readonly piece: Curve
    readonly threshold: number
    /** Grain asks for more than the noise of the beam and of an even pattern. */
    readonly beyondNoise: boolean
  }
}

/** Setups whose sizes are kept: every place of every thing that can be moved starts from them. */
const KEPT = 32
const sizesNow = remembered(
  ({ point, machine, contaminants, contaminant }: Now) =>
    sizesAt({ point, machine }, contaminants, contaminant, false),
  KEPT,
)

interface Now {
  readonly point: Point
  readonly machine: XrayMachine
  readonly contaminants: Brief['contaminants']
  readonly contaminant: number
}

/** The values the control can take, the brief's own among them. Null where it has none here. */
export function dialValues(brief: Brief, asked: Omit<DialAsked, 'stop'>) {
  const point = brief.points[asked.point]!
  const [machine] = xrayMachines(brief, point, [asked.machine])
  const input = knownInput(asked.input)
  const setup = { point, machine: machine! }
  if (!isSized(machine!) || !input.appliesAt(point)) return null
  const { contaminants } = brief
  const now = sizesNow({ point, machine: machine!, contaminants, contaminant: asked.contaminant })
  const stops = stopsOf(input, setup, now)
  return stops && { setup, input, now, ...stops }
}

/** True where drawing takes long: food in grains, which are moved apart. */
export const isSlow = ({ product }: Point): boolean => product.grainMm > 0

/** Places whose numbers are kept: the whole answer follows a draft, and starts from them. */
const KEPT_NUMBERS = 8

/** Everything at a stop but the picture. */
const numbersAt = remembered(
  ({ brief, asked }: { readonly brief: Brief; readonly asked: DialAsked }) => numbersOf(brief, asked),
  KEPT_NUMBERS,
  ({ brief, asked }) => [brief.given, asked],
)

function numbersOf(brief: Brief, asked: DialAsked) {
  const dial = dialValues(brief, asked)
  if (!dial) return null
  const { setup, input, now, values, present } = dial
  const value = values[Math.min(asked.stop, values.length - 1)]!
  const changed = input.at(setup, value, now)
  const machine = changed.machine as XrayMachine
  const sizes = expectedSizes({ machine, point: changed.point, contaminants: brief.contaminants })
  if (sizes.refusals.length > 0) return null
  const expectedMm = sizes.expectedMm[asked.contaminant]!
  const { kV, mA } = sizes.setting
  const exposed = exposePack(machine, buildOf(machine), changed.point, { kV, mA })
  if (exposed.channels.count === 0) return null
  const pieceMm = now.expectedMm ?? expectedMm ?? USUAL_PIECE_MM
  const shown = {
    kind: 'x-ray' as const,
    values,
    unit: input.unit,
    present,
    kV,
    expectedMm,
    settles: settlingOf(changed.point, brief.contaminants[asked.contaminant]!),
    pieceMm,
    ...computed(brief, asked, exposed, pieceMm),
  }
  return { exposed, shown }
}

/**
 * What is seen, and how likely a piece is found, with the control at a stop. As a draft, the picture is drawn
 * roughly and not read. Null where the machine sees nothing there.
 */
export function dialAt(brief: Brief, asked: DialAsked, draft = false): DialShown | null {
  const numbers = numbersAt({ brief, asked })
  if (!numbers) return null
  const { exposed, shown } = numbers
  return { ...shown, draft, ...pictured(brief, asked, exposed, shown.pieceMm, draft) }
}

/** A patch of the pack with a row of pieces around one size, drawn and read. */
function pictured(brief: Brief, asked: DialAsked, exposed: ExposedPack, pieceMm: number, draft: boolean) {
  const what = brief.contaminants[asked.contaminant]!
  const { point, build } = exposed
  const patch: Point =
    point.outline === 'cylinder'
      ? point
      : {
          ...point,
          lengthMm: Math.min(point.lengthMm, PATCH_MM.lengthMm),
          widthMm: Math.min(point.widthMm, PATCH_MM.widthMm),
        }
  const sizesMm = [0.4, 0.6, 0.8, 1, 1.3, 1.7]
    .slice(0, PIECES)
    .map((f) => Math.round(100 * f * pieceMm) / 100)
  const row: CardRow = { contaminant: asked.contaminant, what, placement: what.placement, sizesMm }
  const packs = cardPacks(patch, build.beam, 1, [row], draft ? DRAFT_BED : HAND_BED)
  const view = viewOf(patch, build.beam)
  const sheet = inOneRow(row, view.uMm, view.vMm) ?? packs.sheets[0]
  if (draft && sheet) return { sizesMm, ...draftPicture(exposed, packs, sheet, brief.title) }
  const done = runCard(
    exposed,
    { ...packs, sheets: sheet ? [sheet] : [] },
    {
      reading: {
        gatheredWireMm: PRACTICE.gatheredWireMm,
        compositionResidual: PRACTICE.compositionResidual,
        falseRejectsPerPack: point.falseRejectsPerPack,
        taughtThreshold: taughtOn(exposed),
        largestMm: sizesMm.at(-1)!,
      },
      runs: 1,
      cleanPacks: 0,
      taughtPacks: 0,
    },
  )
  return {
    sizesMm,
    sheet: drawnSheets(done.sheets, packs, done.threshold)[0]!,
    pictures: pngPictures(done.sheets, 'dial', 1, brief.title),
  }
}

/** The pieces in one line through the middle, the same places whatever the control says; null where they do not fit. */
function inOneRow(
  { contaminant, what, placement, sizesMm }: CardRow,
  uMm: number,
  vMm: number,
): CardSheet | null {
  const shapes = sizesMm.map((sizeMm) => {
    const shape = { shape: what.shape, sizeMm, lengthMm: what.lengthMm ?? 0, faceMm2: what.faceMm2 ?? 0 }
    return { ...shape, half: halfExtents(shape).alongMm }
  })
  const needs = shapes.reduce((sum, { half }) => sum + 2 * half + GAP_MM, -GAP_MM)
  const room = uMm - 2 * (READ_MARGIN_MM + 6)
  if (needs > room) return null
  const gap = GAP_MM + (room - needs) / (shapes.length + 1)
  let u = (uMm - needs - (gap - GAP_MM) * (shapes.length - 1)) / 2
  const pieces = shapes.map(({ half, ...shape }) => {
    const at = u + half
    u += 2 * half + gap
    return { ...shape, contaminant, material: what.material, placement, u: at, v: vMm / 2, angle: 0 }
  })
  return { pieces, lineEnds: [pieces.length] }
}

/** Curve and hills from the same scene the sizes come from. */
function computed(brief: Brief, asked: DialAsked, exposed: ExposedPack, pieceMm: number) {
  const { build, point, setting } = exposed
  const contaminant = brief.contaminants[asked.contaminant]!
  const scene = setScene(build, point, packInBeam(point, build), setting, PRACTICE)
  const piece = objectIn(scene, contaminant, materialAttenuation(contaminant.material))
  const curve = Array.from({ length: CURVE_POINTS }, (_, i): readonly [number, number] => {
    const sizeMm = pieceMm * 0.3 * (2.6 / 0.3) ** (i / (CURVE_POINTS - 1))
    return [sizeMm, chanceOf(scene, piece, sizeMm)]
  })
  const standsOut = detectability(scene.observer, piece, pieceMm)
  const threshold = piece.threshold(pieceMm)
  const positions = positionsOf(point, build)
  const to = Math.max(threshold, standsOut) + 4
  const along = (density: (x: number) => number): Curve =>
    Array.from({ length: 121 }, (_, i) => [(to * i) / 120, density((to * i) / 120)] as const)
  return {
    curve,
    chance: chanceOf(scene, piece, pieceMm),
    hills: {
      threshold,
      beyondNoise: threshold > 1.1 * scene.thresholdZ,
      clean: along((x) => cleanDensity(x, positions)),
      piece: along((x) => pieceDensity(x, standsOut)),
    },
  }
}
