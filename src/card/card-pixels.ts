import { type Bench, CardError } from './card-bench.ts'

/** Pixels that the machines of one card read from a pack together; more would take longer than a person waits. */
const MOST_PIXELS = 3_000_000

/** Pixels one machine reads from a pack: its extent across the beam in pixels as large as they are at the pack. */
export function pixelsOf({ exposed }: Bench): number {
  const { point, build, objectPixelMm } = exposed
  const acrossMm = build.beam === 'down' ? point.widthMm : point.heightMm
  return Math.ceil(point.lengthMm / objectPixelMm) * Math.ceil(acrossMm / objectPixelMm)
}

/** Refuses a card before it is drawn where its pictures would be too large. Throws CardError with the figures. */
export function boundPixels(each: readonly number[]): void {
  const pixels = each.reduce((sum, one) => sum + one, 0)
  if (pixels > MOST_PIXELS)
    throw new CardError(
      `this card would have ${Math.round(pixels).toLocaleString('en')} pixels with ${each.length} machine${each.length === 1 ? '' : 's'}; at most ${MOST_PIXELS.toLocaleString('en')} are drawn. Choose fewer machines, or a machine with larger pixels`,
    )
}
