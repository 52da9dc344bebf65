import type { Finding, Zone } from '../../contract/index.ts'
import type { ControlChance, PlaceChance } from './control-chance.ts'

/** Share of pieces in the body of a pack where nobody says how they lie; the other places share the rest (assumption). */
const BODY_SHARE = 0.9

/**
 * Chances of a machine by place from what was computed for it. `worse` scales every size: 1 for the expected
 * machine, cautious ÷ expected for what can be promised, demonstrated ÷ expected for what was shown.
 */
export function controlChanceOf(finding: Finding, workingShare: number, worse = 1): ControlChance {
  return { places: placesOf(finding, worse), workingShare }
}

/** The places where a piece can lie, with their shares and sizes. */
export function placesOf(finding: Finding, worse = 1): readonly PlaceChance[] {
  const { halfMm, expectedMm } = finding
  if (halfMm === null || expectedMm === null) return [{ share: 1, a50Mm: null, a90Mm: null }]
  const ratio = halfMm / expectedMm
  const zones = reachable(finding)
  if (zones.length === 0) return [{ share: 1, a50Mm: halfMm * worse, a90Mm: expectedMm * worse }]
  const shares = sharesOf(zones)
  return zones.map(({ sizes: { expectedMm: a90Mm }, state }, i) => {
    const seen = a90Mm !== null && state !== 'blind'
    return {
      share: shares[i]!,
      a50Mm: seen ? a90Mm * ratio * worse : null,
      a90Mm: seen ? a90Mm * worse : null,
    }
  })
}

/** Zones of the pack where a piece can come to lie. */
export const reachable = ({ zones }: Finding): readonly Zone[] =>
  zones.filter(({ canLieThere }) => canLieThere)

function sharesOf(zones: readonly Zone[]): number[] {
  const given = zones.map(({ share }) => share)
  const total = given.reduce<number>((sum, share) => sum + (share ?? 0), 0)
  if (total > 0 && given.every((share) => share !== null)) return given.map((share) => share! / total)
  if (zones.length === 1) return [1]
  return zones.map((_, i) => (i === 0 ? BODY_SHARE : (1 - BODY_SHARE) / (zones.length - 1)))
}
