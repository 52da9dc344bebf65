/**
 * Five shared constants that lead from the ideal observer to what a person at a machine reads; none belongs
 * to a product or a machine. Fitted once by test/practice/calibrate.ts (objective and priors in
 * test/practice/likelihood.ts) to twelve common-practice test-card readings of one thick granular pack; they
 * then predict twelve readings of a thin one (npm run practice). The readings have no published source, so the
 * constants stay provisional until runs on real products confirm them. The fit stops at two natural bounds:
 * efficiency of combined energies 1 and texture scale 1.
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
  efficiencySingle: 0.653,
  efficiencyDual: 1,
  textureScale: 1,
  compositionResidual: 0.0264,
  gatheredWireMm: 1.32,
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

/** What the constants are called wherever a size that rests on them is shown. */
export const CONSTANTS_STATUS =
  'fitted to common-practice readings of one pack, no published source; provisional'
