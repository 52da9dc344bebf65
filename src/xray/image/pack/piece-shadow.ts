import { discreteGauss } from '../../../numerics/discrete-gauss.ts'
import { differenceInBeam } from '../../observer/scene.ts'
import { materialAttenuation } from '../../places/pack-in-beam.ts'
import type { Raster } from '../food/raster.ts'
import type { ExposedPack } from './exposed-pack.ts'
import { chordMm, halfExtents, type Piece } from './piece.ts'

/** Cells a piece covers and the share of each channel's signal it leaves there. */
export interface PieceShadow {
  readonly cells: Int32Array
  /** [channel][covered cell]. */
  readonly share: readonly Float64Array[]
}

const EXPONENTIALS = 8
const CHORD_STEPS = 256
/** Places per cell and axis at which a chord is read, and at least so many across a piece. */
const PLACES_PER_CELL = 4
const PLACES_ACROSS = 16

/**
 * The shadow of a piece on a grid: the mean over each cell of Σ w·exp(−Δμ·chord), w the channel's response
 * behind what lies at the piece's place (weights per energy bin), as a few exponentials. Inside, a piece
 * displaces food of the pack's mean packing.
 */
export function pieceShadow(
  exposed: ExposedPack,
  weights: readonly Float64Array[],
  piece: Piece,
  raster: Raster,
): PieceShadow {
  const delta = differenceInBeam(exposed.pack, materialAttenuation(piece.material), piece.placement)
  const longest = piece.sizeMm
  const tables = weights.map((w) => {
    const rule = discreteGauss(delta, w, exposed.channels.bins, EXPONENTIALS)
    const table = new Float64Array(CHORD_STEPS + 2)
    for (let k = 0; k < rule.nodes.length; k++) {
      const perStep = Math.exp((-rule.nodes[k]! * longest) / CHORD_STEPS)
      for (let i = 0, left = rule.weights[k]!; i < table.length; i++, left *= perStep) table[i]! += left
    }
    return table
  })
  const { alongMm, acrossMm } = halfExtents(piece)
  const cosine = Math.abs(Math.cos(piece.angle))
  const sine = Math.abs(Math.sin(piece.angle))
  const reachU = alongMm * cosine + acrossMm * sine
  const reachV = alongMm * sine + acrossMm * cosine
  const { pitchMm, columns, rows, leftMm, topMm } = raster
  const first = (x: number, start: number) => Math.max(0, Math.floor((x - start) / pitchMm))
  const last = (x: number, start: number, n: number) => Math.min(n - 1, Math.floor((x - start) / pitchMm))
  const [columnFrom, columnTo] = [
    first(piece.u - reachU, leftMm),
    last(piece.u + reachU, leftMm, columns),
  ] as const
  const [rowFrom, rowTo] = [first(piece.v - reachV, topMm), last(piece.v + reachV, topMm, rows)] as const
  const places = Math.max(PLACES_PER_CELL, Math.ceil((PLACES_ACROSS * pitchMm) / (2 * acrossMm)))
  const cells: number[] = []
  const share: number[][] = weights.map(() => [])
  const sums = new Float64Array(weights.length)
  for (let row = rowFrom; row <= rowTo; row++) {
    for (let column = columnFrom; column <= columnTo; column++) {
      sums.fill(0)
      let covered = false
      for (let i = 0; i < places; i++) {
        const dv = topMm + (row + (i + 0.5) / places) * pitchMm - piece.v
        for (let j = 0; j < places; j++) {
          const du = leftMm + (column + (j + 0.5) / places) * pitchMm - piece.u
          const at = (chordMm(piece, du, dv) / longest) * CHORD_STEPS
          if (at > 0) covered = true
          const low = Math.floor(at)
          for (let c = 0; c < tables.length; c++) {
            const table = tables[c]!
            sums[c]! += table[low]! + (at - low) * (table[low + 1]! - table[low]!)
          }
        }
      }
      if (!covered) continue
      cells.push(row * columns + column)
      for (let c = 0; c < share.length; c++) share[c]!.push(sums[c]! / (places * places))
    }
  }
  return { cells: Int32Array.from(cells), share: share.map((list) => Float64Array.from(list)) }
}
