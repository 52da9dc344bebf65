import type { DetectionCurve } from '../../coil/decide/detection-curve.ts'
import { curveOf, LEVELS, orientedCurves, weakerOf, weakestMm } from '../../coil/decide/reading.ts'
import { openingMap } from '../../coil/opening/opening-map.ts'
import { COIL_PARAMETERS } from '../../coil/parameters.ts'
import { hasDirection, pieceOf } from '../../coil/piece/piece.ts'
import { positionOf, SIZE_STEP } from '../../coil/piece/size-grid.ts'
import { shapeLimitMm } from '../../coil/piece/target.ts'
import type { Brief, CoilMachine, Contaminant, Point } from '../../contract/index.ts'
import type { InputId } from '../../trade-offs/input.ts'
import { knownInput } from '../../trade-offs/inputs.ts'
import { type MetalSetup, metalDetectorsAt, metalSetup } from '../../trade-offs/metal-setup.ts'
import { sizesAt } from '../../trade-offs/sizes-at.ts'
import { alongShare } from '../../trade-offs/turned-piece.ts'
import { cleanDensity, pieceDensity } from '../proof/threshold-hills.ts'
import { type Stops, stopsOf } from './stops.ts'

/** What the control may move before a metal detector: how a wire lies, where it passes, and inputs of the trade-offs. */
export const METAL_INPUTS = ['angle', 'place', 'opening', 'frequency', 'temperature'] as const
export type MetalInput = (typeof METAL_INPUTS)[number]

/** Degrees to the travel; shares of the way from the middle of the opening to its wire, which is left out. */
const ANGLES_DEG = [0, 15, 30, 45, 60, 75, 90]
const PLACES_PERCENT = [0, 10, 20, 30, 40, 50, 60, 70, 80]
/** What stands for a ball where something is to be turned, mm long. */
const WIRE_LENGTH_MM = 10
/** Where nothing is findable there is still a piece to listen for, mm. */
const USUAL_PIECE_MM = 2
const CURVE_POINTS = 25
const HILL_POINTS = 121
/** The spread of a piece's answer is taken at these steps of its standard deviation. */
const SPREAD_NODES = Array.from({ length: 97 }, (_, i) => (i - 48) / 12)

type Line = readonly (readonly [x: number, y: number])[]

export interface MetalAsked {
  readonly point: number
  readonly machine: string
  readonly contaminant: number
  readonly input: MetalInput
  readonly stop: number
}

/** One place of the control: where and how the piece passes, the curve and the hills that belong together. */
export interface MetalShown extends Stops {
  readonly kind: 'metal'
  readonly unit: string
  readonly frequenciesKHz: readonly number[]
  /** Turned as a wire of this length although the brief names a ball, mm; null where it is the brief's own piece. */
  readonly asWireMm: number | null
  /** To the travel; null for a ball. */
  readonly angleDeg: number | null
  readonly opening: { readonly widthMm: number; readonly heightMm: number }
  readonly food: { readonly widthMm: number; readonly heightMm: number }
  /** Where the piece passes: shares of the opening from its middle. */
  readonly at: { readonly across: number; readonly up: number }
  /** How many times as strongly as in the middle a small piece is heard there. */
  readonly gain: number
  readonly curve: Line
  readonly expectedMm: number | null
  readonly pieceMm: number
  readonly chance: number
  readonly hills: { readonly clean: Line; readonly piece: Line; readonly threshold: number }
}

/** The detector asked for at a point; undefined where none of that name stands there. */
const machineAt = (brief: Brief, { point, machine }: Omit<MetalAsked, 'stop'>): CoilMachine | undefined =>
  metalDetectorsAt(brief, point).find(({ id }) => id === machine)

/** The values the control can take; null where it moves nothing here. */
export function metalStops(brief: Brief, asked: Omit<MetalAsked, 'stop'>): Stops | null {
  const machine = machineAt(brief, asked)
  if (!machine || !pieceOf(brief.contaminants[asked.contaminant]!)) return null
  if (asked.input === 'angle') return { values: ANGLES_DEG, present: -1 }
  if (asked.input === 'place') return { values: PLACES_PERCENT, present: 0 }
  const input = knownInput(asked.input satisfies InputId)
  const point = brief.points[asked.point]!
  if (!input.appliesAt(point)) return null
  const now = sizesAt({ point, machine }, brief.contaminants, asked.contaminant, false)
  return stopsOf(input, { point, machine }, now)
}

