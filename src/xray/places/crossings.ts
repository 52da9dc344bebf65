import type { Place } from '../../contract/index.ts'

/**
 * How often a beam crosses a part: a down beam crosses base, lid, closure and tray once and wrap and
 * sleeve twice; a side beam crosses wall, wrap and sleeve twice. What it does not cross counts zero.
 */
const CROSSINGS: Record<'down' | 'side', Record<Place, number>> = {
  down: { base: 1, lid: 1, closure: 1, tray: 1, wrap: 2, sleeve: 2, wall: 0 },
  side: { base: 0, lid: 0, closure: 0, tray: 0, wrap: 2, sleeve: 2, wall: 2 },
}

/** Number of layers of a part in the beam. */
export function crossings(beam: 'down' | 'side', place: Place): number {
  return CROSSINGS[beam][place]
}
