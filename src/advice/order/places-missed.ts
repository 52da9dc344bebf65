import type { Finding } from '../../contract/index.ts'
import { placesNotMet } from '../assess/meets.ts'

/** Places of the pack where a piece can lie and is not found at the size asked, though it is elsewhere. */
export const placesMissed = (finding: Finding): string[] =>
  finding.meets === 'partly'
    ? [...new Set(placesNotMet(finding, finding.zones, finding.mustFindMm).map(({ name }) => name))]
    : []
