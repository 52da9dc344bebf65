/** What a product or a wrapper leaves after the machine has learned it. */
export interface Residual {
  /** Spread of its amplitude, share of the response. */
  readonly amplitude: number
  /** Spread of its phase, rad. */
  readonly phaseRad: number
  /** What nothing removes, share of the response, on both axes. */
  readonly remainder: number
}

/** Constants of the decision model; each says how it is known. */
export interface CoilParameters {
  /** N0, m³: calibrated once (mild steel 0.90 mm, dry, 175 × 350 mm, best single of five frequencies). */
  readonly noiseM3: number
  readonly referenceOpeningM: number
  readonly referenceFrequencyHz: number
  /** Noise of the electronics ∝ h^2.5·f^−0.5 (constant reactive power; assumption). */
  readonly openingExponent: number
  readonly frequencyExponent: number
  /** v: mechanical noise over electronic noise at the reference (assumption, a neutral choice). */
  readonly mechanicalRatio: number
  /**
   * What is left of food that enters and leaves, and of a stream: a pump gives the coil a food that never enters or
   * leaves, so only its variation counts (voids, lumps, salt), one number for phase and remainder. The amplitude is an
   * assumption (it lies on the learned axis and hardly counts); the three other numbers were set on half of a table of
   * usual settings of the trade, which have no published source (npm run practice prints all of it).
   */
  readonly block: Residual
  readonly stream: Residual
  /** A residual that was read on the line counts this many times. */
  readonly read: number
  /** Assumptions: a metal layer has no temperature-dependent phase. */
  readonly wrapper: Residual
  /** Standard deviation of ln(size) that position, temperature and orientation bring (judgement). */
  readonly drySpread: number
  readonly wetSpread: number
  /** Independent looks at one pack. */
  readonly looksPerPack: number
}

export const COIL_PARAMETERS: CoilParameters = {
  noiseM3: 1.3046295622598637e-10,
  referenceOpeningM: 0.175,
  referenceFrequencyHz: 300_000,
  openingExponent: 2.5,
  frequencyExponent: 0.5,
  mechanicalRatio: 1,
  block: { amplitude: 0.2, phaseRad: 0.008, remainder: 0.002 },
  stream: { amplitude: 0.2, phaseRad: 0.002, remainder: 0.002 },
  read: 1,
  wrapper: { amplitude: 0.2, phaseRad: 0.005, remainder: 0.003 },
  drySpread: 0.1,
  wetSpread: 0.15,
  looksPerPack: 20,
}

/** How far the cautious size moves each assumption to its unfavourable side. */
export const CAUTION = { noise: 1.3, residual: 1.5, read: 1.2 } as const

/** A residual whose phase and remainder are so many times as large. */
const timesAsLarge = (residual: Residual, factor: number): Residual => ({
  amplitude: residual.amplitude,
  phaseRad: residual.phaseRad * factor,
  remainder: residual.remainder * factor,
})

/**
 * The same constants on the unfavourable side: noise × 1.3, phase and remaining residuals × 1.5; one that was read
 * on the line only × 1.2, for what changes from day to day (judgement).
 */
export function cautiousParameters(parameters: CoilParameters): CoilParameters {
  return {
    ...parameters,
    noiseM3: parameters.noiseM3 * CAUTION.noise,
    block: timesAsLarge(parameters.block, CAUTION.residual),
    stream: timesAsLarge(parameters.stream, CAUTION.residual),
    read: parameters.read * CAUTION.read,
    wrapper: timesAsLarge(parameters.wrapper, CAUTION.residual),
  }
}
