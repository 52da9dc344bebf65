import type { Answers } from '../brief/form/form.ts'
import { readMeasure } from '../brief/form/measure.ts'
import { answersOf, type TableFrame } from './read/product-row.ts'
import type { TableRow } from './read/records.ts'

/** The largest pack through one point of a line, mm, and where it stands in the table. */
export interface Largest {
  readonly line: string
  /** Number of the point in the flow. */
  readonly point: number
  readonly stage: string
  readonly heightMm: number
  readonly widthMm: number
  readonly tallestRow: number
  readonly widestRow: number
}

export interface Survey {
  readonly rows: number
  readonly largest: readonly Largest[]
}

/** Lines told apart; products of further ones are worked out by themselves. */
export const MOST_LINES = 200
/** A brief takes no more points. */
const MOST_POINTS = 12
/** Bounds of the contract: what lies beyond is a mistake in its row and widens no line, mm. */
const MOST_MM = { heightMm: 2000, widthMm: 3000 }

/**
 * The first reading of a table, which works nothing out: how many rows there are, and how large a pack each line's
 * machines must take. One machine stands on a line, so that its build and opening follow from all products.
 */
export async function survey(frame: TableFrame, rows: AsyncIterable<TableRow>): Promise<Survey> {
  const largest = new Map<string, Largest>()
  let count = 0
  for await (const row of rows) {
    count++
    if (!('cells' in row)) continue
    const answers = answersOf(frame, row.cells)
    for (let point = 0; point < MOST_POINTS; point++) note(largest, answers, point, row.row)
  }
  return { rows: count, largest: [...largest.values()] }
}

function note(largest: Map<string, Largest>, answers: Answers, point: number, row: number): void {
  const said = (field: string) => answers[`points.${point}.${field}`]?.trim() ?? ''
  const height = readMeasure(said('heightMm'), 'mm')
  const width = readMeasure(said('widthMm'), 'mm')
  if (!height.ok || !width.ok) return
  const lanes = Number(said('lanes') || 1)
  const heightMm = height.value
  const widthMm = width.value * (lanes >= 1 && lanes <= 20 ? lanes : 1)
  if (heightMm > MOST_MM.heightMm || widthMm > MOST_MM.widthMm) return
  const place = { line: said('line'), point, stage: said('stage') || 'packed' }
  const key = JSON.stringify(place)
  const known = largest.get(key)
  if (!known) {
    if (largest.size < MOST_LINES)
      largest.set(key, { ...place, heightMm, widthMm, tallestRow: row, widestRow: row })
    return
  }
  if (heightMm <= known.heightMm && widthMm <= known.widthMm) return
  largest.set(key, {
    ...place,
    heightMm: Math.max(heightMm, known.heightMm),
    widthMm: Math.max(widthMm, known.widthMm),
    tallestRow: heightMm > known.heightMm ? row : known.tallestRow,
    widestRow: widthMm > known.widthMm ? row : known.widestRow,
  })
}
