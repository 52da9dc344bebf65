import { readFileSync } from 'node:fs'
import { parseBrief } from '../../src/brief/index.ts'
import { machineSchema, type XrayMachine } from '../../src/contract/index.ts'
import { archetypes, figuresOf } from '../../src/reference/index.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import type { PracticeConstants } from '../../src/xray/observer/practice.ts'
import { CHANCE_HALF, chanceOf, sizeAt } from '../../src/xray/observer/scene.ts'
import { packInBeam } from '../../src/xray/places/pack-in-beam.ts'
import { overVoltages } from '../../src/xray/sizes-over-voltages.ts'

export type Piece = 'wire' | 'sphere' | 'glass' | 'quartz'

interface PackReadings {
  name: string
  use: 'calibration' | 'check'
  heightMm: number
  grainMm: number
  readings: Record<string, Record<Piece, number>>
}

/** Common-practice readings; no published source (see the note in the file). */
export const { packs } = JSON.parse(
  readFileSync(new URL('./card-readings.json', import.meta.url), 'utf8'),
) as { packs: PackReadings[] }

/** The pieces on the card; the wire's length is an assumption. */
const PIECES: Record<Piece, { material: string; shape: string; lengthMm?: number }> = {
  wire: { material: 'ss316', shape: 'wire', lengthMm: 10 },
  sphere: { material: 'ss316', shape: 'sphere' },
  glass: { material: 'glass_container', shape: 'sphere' },
  quartz: { material: 'quartz', shape: 'sphere' },
}
export const pieceNames = Object.keys(PIECES) as Piece[]

/** Step of the card and the smallest piece on it, mm. */
export const CARD: Record<Piece, { stepMm: number; smallestMm: number }> = {
  wire: { stepMm: 0.1, smallestMm: 0.2 },
  sphere: { stepMm: 0.1, smallestMm: 0.3 },
  glass: { stepMm: 1, smallestMm: 2 },
  quartz: { stepMm: 1, smallestMm: 2 },
}

/** Smallest piece of the card that is at least a size. */
export function cardReading(piece: Piece, sizeMm: number): number {
  const { stepMm, smallestMm } = CARD[piece]
  return Math.max(smallestMm, Number((Math.ceil(sizeMm / stepMm - 1e-9) * stepMm).toFixed(3)))
}

export interface Predicted {
  pack: string
  use: 'calibration' | 'check'
  machine: string
  piece: Piece
  kV: number
  readMm: number
  halfMm: number | null
  chance: (sizeMm: number) => number
}

function machineOf(id: string): XrayMachine {
  const figures = figuresOf(archetypes.get(id)!)
  return machineSchema.parse(figures) as XrayMachine
}

/** Every reading of the table predicted with a set of constants, each machine at the voltage it would choose. */
export function predict(constants: PracticeConstants, use?: 'calibration' | 'check'): Predicted[] {
  return packs
    .filter((pack) => use === undefined || pack.use === use)
    .flatMap((pack) => Object.keys(pack.readings).flatMap((id) => predictOne(constants, pack, id)))
}

function predictOne(constants: PracticeConstants, pack: PackReadings, id: string): Predicted[] {
  const parsed = parseBrief({
    product: { food: 'almond', grainMm: pack.grainMm },
    points: [
      {
        heightMm: pack.heightMm,
        widthMm: 200,
        lengthMm: 300,
        speedMPerMin: 40,
        falseRejectsPerPack: 0.001,
        parts: [{ material: 'pe', mm: 0.08, place: 'wrap' }],
      },
    ],
    contaminants: pieceNames.map((piece) => ({ ...PIECES[piece], placement: 'outside' })),
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  const { points, contaminants } = parsed.brief
  const point = points[0]!
  const machine = machineOf(id)
  const build = buildOf(machine)
  const inBeam = packInBeam(point, build)
  const { chosen, pieces } = overVoltages(machine, build, point, inBeam, contaminants, constants)
  return pieceNames.map((piece, i) => ({
    pack: pack.name,
    use: pack.use,
    machine: id,
    piece,
    kV: chosen.setting.kV,
    readMm: pack.readings[id]![piece],
    halfMm: sizeAt(chosen.scene, pieces[i]!, CHANCE_HALF, chosen.expectedMm[i]),
    chance: (sizeMm: number) => chanceOf(chosen.scene, pieces[i]!, sizeMm),
  }))
}

/** Number of card steps between a prediction and its reading. */
export function stepsOff(one: Predicted): number {
  if (one.halfMm === null) return Number.POSITIVE_INFINITY
  return Math.round((cardReading(one.piece, one.halfMm) - one.readMm) / CARD[one.piece].stepMm)
}

/** How far a predicted size lies outside the step of its reading, in card steps; 0 within it. */
export function outsideBy(one: Predicted): number {
  if (one.halfMm === null) return Number.POSITIVE_INFINITY
  const inSteps = (one.halfMm - one.readMm) / CARD[one.piece].stepMm
  return Math.max(0, inSteps, -1 - inSteps)
}
