/**
 * Five shared constants that lead from the ideal observer to what a person at a machine reads; none belongs
 * to a product or a machine. Status: first fit on common-practice readings of one thick granular pack
 * (no published source); provisional.
 */
export interface PracticeConstants {
  /** Observer efficiency η of a single-energy image (1 is the ideal observer). */
  readonly efficiencySingle: number
  /** Observer efficiency η where two or more energies are combined. */
  readonly efficiencyDual: number
  /** Factor on the hard-sphere grain noise: real grains are not spheres and leave bridges. */
  readonly textureScale: number
  /** κ: share of the texture that does not cancel between energies because composition varies. */
  readonly compositionResidual: number
  /** ℓ: length an image filter gathers along a wire, mm. */
  readonly gatheredWireMm: number
}

export const PRACTICE: PracticeConstants = {
  efficiencySingle: 0.65,
  efficiencyDual: 1,
  textureScale: 1.04,
  compositionResidual: 0.034,
  gatheredWireMm: 1,
}

/** The ideal observer: nothing of this build can do better. */
export const IDEAL: PracticeConstants = {
  efficiencySingle: 1,
  efficiencyDual: 1,
  textureScale: 1,
  compositionResidual: 0,
  gatheredWireMm: Number.POSITIVE_INFINITY,
}

/** η for an image of so many channels. */
export function efficiencyOf(constants: PracticeConstants, channels: number): number {
  return channels > 1 ? constants.efficiencyDual : constants.efficiencySingle
}
