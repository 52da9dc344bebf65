import { evenFoodMm, mouldedPath } from '../food/food-path.ts'
import { type Random, randomStream } from '../food/random.ts'
import type { Raster } from '../food/raster.ts'
import { addCompositionResidual } from './composition-residual.ts'
import { type DrawnPack, extraExponents, gridsFor, pathMaps } from './drawn-pack.ts'
import type { ExposedPack } from './exposed-pack.ts'
import type { Piece } from './piece.ts'
import { pieceShadow } from './piece-shadow.ts'
import { cellsToPixels, pixelTaps } from './pixel-taps.ts'
import { attenuationAt, type SignalTable, signalTables } from './signal-table.ts'

/** A simulated radiograph: −ln(signal / open beam) per channel and pixel, noise included. */
export interface Radiograph {
  readonly pixels: Raster
  readonly channels: readonly Float32Array[]
  /** What the mould of the food alone adds to each channel, as a machine has learnt it; null without a mould. */
  readonly mould: readonly Float32Array[] | null
}

/** Fewer quanta than this are drawn as a Poisson count, more as a normal deviate. */
const FEW_QUANTA = 40
/** Least signal that enters the logarithm, as a share of the open beam: a dark pixel reads as this. */
const DARKEST = 1e-6

/**
 * Takes a radiograph of a drawn pack with pieces: paths → signal per channel → pieces → blur and pixel →
 * photon and read noise → logarithm. compositionResidual: κ of the practice constants. The noise has its own stream per machine, the pack is the same for all.
 */
export function takeRadiograph(
  exposed: ExposedPack,
  pack: DrawnPack,
  pieces: readonly Piece[],
  compositionResidual = 0,
): Radiograph {
  const { pixels, cells, cellsPerPixel } = gridsFor(pack, exposed.objectPixelMm)
  const { foodMm, container } = pathMaps(pack, cells)
  const wall = container.wall && { muPerMm: container.wall.muPerMm, mostMm: largest(container.wall.mm) }
  const tables = signalTables(exposed, largest(foodMm), wall)
  const extra = extraExponents(pack, exposed, cells)
  const taps = pixelTaps(cellsPerPixel, exposed.objectPixelMm, exposed.build.blurPixels)
  const shadows = pieces.map((piece) =>
    pieceShadow(exposed, weightsBehind(exposed, foodMm, container.wall, cells, piece), piece, cells),
  )
  const channels = tables.map((table, c) => {
    const share = signalShare(table, foodMm, container.wall?.mm ?? null, extra?.[c] ?? null)
    for (const shadow of shadows) {
      const left = shadow.share[c]!
      for (let i = 0; i < shadow.cells.length; i++) share[shadow.cells[i]!]! *= left[i]!
    }
    const picture = cellsToPixels(share, cells.columns, cells.rows, taps)
    addNoise(picture, table, randomStream(pack.seed, `noise ${exposed.machine.id} ${c}`))
    return picture
  })
  addCompositionResidual(channels, pixels, pack, exposed, compositionResidual)
  return {
    pixels,
    channels,
    mould: mouldIn(pack, cells, tables, (share) => cellsToPixels(share, cells.columns, cells.rows, taps)),
  }
}

/** Attenuation that the squares of a moulded bar add to an even bar, per channel and pixel. */
function mouldIn(
  { food }: DrawnPack,
  cells: Raster,
  tables: readonly SignalTable[],
  toPixels: (share: Float32Array) => Float32Array,
): Float32Array[] | null {
  const even = evenFoodMm(food, cells)
  const moulded = mouldedPath(food, cells, even)
  if (!moulded) return null
  return tables.map((table) => {
    const flat = toPixels(signalShare(table, even, null, null))
    const shaped = toPixels(signalShare(table, moulded, null, null))
    return shaped.map((share, at) => Math.log(Math.max(flat[at]!, DARKEST) / Math.max(share, DARKEST)))
  })
}

function largest(values: Float32Array): number {
  let most = 0
  for (let i = 0; i < values.length; i++) if (values[i]! > most) most = values[i]!
  return most
}