/** What is heard with the control at a stop. Null where the food does not fit through the opening. */
export function metalAt(brief: Brief, asked: MetalAsked): MetalShown | null {
  const stops = metalStops(brief, asked)
  const machine = machineAt(brief, asked)
  if (!stops || !machine) return null
  const value = stops.values[Math.min(asked.stop, stops.values.length - 1)]!
  const turned = asked.input === 'angle'
  const base = turned ? withWire(brief, asked.contaminant) : brief
  const given = metalSetup(base, asked.point, machine, asked.contaminant)!
  const setup = turned || asked.input === 'place' ? given : moved(base, asked, machine, value)
  if (!setup || setup.assessment.refusals.length > 0) return null
  const place = asked.input === 'place' ? value / 200 : 0
  const gain = place === 0 ? 1 : openingMap(setup.scene.opening, [0], [place])[0]!.relative
  const curve = turned ? curveOf(setup.listening, setup.piece, alongShare(value)) : weakest(setup, gain)
  const limit = Math.min(setup.finding.limitMm, shapeLimitMm(setup.piece.shape))
  const pieceMm =
    weakestMm(orientedCurves(given.listening, given.piece), LEVELS.found, limit) ?? USUAL_PIECE_MM
  const point = brief.points[asked.point]!
  const { opening, frequenciesKHz, thresholdZ } = setup.assessment
  const upright = opening.heightMm > opening.widthMm
  return {
    kind: 'metal',
    ...stops,
    unit: turned ? '°' : asked.input === 'place' ? '%' : knownInput(asked.input).unit,
    frequenciesKHz,
    asWireMm:
      turned && !hasDirection(pieceOf(brief.contaminants[asked.contaminant]!)!.shape) ? WIRE_LENGTH_MM : null,
    angleDeg: turned ? value : null,
    opening,
    food: foodOf(point),
    at: upright ? { across: place, up: 0 } : { across: 0, up: place },
    gain,
    pieceMm,
    chance: curve.chanceOf(pieceMm),
    expectedMm: expectedOf(curve, limit),
    curve: Array.from({ length: CURVE_POINTS }, (_, i): readonly [number, number] => {
      const sizeMm = Math.min(limit, pieceMm * 0.3 * (2.6 / 0.3) ** (i / (CURVE_POINTS - 1)))
      return [sizeMm, curve.chanceOf(sizeMm)]
    }),
    hills: hillsOf(curve, pieceMm, setup.listening.spread, thresholdZ),
  }
}

const foodOf = ({ widthMm, lanes, heightMm }: Point) => ({ widthMm: widthMm * lanes, heightMm })

/** The brief with a wire of that metal in the place of a ball. */
function withWire(brief: Brief, index: number): Brief {
  const wire = (one: Contaminant): Contaminant =>
    one.shape === 'sphere' ? { ...one, shape: 'wire', lengthMm: WIRE_LENGTH_MM, faceMm2: null } : one
  return { ...brief, contaminants: brief.contaminants.map((one, i) => (i === index ? wire(one) : one)) }
}

/** The setup with an input of the trade-offs at a value. */
function moved(
  brief: Brief,
  { point: index, contaminant, input }: MetalAsked,
  machine: CoilMachine,
  value: number,
) {
  const point = brief.points[index]!
  const now = sizesAt({ point, machine }, brief.contaminants, contaminant, false)
  const changed = knownInput(input as InputId).at({ point, machine }, value, now)
  const points = brief.points.map((one, i) => (i === index ? changed.point : one))
  return metalSetup({ ...brief, points }, index, changed.machine as CoilMachine, contaminant)
}

const weakest = ({ listening, piece, finding }: MetalSetup, gain: number): DetectionCurve =>
  weakerOf(orientedCurves(listening, piece, gain), finding.limitMm).curve

function expectedOf(curve: DetectionCurve, limitMm: number): number | null {
  return weakestMm([{ orientation: 'along', curve }], LEVELS.found, limitMm)
}

/** How often a clean pack and a pack with the piece are read how strongly, in widths of the noise. */
function hillsOf(curve: DetectionCurve, pieceMm: number, spread: number, threshold: number) {
  const standsOut = (u: number) =>
    curve.statisticAt(Math.max(0, positionOf(pieceMm) - (u * spread) / SIZE_STEP))
  const nodes = SPREAD_NODES.map((u) => ({ weight: Math.exp((-u * u) / 2), at: standsOut(u) }))
  const total = nodes.reduce((sum, { weight }) => sum + weight, 0)
  const to = Math.max(threshold, standsOut(-1)) + 4
  const along = (density: (x: number) => number): Line =>
    Array.from({ length: HILL_POINTS }, (_, i) => {
      const x = (to * i) / (HILL_POINTS - 1)
      return [x, density(x)] as const
    })
  return {
    threshold,
    clean: along((x) => cleanDensity(x, COIL_PARAMETERS.looksPerPack)),
    piece: along((x) => nodes.reduce((sum, { weight, at }) => sum + weight * pieceDensity(x, at), 0) / total),
  }
}
