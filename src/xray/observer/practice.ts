/**
 * Shared constants that lead from the ideal observer to what a person at a machine reads; none belongs to a product
 * or a machine. The three numbers were fitted once by test/practice/calibrate.ts (objective and priors in
 * test/practice/likelihood.ts) to twelve common-practice test-card readings of one thick granular pack; they then
 * predict twelve readings of a thin one (npm run practice). The readings have no published source, so the constants
 * stay provisional until runs on real products confirm them.
 */
export interface PracticeConstants {
  /** Factor on the hard-sphere grain noise: real grains are not spheres and leave bridges. */
  readonly textureScale: number
  /** κ: share of the texture that does not cancel between energies because composition varies. */
  readonly compositionResidual: number
  /** ℓ: length an image filter gathers along a wire, mm. */
  readonly gatheredWireMm: number
  /** One threshold for all filters of a machine, or each filter its own. */
  readonly thresholds: 'one for all' | 'each its own'
}

export const PRACTICE: PracticeConstants = {
  textureScale: 1,
  compositionResidual: 0.0124,
  gatheredWireMm: 1.96,
  thresholds: 'one for all',
}

/** The ideal observer: nothing of this build can do better. */
export const IDEAL: PracticeConstants = {
  textureScale: 1,
  compositionResidual: 0,
  gatheredWireMm: Number.POSITIVE_INFINITY,
  thresholds: 'each its own',
}

/**
 * Where a machine taught on clean packs would stand, over the computed point of a clean bed's tail; measured on
 * simulated beds (npm run thresholds: eight beds and machines, 400 packs each), never on readings. At one false reject in
 * a thousand packs the mean of the eight is 1.05 (1.08 at one in twenty). One number is the same for all and fits none
 * exactly: pieces that are flat and lie in every direction lie above it (almonds 1.07 to 1.21, cranberries 1.11), long
 * ones that lie flat on it (beans 1.03), balls and fine grains below it (hazelnuts 0.89, rice 0.83).
 */
export const BED_FACTOR = 1.05

/** What the constants are called wherever a size that rests on them is shown. */
export const CONSTANTS_STATUS =
  'fitted to common-practice readings of one pack, no published source; provisional'