/** S / S_open in every cell. */
function signalShare(
  table: SignalTable,
  foodMm: Float32Array,
  wallMm: Float32Array | null,
  extra: Float32Array | null,
): Float32Array {
  const share = new Float32Array(foodMm.length)
  if (wallMm) {
    for (let i = 0; i < share.length; i++) share[i] = Math.exp(-attenuationAt(table, foodMm[i]!, wallMm[i]!))
  } else {
    const { foodStepMm, foodSteps } = table
    const signal = Float64Array.from({ length: foodSteps + 1 }, (_, i) => Math.exp(-table.attenuation[i]!))
    for (let i = 0; i < share.length; i++) {
      const x = foodMm[i]! / foodStepMm
      const low = x >= foodSteps ? foodSteps - 1 : x | 0
      share[i] = signal[low]! + (x - low) * (signal[low + 1]! - signal[low]!)
    }
  }
  if (extra) for (let i = 0; i < share.length; i++) share[i]! *= Math.exp(-extra[i]!)
  return share
}

/** Response weights of the channels behind the food and wall in the middle of a piece's place. */
function weightsBehind(
  exposed: ExposedPack,
  foodMm: Float32Array,
  wall: { readonly muPerMm: Float64Array; readonly mm: Float32Array } | null,
  cells: Raster,
  piece: Piece,
): Float64Array[] {
  const { channels, pack } = exposed
  const column = Math.floor((piece.u - cells.leftMm) / cells.pitchMm)
  const row = Math.floor((piece.v - cells.topMm) / cells.pitchMm)
  const at = Math.min(foodMm.length - 1, Math.max(0, row * cells.columns + column))
  const middleWall = wall && pack.parts.find((part) => part.muPerMm === wall.muPerMm)
  const moreFood = foodMm[at]! - pack.packing * pack.pathMm
  const moreWall = wall ? wall.mm[at]! - (middleWall ? middleWall.mm * middleWall.crossings : 0) : 0
  return channels.weights.map((weights) => {
    const here = weights.map(
      (w, i) => w * Math.exp(-pack.solidMuPerMm[i]! * moreFood - (wall ? wall.muPerMm[i]! * moreWall : 0)),
    )
    const total = here.reduce((sum, w) => sum + w, 0)
    return here.map((w) => w / total)
  })
}

/** Photon and read noise on S/S_open, then −ln, in place. */
function addNoise(picture: Float32Array, table: SignalTable, random: Random): void {
  const { openSignal, readNoise } = table
  const quantum = quantumOverAttenuation(table)
  for (let i = 0; i < picture.length; i++) {
    const share = Math.max(picture[i]!, 0)
    const signal = share * openSignal
    const perQuantum = quantum(-Math.log(Math.max(share, DARKEST)))
    const quanta = signal / perQuantum
    const drawn =
      quanta > FEW_QUANTA
        ? signal + Math.sqrt(signal * perQuantum) * random.normal()
        : random.poisson(quanta) * perQuantum
    const read = readNoise > 0 ? readNoise * random.normal() : 0
    picture[i] = -Math.log(Math.max((drawn + read) / openSignal, DARKEST))
  }
}

/** The energy of a quantum read against attenuation (through the food; wall and pieces harden alike). */
function quantumOverAttenuation(table: SignalTable): (attenuation: number) => number {
  const { foodSteps, attenuation, quantum } = table
  const first = attenuation[0]!
  const last = attenuation[foodSteps]!
  const steps = 128
  const even = new Float64Array(steps + 1)
  for (let i = 0, at = 0; i <= steps; i++) {
    const wanted = first + ((last - first) * i) / steps
    while (at < foodSteps - 1 && attenuation[at + 1]! < wanted) at++
    const share = Math.min(
      1,
      Math.max(0, (wanted - attenuation[at]!) / (attenuation[at + 1]! - attenuation[at]!)),
    )
    even[i] = quantum[at]! + share * (quantum[at + 1]! - quantum[at]!)
  }
  const scale = steps / (last - first)
  return (value) => {
    const x = Math.min(steps, Math.max(0, (value - first) * scale))
    const low = x >= steps ? steps - 1 : x | 0
    return even[low]! + (x - low) * (even[low + 1]! - even[low]!)
  }
}
