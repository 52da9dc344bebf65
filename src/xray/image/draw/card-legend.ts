import { BLACK, type Canvas, fillBox, printText, strokeLine, textWidth } from './canvas.ts'
import { LETTER_HEIGHT } from './letters.ts'
import { drawMark, type Mark } from './marks.ts'

/** Dots per dot of a letter in everything printed on a picture. */
export const LETTER_SCALE = 2
export const LINE_PX = LETTER_HEIGHT * LETTER_SCALE + 6
export const STRIP_MARGIN_PX = 8
const SCALE_BAR_MM = 20

/** A mark with its word, or the bar of 20 mm. */
export type LegendEntry = { readonly words: string; readonly mark: Mark | 'scale' }
const LEGEND: readonly LegendEntry[] = [
  { words: 'found', mark: 'found' },
  { words: 'missed', mark: 'missed' },
  { words: 'false alarm', mark: 'false alarm' },
  { words: `${SCALE_BAR_MM} mm`, mark: 'scale' },
]
const LEGEND_ROOM_PX = 96

function entryWidth(entry: LegendEntry): number {
  return textWidth(entry.words, LETTER_SCALE) + (entry.mark === 'scale' ? LEGEND_ROOM_PX : 46)
}

/** The legend in as many rows as the width asks for. */
export function legendRows(widthPx: number): LegendEntry[][] {
  const rows: LegendEntry[][] = [[]]
  let used = 0
  for (const entry of LEGEND) {
    if (used > 0 && used + entryWidth(entry) > widthPx - 2 * STRIP_MARGIN_PX) {
      rows.push([])
      used = 0
    }
    rows.at(-1)!.push(entry)
    used += entryWidth(entry)
  }
  return rows
}

/** Draws one row of the legend with its top at a height, px. */
export function drawLegend(canvas: Canvas, row: readonly LegendEntry[], top: number, dotMm: number): void {
  let x = STRIP_MARGIN_PX
  const middle = top + (LETTER_HEIGHT * LETTER_SCALE) / 2 - 1
  for (const entry of row) {
    let room = 26
    if (entry.mark === 'scale') {
      const bar = SCALE_BAR_MM / dotMm
      fillBox(canvas, x, middle - 1, bar, 3, BLACK)
      strokeLine(
        canvas,
        [
          [x, middle - 5],
          [x, middle + 5],
        ],
        2,
        BLACK,
      )
      strokeLine(
        canvas,
        [
          [x + bar, middle - 5],
          [x + bar, middle + 5],
        ],
        2,
        BLACK,
      )
      room = bar + 8
    } else drawMark(canvas, entry.mark, x + 9, middle + (entry.mark === 'false alarm' ? 2 : 0), 7, 7)
    if (entry.mark === 'false alarm') room += 2
    printText(canvas, entry.words, x + room, top, LETTER_SCALE, BLACK)
    x += room + textWidth(entry.words, LETTER_SCALE) + 20
  }
}
