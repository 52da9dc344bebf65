import type { Separator } from '../line/separators.ts'
import type { Station } from '../line/stations.ts'
import { type FragmentSizes, overPieces } from '../sizes/fragment-sizes.ts'
import { takenOutId } from './hazard-trail.ts'

/** A device ahead of the detectors, as one hazard meets it. */
export interface HazardSeparator extends Separator {
  /** Share of all that arrives which it takes out in one run, worst and best. */
  readonly takesOut: readonly [number, number]
  readonly calculation: string
}

/** Averages a device's shares over everything that arrives. */
export function hazardSeparator(
  contaminant: number,
  { device, separated }: NonNullable<Station['separator']>,
  sizes: FragmentSizes,
): HazardSeparator {
  const mean = (share: (sizeMm: number) => number) => overPieces(sizes, 0, share)
  return {
    ...device,
    takesOut: [mean(separated.worst), mean(separated.best)],
    calculation: takenOutId(device, contaminant),
  }
}
