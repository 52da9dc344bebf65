import { hidesFromXrays } from '../../brief/insert-kind.ts'
import type { Point, Zone } from '../../contract/index.ts'

/**
 * The place that a metal insert hides from x-rays: it is masked, and what lies beneath it is not looked at. None
 * without such an insert, and where the piece settles elsewhere.
 */
export function behindInsert(point: Pick<Point, 'inserts'>, zones: readonly Zone[]): Zone[] {
  const hiding = point.inserts.filter(hidesFromXrays)
  if (hiding.length === 0) return []
  const settles = zones.some(({ settlesThere }) => settlesThere)
  return [
    {
      name: 'insert',
      state: 'blind',
      share: null,
      pathMm: null,
      sizes: { bestMm: null, expectedMm: null, cautiousMm: null },
      canLieThere: !settles,
      settlesThere: false,
      why: `${hiding.join(', ')}: masked, and what lies beneath is not looked at`,
    },
  ]
}
