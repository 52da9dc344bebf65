import type { Contaminant, Placement } from '../../../contract/index.ts'
import { materials } from '../../../reference/index.ts'
import type { Random } from '../food/random.ts'
import { halfExtents, type Piece } from '../pack/piece.ts'
import { readDepthMm, type View } from '../pack/view.ts'

/** One row of a test card: a contaminant and its sizes in ascending order. */
export interface CardRow {
  readonly contaminant: number
  readonly what: Contaminant
  readonly placement: Placement
  readonly sizesMm: readonly number[]
}

/** A card laid on (or in) one pack. */
export interface CardSheet {
  readonly pieces: readonly Piece[]
  /** Where a line of pieces ends, as indices: 3 and 7 are pieces 0 to 2 and 3 to 6. */
  readonly lineEnds: readonly number[]
}

/** Room between neighbouring pieces, mm: at least beyond the reach of a filter, more where the pack has it (judgement). */
const GAPS_MM = [18, 14, 10, 7] as const
/** Pieces stay so far inside the edge of what is read, mm. */
const EDGE_MM = 1.5
/** Pieces lie off their grid by up to so much, so that every place within a pixel occurs, mm. */
const OFF_GRID_MM = 0.4
const SCAN_MM = 0.5
/** A line that holds fewer pieces than this is not begun (in a round pack), unless no line holds more. */
const FEWEST_IN_LINE = 3
/** More sheets than this are not drawn; what does not fit is left off the card and said. */
export const MOST_SHEETS = 4

/** "Stainless steel 316, wire 10 mm": what a row is. */
export function rowWords({ what }: CardRow): string {
  const label = materials.get(what.material)?.label ?? what.material
  if (what.shape === 'wire') return `${label}, wire ${what.lengthMm} mm`
  return what.shape === 'flake' ? `${label}, flake ${what.faceMm2} mm²` : `${label}, sphere`
}

/** Where the pieces of the rows lie, in words. */
export function placementWords(rows: readonly CardRow[]): string {
  const outside = rows.filter((row) => row.placement === 'outside').length
  if (outside === 0) return 'pieces inside the food'
  return outside === rows.length ? 'pieces on the pack' : 'pieces inside the food or on the pack'
}

/**
 * Lays rows of pieces over the part of a pack that is read, a new line where the width ends, a new pack where
 * the height ends; as far apart as one pack allows.
 */
export function layCard(view: View, rows: readonly CardRow[], random: Random): LaidCard {
  const offGrid = Array.from({ length: 2 * rows.reduce((sum, { sizesMm }) => sum + sizesMm.length, 0) }, () =>
    random.uniform(),
  )
  const tries = GAPS_MM.map((gapMm) => layApart(view, rows, gapMm, offGrid))
  return tries.find(({ sheets, leftOff }) => sheets.length === 1 && leftOff === 0) ?? tries.at(-1)!
}

interface LaidCard {
  readonly sheets: CardSheet[]
  /** Pieces that found no room. */
  readonly leftOff: number
}

function layApart(view: View, rows: readonly CardRow[], gapMm: number, offGrid: readonly number[]): LaidCard {
  let drawn = 0
  const off = () => OFF_GRID_MM * (2 * offGrid[drawn++ % offGrid.length]! - 1)
  const sheets: { pieces: Piece[]; lineEnds: number[] }[] = [{ pieces: [], lineEnds: [] }]
  let v = 0
  let leftOff = 0
  for (const row of rows) {
    let waiting = [...row.sizesMm]
    while (waiting.length > 0) {
      const shapes = waiting.map((sizeMm) => ({
        sizeMm,
        ...halfExtents({
          shape: row.what.shape,
          sizeMm,
          lengthMm: row.what.lengthMm ?? 0,
          faceMm2: row.what.faceMm2 ?? 0,
        }),
      }))
      const tallest = Math.max(...shapes.map((s) => s.acrossMm))
      const wanted = shapes.slice(0, FEWEST_IN_LINE)
      const needsMm = wanted.reduce((sum, s) => sum + 2 * s.alongMm + gapMm, -gapMm)
      const line =
        nextLine(view, v, tallest, needsMm) ??
        (v === 0 ? nextLine(view, v, tallest, 2 * shapes[0]!.alongMm) : null)
      if (line === null) {
        if (sheets.at(-1)!.pieces.length === 0 || sheets.length === MOST_SHEETS) {
          leftOff += waiting.length
          break
        }
        sheets.push({ pieces: [], lineEnds: [] })
        v = 0
        continue
      }
      const sheet = sheets.at(-1)!
      let u = line.fromU
      let placed = 0
      for (const { sizeMm, alongMm } of shapes) {
        if (u + 2 * alongMm > line.toU) break
        sheet.pieces.push({
          contaminant: row.contaminant,
          material: row.what.material,
          shape: row.what.shape,
          sizeMm,
          lengthMm: row.what.lengthMm ?? 0,
          faceMm2: row.what.faceMm2 ?? 0,
          placement: row.placement,
          u: u + alongMm + off(),
          v: line.v + off(),
          angle: 0,
        })
        u += 2 * alongMm + gapMm
        placed++
      }
      sheet.lineEnds.push(sheet.pieces.length)
      waiting = waiting.slice(placed)
      v = line.v + tallest + gapMm
    }
  }
  return { sheets: sheets.filter((s) => s.pieces.length > 0), leftOff }
}

/** First line at or below a height that is as wide as needed: its middle and its ends. */
function nextLine(view: View, from: number, half: number, needsMm: number) {
  const fits = (u: number, v: number) =>
    readDepthMm(view, u, v - half) >= EDGE_MM && readDepthMm(view, u, v + half) >= EDGE_MM
  for (let v = from + half; v <= view.vMm; v += SCAN_MM) {
    let start = Number.NaN
    let end = Number.NaN
    for (let u = 0; u <= view.uMm; u += SCAN_MM) {
      if (!fits(u, v)) continue
      if (Number.isNaN(start)) start = u
      end = u
    }
    if (end - start >= needsMm) return { v, fromU: start, toU: end }
  }
  return null
}
