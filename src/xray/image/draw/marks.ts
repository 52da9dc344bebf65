import { BLACK, type Canvas, strokeLine, WHITE } from './canvas.ts'

/**
 * Marks told apart by their form, in black and white together so that they show on every grey: a box around
 * what was found, a broken ring around what was missed, a triangle around a false alarm.
 */
export type Mark = 'found' | 'missed' | 'false alarm'

type Points = readonly (readonly [number, number])[]

const DASH_PX = 5
const RING_STEPS = 48

/** Draws a mark around a place: half width and half height of what it surrounds, px. */
export function drawMark(
  canvas: Canvas,
  mark: Mark,
  x: number,
  y: number,
  halfX: number,
  halfY: number,
): void {
  const points = outline(mark, x, y, halfX, halfY)
  const dash = mark === 'missed' ? DASH_PX : 0
  if (dash === 0) {
    strokeLine(canvas, points, 3, WHITE)
    strokeLine(canvas, points, 1, BLACK)
    return
  }
  strokeLine(canvas, points, 3, BLACK, dash)
  strokeLine(canvas, points, 1, WHITE, dash)
}

function outline(mark: Mark, x: number, y: number, halfX: number, halfY: number): Points {
  switch (mark) {
    case 'found':
      return [
        [x - halfX, y - halfY],
        [x + halfX, y - halfY],
        [x + halfX, y + halfY],
        [x - halfX, y + halfY],
        [x - halfX, y - halfY],
      ]
    case 'missed':
      return Array.from({ length: RING_STEPS + 1 }, (_, i) => {
        const turn = (2 * Math.PI * i) / RING_STEPS
        return [x + halfX * Math.cos(turn), y + halfY * Math.sin(turn)] as const
      })
    case 'false alarm': {
      const half = Math.max(halfX, halfY)
      return [
        [x, y - 1.7 * half],
        [x + 1.5 * half, y + half],
        [x - 1.5 * half, y + half],
        [x, y - 1.7 * half],
      ]
    }
    default:
      return mark satisfies never
  }
}
